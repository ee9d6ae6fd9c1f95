package tuttarco.season;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tuttarco.compare.Metric;
import tuttarco.stats.PairedDifference;

/**
 * What became of one figure from one take to another.
 *
 * @param of whose figure it is
 * @param name the bar or the player; empty for the section
 * @param pairs how many pairs it rests on: of players' bars for the section's share with the marking, of players for a bar's,
 *     of bars for all others
 * @param first in the metric's unit, from what both takes have; {@code second} in the second take
 * @param p probability of pairs so far to one side in takes that are alike, adjusted over all that is asked of the two takes;
 *     empty where too few pairs differ to ask
 * @param paired how the pairs differ, second less first, where Student's test was asked: of the section's share and the
 *     sound; empty for all others and of too few pairs
 */
public record Changed(
        Metric metric,
        Of of,
        String name,
        int pairs,
        double first,
        double second,
        OptionalDouble p,
        Claim claim,
        Optional<PairedDifference> paired) {
    /** Whose figure. */
    public enum Of {
        SECTION,
        PLAYER,
        BAR;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What may be said. */
    public enum Claim {
        BETTER,
        WORSE,
        /** It changed, but whether that is for the better is not for this program to say. */
        OTHERWISE,
        /** No change that could be told from chance and from the errors of reading. */
        NONE,
        /** Too few pairs to say anything. */
        TOO_FEW;

        /** The word used in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Whether a change is shown. */
        public boolean shown() {
            return this == BETTER || this == WORSE || this == OTHERWISE;
        }
    }

    /** Second less first. */
    public double difference() {
        return second - first;
    }
}
