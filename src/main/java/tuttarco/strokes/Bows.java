package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import tuttarco.seats.Player;
import tuttarco.tracks.ArmTrack;

/**
 * What is known of a player's strokes beyond their direction.
 *
 * @param bows one a span of the reading, in time order
 */
public record Bows(Player player, List<Bow> bows) {
    public Bows {
        bows = List.copyOf(bows);
    }

    /** Measures the strokes that were read from a track. */
    public static Bows of(ArmTrack track, Reading reading) {
        List<Stroke> strokes = reading.strokes();
        ChangeErrors errors = new ChangeErrors(track);
        List<BowUse> uses = BowMeasure.of(track, strokes);
        List<Bow> bows = new ArrayList<>();
        Edge start = new Edge.ClipEnd();
        for (int i = 0; i < strokes.size(); i++) {
            boolean last = i + 1 == strokes.size();
            Edge end = last
                    ? new Edge.ClipEnd()
                    : new Edge.Change(errors.standardErrorS(strokes.get(i).endS()));
            bows.add(new Bow(strokes.get(i), start, end, uses.get(i)));
            start = end;
        }
        return new Bows(reading.player(), bows);
    }
}
