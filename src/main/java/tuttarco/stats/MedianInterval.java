package tuttarco.stats;

import java.util.List;
import java.util.function.IntPredicate;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * How far a median can be trusted: its percentile bootstrap interval (B. Efron 1979, Ann. Stat. 7:1), counted rather than drawn.
 *
 * <p>In a sample drawn again from {@code n} values, the middle one is at most the {@code k}-th smallest of the values if at
 * least half of the draws are, and their number is binomial with share {@code k / n} (J. S. Maritz, R. G. Jarrett 1978, J. Am.
 * Stat. Assoc. 73:194). Of an even number the lower of the two middle values gives the low end and the upper one the high
 * end. It takes the values to be independent of each other.
 */
public final class MedianInterval {
    private MedianInterval() {}

    /**
     * The interval, in the values' unit.
     *
     * @param values at least one; of fewer than six a level of 0.95 can't be kept
     * @param level confidence level, between 0 and 1 exclusive, such as 0.95
     * @throws IllegalArgumentException if there are no values, one is not finite, or the level is out of its range
     */
    public static Interval of(List<Double> values, double level) {
        if (values.isEmpty() || !values.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a median needs at least one value, and finite ones");
        }
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a confidence level lies between 0 and 1, not " + level);
        }
        List<Double> sorted = values.stream().sorted().toList();
        int n = sorted.size();
        int lower = (n + 1) / 2;
        int upper = n / 2 + 1;
        int low = first(n, k -> middleAtMost(n, lower, k) > (1 - level) / 2);
        int high = first(n, k -> middleAtMost(n, upper, k) >= (1 + level) / 2);
        return new Interval(sorted.get(low - 1), sorted.get(high - 1));
    }

    /** Probability that the {@code middle}-th smallest draw is at most the {@code k}-th smallest value. */
    private static double middleAtMost(int n, int middle, int k) {
        return 1 - new BinomialDistribution(null, n, (double) k / n).cumulativeProbability(middle - 1);
    }

    /** The least number from 1 that fits, of a condition that holds from there on and holds for {@code n}. */
    private static int first(int n, IntPredicate fits) {
        int below = 0;
        int fitting = n;
        while (fitting - below > 1) {
            int middle = (below + fitting) >>> 1;
            if (fits.test(middle)) {
                fitting = middle;
            } else {
                below = middle;
            }
        }
        return fitting;
    }
}
