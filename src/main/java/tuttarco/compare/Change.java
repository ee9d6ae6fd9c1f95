package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.Stroke;

/**
 * A bow change.
 *
 * @param timeS when, seconds; the middle of a short pause or doubt between the two strokes
 * @param shorterS length of the shorter of both strokes, seconds
 */
record Change(double timeS, BowDirection to, double shorterS) {
    /** Longest pause or doubt, seconds, between two strokes that still are one change (chosen). */
    private static final double LONGEST_GAP_S = 0.15;

    static List<Change> in(List<Stroke> strokes) {
        List<Change> changes = new ArrayList<>();
        Optional<Stroke> before = Optional.empty();
        for (Stroke stroke : strokes) {
            if (stroke.kind().direction().isPresent()) {
                before.flatMap(b -> between(b, stroke)).ifPresent(changes::add);
                before = Optional.of(stroke);
            }
        }
        return changes;
    }

    private static Optional<Change> between(Stroke before, Stroke after) {
        if (before.kind() == after.kind() || after.startS() - before.endS() > LONGEST_GAP_S) {
            return Optional.empty();
        }
        double shorterS = Math.min(before.lengthS(), after.lengthS());
        return after.kind().direction().map(to -> new Change((before.endS() + after.startS()) / 2, to, shorterS));
    }
}
