package tuttarco.stats;

import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;

/** Sample quantiles, type 7 of Hyndman & Fan 1996 (Am. Stat. 50:361): linear between the ordered values. */
public final class Quantiles {
    /** Of fewer values there is no middle half. */
    public static final int LEAST_MIDDLE_HALF = 4;

    private Quantiles() {}

    /**
     * The middle value, in the values' unit; between the two middle ones where their number is even.
     *
     * @throws IllegalArgumentException if there are no values or one is not finite
     */
    public static double median(List<Double> values) {
        return quantile(values, 0.5);
    }

    /**
     * Length of the range that holds the middle half of the values, in their unit; of fewer than {@link #LEAST_MIDDLE_HALF} it
     * says nothing.
     *
     * @throws IllegalArgumentException if there are no values or one is not finite
     */
    public static double middleHalf(List<Double> values) {
        return quantile(values, 0.75) - quantile(values, 0.25);
    }

    /**
     * The value below which a share of the values lies, in the values' unit.
     *
     * @param share 0 (the smallest value) to 1 (the greatest)
     * @throws IllegalArgumentException if there are no values, one is not finite, or the share is out of its range
     */
    public static double quantile(List<Double> values, double share) {
        if (values.isEmpty() || !values.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a quantile needs at least one value, and finite ones");
        }
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a quantile's share lies in 0 to 1, not " + share);
        }
        double[] array = values.stream().mapToDouble(Double::doubleValue).toArray();
        if (share == 0) {
            return values.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        }
        return new Percentile().withEstimationType(EstimationType.R_7).evaluate(array, 100 * share);
    }
}
