package tuttarco.stats;

import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * Is something there in at least so many of several independent trials? The partial conjunction test (Y. Benjamini, R. Heller
 * 2008, Biometrics 64:1215): the trials that show it most are left out, and the rest are put together as R. A. Fisher did
 * (Statistical Methods for Research Workers, 4th ed. 1932).
 */
public final class SeveralOf {
    private SeveralOf() {}

    /**
     * Probability of such trials, or ones that show it more, if it were there in fewer than {@code least} of them.
     *
     * @param ps one a trial, each 0 to 1
     * @param least from 1 to the number of trials
     */
    public static double p(List<Double> ps, int least) {
        if (least < 1 || least > ps.size()) {
            throw new IllegalArgumentException("at least " + least + " of " + ps.size() + " can't be asked");
        }
        double sum = ps.stream()
                .sorted()
                .skip(least - 1L)
                .mapToDouble(p -> -2 * Math.log(p))
                .sum();
        int degrees = 2 * (ps.size() - least + 1);
        return 1 - new ChiSquaredDistribution(null, degrees).cumulativeProbability(sum);
    }
}
