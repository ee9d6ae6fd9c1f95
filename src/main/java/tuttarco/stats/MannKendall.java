package tuttarco.stats;

import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Does a row of values rise or fall? The Mann-Kendall test (H. B. Mann 1945, Econometrica 13:245; M. G. Kendall, Rank
 * Correlation Methods, 4th ed. 1970). Each value is set against each later one; nothing is supposed of how they are spread.
 *
 * <p>Up to {@link #MOST_EXACT} values all their orders are counted, equal values included; for more the sum is taken to be
 * normal, with the variance corrected for equal values and the continuity correction. The test takes the values to be
 * independent of each other.
 *
 * @param n number of values
 * @param s pairs that rise less pairs that fall
 * @param p probability, if any order were as likely, of a sum at least so far from zero on either side
 */
public record MannKendall(int n, int s, double p) {
    /** More orders than those of twenty values don't fit a long. */
    static final int MOST_EXACT = 20;

    /**
     * Tests values in their order; fewer than two neither rise nor fall.
     *
     * @throws IllegalArgumentException if a value is not finite
     */
    public static MannKendall of(List<Double> values) {
        if (!values.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a trend needs finite values");
        }
        int s = 0;
        for (int i = 0; i < values.size(); i++) {
            for (int j = i + 1; j < values.size(); j++) {
                s += (int) Math.signum(values.get(j) - values.get(i));
            }
        }
        TreeMap<Double, Integer> equal = new TreeMap<>();
        // adding zero makes both zeros the same
        values.forEach(v -> equal.merge(v + 0.0, 1, Integer::sum));
        double p = values.size() <= MOST_EXACT ? exact(equal.values(), s) : normal(values.size(), equal.values(), s);
        return new MannKendall(values.size(), s, Math.min(1, p));
    }

    /** The least {@code p} that so many values, all different, can have: that of a row that rises all the way. */
    public static double leastP(int n) {
        double p = 2;
        for (int k = 2; k <= n; k++) {
            p /= k;
        }
        return Math.min(1, p);
    }

    /**
     * Counts orders by their inversions: setting m equal values among n lesser ones multiplies the counts, as a polynomial, by
     * the Gaussian binomial of n + m over m (G. E. Andrews, The Theory of Partitions, 1976, chapter 3).
     */
    private static double exact(Collection<Integer> groups, int s) {
        int pairs = 0;
        int n = 0;
        for (int m : groups) {
            pairs += n * m;
            n += m;
        }
        long[] orders = new long[pairs + 1];
        orders[0] = 1;
        int lesser = 0;
        for (int m : groups) {
            for (int i = 1; i <= m; i++) {
                times(orders, lesser + i);
                over(orders, i);
            }
            lesser += m;
        }
        long all = 0;
        long asFar = 0;
        for (int inversions = 0; inversions <= pairs; inversions++) {
            all += orders[inversions];
            asFar += Math.abs(pairs - 2 * inversions) >= Math.abs(s) ? orders[inversions] : 0;
        }
        return (double) asFar / all;
    }

    /** Multiplies by {@code 1 - q^step}. */
    private static void times(long[] polynomial, int step) {
        for (int i = polynomial.length - 1; i >= step; i--) {
            polynomial[i] -= polynomial[i - step];
        }
    }

    /** Divides by {@code 1 - q^step}. */
    private static void over(long[] polynomial, int step) {
        for (int i = step; i < polynomial.length; i++) {
            polynomial[i] += polynomial[i - step];
        }
    }

    private static double normal(int n, Collection<Integer> groups, int s) {
        double variance = part(n);
        for (int m : groups) {
            variance -= part(m);
        }
        return variance == 0
                ? 1
                : 2
                        * new NormalDistribution(null, 0, 1)
                                .cumulativeProbability(-Math.max(0, Math.abs(s) - 1) / Math.sqrt(variance));
    }

    private static double part(double n) {
        return n * (n - 1) * (2 * n + 5) / 18;
    }
}
