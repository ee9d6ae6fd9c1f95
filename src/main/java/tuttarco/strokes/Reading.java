package tuttarco.strokes;

import java.util.List;
import java.util.Optional;
import tuttarco.seats.Player;

/**
 * What one player is read to have done: strokes in time order that cover the clip without gaps or overlaps, empty only
 * for a clip without length. The reading never saw the marking it is later compared with.
 */
public record Reading(Player player, List<Stroke> strokes) {
    /** Two strokes join when the one ends where the next begins, to within this many seconds (rounding). */
    private static final double JOIN_S = 1e-9;

    public Reading {
        strokes = List.copyOf(strokes);
        for (int i = 1; i < strokes.size(); i++) {
            double gapS = strokes.get(i).startS() - strokes.get(i - 1).endS();
            if (Math.abs(gapS) > JOIN_S) {
                throw new IllegalArgumentException("strokes cover the clip without gaps; after " + strokes.get(i - 1)
                        + " comes " + strokes.get(i));
            }
        }
    }

    /** The stroke at a time, empty outside the clip. */
    public Optional<Stroke> at(double timeS) {
        int low = 0;
        int high = strokes.size() - 1;
        while (low <= high) {
            int mid = (low + high) >>> 1;
            Stroke stroke = strokes.get(mid);
            if (stroke.covers(timeS)) {
                return Optional.of(stroke);
            }
            if (timeS < stroke.startS()) {
                high = mid - 1;
            } else {
                low = mid + 1;
            }
        }
        return Optional.empty();
    }
}
