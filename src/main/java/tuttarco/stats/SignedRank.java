package tuttarco.stats;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/**
 * Wilcoxon's signed-rank test: do differences lie to one side of zero? (F. Wilcoxon 1945, Biometrics Bull. 1:80; M. Hollander,
 * D. A. Wolfe, Nonparametric Statistical Methods, 2nd ed. 1999, chapter 3.)
 *
 * <p>Differences of zero are dropped and equal ones share the mean of their ranks. Up to {@link #MOST_EXACT} differences
 * the distribution of the rank sum is counted, with the shared ranks as they are; for more it is taken to be normal, with
 * the continuity correction. The test takes the differences to be independent of each other.
 *
 * @param n number of differences other than zero
 * @param sum of the ranks of the positive differences
 * @param p probability, if neither side were favoured, of a sum at least so far from the middle on either side
 */
public record SignedRank(int n, double sum, double p) {
    /** Most differences that are counted exactly: more would take long and gain nothing (chosen). */
    static final int MOST_EXACT = 60;

    /** Shared ranks are whole halves. */
    private static final int HALVES = 2;

    /**
     * Tests differences; nothing but zeros favours neither side.
     *
     * @throws IllegalArgumentException if a difference is not finite
     */
    public static SignedRank of(List<Double> differences) {
        if (!differences.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a signed-rank test needs finite differences");
        }
        double[] signed = differences.stream()
                .mapToDouble(Double::doubleValue)
                .filter(d -> d != 0)
                .toArray();
        if (signed.length == 0) {
            return new SignedRank(0, 0, 1);
        }
        double[] sizes = new double[signed.length];
        for (int i = 0; i < signed.length; i++) {
            sizes[i] = Math.abs(signed[i]);
        }
        double[] ranks = new NaturalRanking(TiesStrategy.AVERAGE).rank(sizes);
        double sum = 0;
        for (int i = 0; i < signed.length; i++) {
            sum += signed[i] > 0 ? ranks[i] : 0;
        }
        double p = signed.length <= MOST_EXACT ? exact(ranks, sum) : normal(ranks, sum);
        return new SignedRank(signed.length, sum, Math.min(1, p));
    }

    /** Counts, by their sums, all ways of giving the ranks signs. */
    private static double exact(double[] ranks, double sum) {
        int total = 0;
        for (double rank : ranks) {
            total += (int) Math.round(HALVES * rank);
        }
        double[] share = new double[total + 1];
        share[0] = 1;
        int reached = 0;
        for (double rank : ranks) {
            int halves = (int) Math.round(HALVES * rank);
            reached += halves;
            for (int s = reached; s >= 0; s--) {
                share[s] = (share[s] + (s >= halves ? share[s - halves] : 0)) / 2;
            }
        }
        int observed = (int) Math.round(HALVES * sum);
        int lesser = Math.min(observed, total - observed);
        double tail = 0;
        for (int s = 0; s <= lesser; s++) {
            tail += share[s];
        }
        return 2 * tail;
    }

    private static double normal(double[] ranks, double sum) {
        double mean = 0;
        double variance = 0;
        for (double rank : ranks) {
            mean += rank / 2;
            variance += rank * rank / 4;
        }
        double off = Math.max(0, Math.abs(sum - mean) - 0.5);
        return 2 * new NormalDistribution(null, 0, 1).cumulativeProbability(-off / Math.sqrt(variance));
    }
}
