package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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
        return corrected(track, reading, reading);
    }

    /** Measures strokes of which some were set by hand: times at which nothing was read to change come from a person. */
    public static Bows corrected(ArmTrack track, Reading read, Reading reading) {
        Set<Double> readS = read.strokes().stream().map(Stroke::endS).collect(Collectors.toSet());
        List<Stroke> strokes = reading.strokes();
        ChangeErrors errors = new ChangeErrors(track);
        List<BowUse> uses = BowMeasure.of(track, strokes);
        List<Bow> bows = new ArrayList<>();
        Edge start = new Edge.ClipEnd();
        for (int i = 0; i < strokes.size(); i++) {
            boolean last = i + 1 == strokes.size();
            Edge end = last ? new Edge.ClipEnd() : edge(strokes.get(i).endS(), readS, errors);
            bows.add(new Bow(strokes.get(i), start, end, uses.get(i)));
            start = end;
        }
        return new Bows(reading.player(), bows, errors.sharedS());
    }

    private static Edge edge(double timeS, Set<Double> readS, ChangeErrors errors) {
        return readS.contains(timeS) ? new Edge.Change(errors.standardErrorS(timeS)) : new Edge.ByHand();
    }
}
