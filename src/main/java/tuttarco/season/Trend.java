package tuttarco.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tuttarco.compare.Metric;
import tuttarco.stats.Interval;

/**
 * How a figure went over the takes of a season.
 *
 * @param points one a take, in the season's order; empty where the take has no such figure
 * @param p probability of such a row if any order of the takes were as likely, adjusted over all of its kind; empty where
 *     there are too few takes
 * @param change from the first point to the last by the median slope of all pairs (Theil and Sen), in the metric's unit
 *     (shares from 0 to 1); empty of fewer than two points
 */
public record Trend(
        Subject subject,
        Metric metric,
        List<Optional<Point>> points,
        Claim claim,
        OptionalDouble p,
        OptionalDouble change) {
    /** Whose figure it is. */
    public sealed interface Subject {}

    /** The whole section. */
    public record Section() implements Subject {}

    /** Who has this label. */
    public record OfPlayer(String label) implements Subject {}

    /** Bars in the order of the part, both inclusive. */
    public record OfPassage(String firstBar, String lastBar) implements Subject {}

    /**
     * A take's figure.
     *
     * @param interval 95 %
     * @param count how many beats or changes it is from
     */
    public record Point(double value, Interval interval, int count) {}

    /** What may be said. */
    public enum Claim {
        RISING,
        FALLING,
        /** Nothing that could be told from chance. */
        NONE,
        /** Too few takes to say anything. */
        TOO_FEW;

        /** The word used in files. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    public Trend {
        points = List.copyOf(points);
    }

    /** Whether a trend is claimed. */
    public boolean claimed() {
        return claim == Claim.RISING || claim == Claim.FALLING;
    }

    /** The points there are, in order. */
    public List<Point> seen() {
        return points.stream().flatMap(Optional::stream).toList();
    }
}
