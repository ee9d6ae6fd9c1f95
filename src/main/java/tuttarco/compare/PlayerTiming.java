package tuttarco.compare;

import java.util.Locale;
import java.util.Optional;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

/**
 * Whether a player changes bow late or early.
 *
 * @param changes how many changes could be paired
 * @param lag what they show; empty where none could be paired or nothing is known of their errors
 */
public record PlayerTiming(Player player, int changes, Optional<Measured> lag, Claim claim) {
    /** What may be said. */
    public enum Claim {
        LATE,
        EARLY,
        /** No lag that could be told from chance and from the errors of reading. */
        NONE,
        /** Too few changes to say anything. */
        TOO_FEW;

        /** The word used in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * A player's lags. Milliseconds, positive where later.
     *
     * @param spreadMs range of the middle half
     * @param intervalMs of the median, with the settings' level of confidence
     * @param smallestMs no smaller lag is claimed; see {@link Metric#SMALLEST_LAG}
     * @param p probability of such lags if they lay no farther to one side than errors may make it that all changes share,
     *     adjusted over the section
     */
    public record Measured(double medianMs, double spreadMs, Interval intervalMs, double smallestMs, double p) {}
}
