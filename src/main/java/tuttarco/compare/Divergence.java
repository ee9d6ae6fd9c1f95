package tuttarco.compare;

import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.seats.Player;

/**
 * A contiguous stretch in which players left the marking or the leader together.
 *
 * @param firstIndex index of the first beat in the beat map; {@code lastIndex} the last one, inclusive
 * @param departures what each of the players did, in section order, at least one
 * @param standing turned, or free
 * @param confidence how sure it is that this really happened, 0 to 1
 */
public record Divergence(
        int firstIndex,
        int lastIndex,
        Beat first,
        Beat last,
        List<Departure> departures,
        Against against,
        Standing standing,
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
        departures = List.copyOf(departures);
        if (departures.isEmpty()) {
            throw new IllegalArgumentException("a divergence is somebody's");
        }
        if (lastIndex < firstIndex) {
            throw new IllegalArgumentException("a divergence ends after it starts");
        }
    }

    /** In section order. */
    public List<Player> players() {
        return departures.stream().map(Departure::player).toList();
    }

    public int beatCount() {
        return lastIndex - firstIndex + 1;
    }
}
