package tuttarco.signal;

import java.util.Arrays;
import org.apache.commons.math3.util.MathArrays;

/**
 * A quantity over time, known at some times and straight between them; before the first and after the last it is level.
 *
 * @param timesS in order, seconds, at least one
 * @param values one a time, in any unit
 */
public record Curve(double[] timesS, double[] values) {
    public Curve {
        if (timesS.length == 0 || timesS.length != values.length) {
            throw new IllegalArgumentException(timesS.length + " times for " + values.length + " values");
        }
        MathArrays.checkOrder(timesS, MathArrays.OrderDirection.INCREASING, false);
    }

    public double at(double timeS) {
        int found = Arrays.binarySearch(timesS, timeS);
        if (found >= 0) {
            return values[found];
        }
        int after = -found - 1;
        if (after == 0 || after == timesS.length) {
            return values[Math.max(0, after - 1)];
        }
        double share = (timeS - timesS[after - 1]) / (timesS[after] - timesS[after - 1]);
        return (1 - share) * values[after - 1] + share * values[after];
    }

    /** Mean slope from {@code reachS} before to {@code reachS} after, per second. */
    public double slope(double timeS, double reachS) {
        return (at(timeS + reachS) - at(timeS - reachS)) / (2 * reachS);
    }

    /** The integral from the first time to each of the times, exact for straight lines. */
    public Curve integral() {
        double[] sums = new double[values.length];
        for (int i = 1; i < sums.length; i++) {
            sums[i] = sums[i - 1] + (timesS[i] - timesS[i - 1]) * (values[i] + values[i - 1]) / 2;
        }
        return new Curve(timesS, sums);
    }

    /** The mean of the values at the times within {@code reachS} to either side, at each of the times. */
    public Curve movingMean(double reachS) {
        double[] means = new double[values.length];
        double sum = 0;
        int first = 0;
        int end = 0;
        for (int i = 0; i < means.length; i++) {
            while (end < means.length && timesS[end] <= timesS[i] + reachS) {
                sum += values[end++];
            }
            while (timesS[first] < timesS[i] - reachS) {
                sum -= values[first++];
            }
            means[i] = sum / (end - first);
        }
        return new Curve(timesS, means);
    }
}
