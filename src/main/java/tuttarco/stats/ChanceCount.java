package tuttarco.stats;

import java.util.List;

/** How many of several things happen that happen independently, each with a chance of its own (Poisson's binomial). */
public final class ChanceCount {
    private ChanceCount() {}

    /**
     * Probability that at least so many happen.
     *
     * @param chances one a thing, each 0 to 1
     */
    public static double atLeast(int count, List<Double> chances) {
        double[] of = new double[chances.size() + 1];
        of[0] = 1;
        int seen = 0;
        for (double chance : chances) {
            if (!(chance >= 0 && chance <= 1)) {
                throw new IllegalArgumentException("a chance lies in 0 to 1, not " + chance);
            }
            seen++;
            for (int k = seen; k > 0; k--) {
                of[k] = of[k] * (1 - chance) + of[k - 1] * chance;
            }
            of[0] *= 1 - chance;
        }
        double sum = 0;
        for (int k = chances.size(); k >= Math.max(0, count); k--) {
            sum += of[k];
        }
        return Math.min(1, sum);
    }
}
