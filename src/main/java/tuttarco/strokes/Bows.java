package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import tuttarco.seats.Player;
import tuttarco.tracks.ArmTrack;

/**
 * What is known of a player's strokes beyond their direction.
 *
 * @param bows one a span of the reading, in time order
 * @param sharedErrorS standard deviation of what all changes of the player may be off by alike, seconds
 */
public record Bows(Player player, List<Bow> bows, double sharedErrorS) {
    public Bows {
        bows = List.copyOf(bows);
        if (!(sharedErrorS >= 0)) {
            throw new IllegalArgumentException("an error's standard deviation is not " + sharedErrorS);
        }
    }

    /** Bows whose changes are off by nothing that they share. */
    public Bows(Player player, List<Bow> bows) {
        this(player, bows, 0);
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
        return new Bows(reading.player(), bows, errors.sharedS());
    }
}
