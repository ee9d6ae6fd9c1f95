package tuttarco.compare;

import java.util.Locale;
import tuttarco.seats.Player;

/**
 * A stretch in which one player left the marking or the leader.
 *
 * @param firstIndex index in the beat map of the first beat judged against; {@code lastIndex} the last one, inclusive
 * @param confidence probability, 0 to 1, that the player had really left on a beat of the stretch judged against
 * @param back how the stretch ended
 */
public record Departure(Player player, int firstIndex, int lastIndex, double confidence, Back back) {
    public Departure {
        if (lastIndex < firstIndex) {
            throw new IllegalArgumentException("a stretch ends after it starts");
        }
    }

    public int beatCount() {
        return lastIndex - firstIndex + 1;
    }

    /** Whether both lasted at the same time for a while. */
    public boolean meets(Departure other) {
        return firstIndex <= other.lastIndex && other.firstIndex <= lastIndex;
    }

    /** How a stretch ended. */
    public sealed interface Back {}

    /** Not seen back before the playing stopped. */
    public record NotSeenBack() implements Back {}

    /**
     * Back on a beat.
     *
     * @param index of the first beat judged with, in the beat map
     */
    public record BackAt(int index, Way way) implements Back {}

    /** How somebody who bowed the other way round came to bow the same way again. */
    public enum Way {
        /** There was a rest in between. */
        REST,
        /** The bow was lifted and set again: two strokes the same way. */
        RETAKE,
        /** One stroke went on where the bow should have changed. */
        DOUBLED_STROKE,
        /** The bow changed where one stroke should have gone on, as in a slur. */
        EXTRA_CHANGE,
        /** It could not be told. */
        UNKNOWN;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
