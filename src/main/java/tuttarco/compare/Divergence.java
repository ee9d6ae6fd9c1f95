package tuttarco.compare;

import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.seats.Player;

/**
 * A contiguous stretch in which players bowed against the marking or against the leader.
 *
 * @param firstIndex index of the first beat in the beat map; {@code lastIndex} the last one, inclusive
 * @param players in section order, at least one
 * @param confidence how sure it is that this really happened, 0 to 1
 */
public record Divergence(
        int firstIndex,
        int lastIndex,
        Beat first,
        Beat last,
        List<Player> players,
        Against against,
        double confidence) {
    /** What was left. */
    public enum Against {
        MARKING,
        LEADER;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public Divergence {
        players = List.copyOf(players);
        if (players.isEmpty()) {
            throw new IllegalArgumentException("a divergence is somebody's");
        }
        if (lastIndex < firstIndex) {
            throw new IllegalArgumentException("a divergence ends after it starts");
        }
    }

    public int beatCount() {
        return lastIndex - firstIndex + 1;
    }
}
