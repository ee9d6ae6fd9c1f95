package tuttarco.stats;

import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/**
 * By how much pairs differ, by Student's paired test; the pairs are taken to be independent of each other.
 *
 * @param pairs how many
 * @param mean of second less first
 * @param interval of the mean, 95 %
 * @param effectSize the mean over the differences' standard deviation (Cohen 1988, d for pairs)
 * @param pValue two-sided, 0 to 1
 */
public record PairedDifference(int pairs, double mean, Interval interval, double effectSize, double pValue) {
    private static final double LEVEL = 0.95;

    /** Differences that spread less than this share of themselves are the same but for rounding. */
    private static final double ROUNDING = 1e-12;

    /**
     * @param first at least two
     * @param second as many, each beside its own
     */
    public static PairedDifference of(double[] first, double[] second) {
        if (first.length != second.length || first.length < 2) {
            throw new IllegalArgumentException(
                    "pairs are at least two, each with both, not " + first.length + " and " + second.length);
        }
        SummaryStatistics differences = new SummaryStatistics();
        IntStream.range(0, first.length).forEach(i -> differences.addValue(second[i] - first[i]));
        double mean = differences.getMean();
        if (mean == 0 && differences.getStandardDeviation() == 0) {
            return new PairedDifference(first.length, 0, new Interval(0, 0), 0, 1);
        }
        double deviation = Math.max(differences.getStandardDeviation(), ROUNDING * Math.abs(mean));
        double error = deviation / Math.sqrt(first.length);
        TDistribution student = new TDistribution(first.length - 1.0);
        double aside = student.inverseCumulativeProbability(1 - (1 - LEVEL) / 2) * error;
        return new PairedDifference(
                first.length,
                mean,
                new Interval(mean - aside, mean + aside),
                mean / deviation,
                2 * student.cumulativeProbability(-Math.abs(mean) / error));
    }
}
