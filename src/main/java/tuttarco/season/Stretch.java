package tuttarco.season;

import java.util.List;

/**
 * Adjoining bars in which players went with the marking, or the leader, in one take and not in the other, by the readings.
 *
 * @param players by label
 * @param bars in the order of the part
 * @param first all these players' beats in the first take; {@code second} in the second
 */
public record Stretch(List<String> players, List<String> bars, Tally first, Tally second) {
    public Stretch {
        players = List.copyOf(players);
        bars = List.copyOf(bars);
    }

    /** Whether more went with it in the second take. */
    public boolean more() {
        return second.share() > first.share();
    }
}
