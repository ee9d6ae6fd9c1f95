package tuttarco.stats;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Do two groups differ in their mean? The difference is held against those of groups drawn from all together (E. S.
 * Edgington, Randomization Tests, 3rd ed. 1995). Equal values give equal results.
 */
public final class Permutation {
    private static final int DRAWS = 9999;

    private static final long SEED = 20_261_126;

    /** Differences this close are equal but for rounding, as a share of the larger. */
    private static final double ROUNDING = 1e-9;

    private Permutation() {}

    /**
     * Probability, if who is in which group meant nothing, of means at least so far apart; the groups as they are count as
     * one of the draws, so it is never 0.
     *
     * @param one at least one value; {@code other} too
     */
    public static double p(List<Double> one, List<Double> other) {
        if (one.isEmpty() || other.isEmpty()) {
            throw new IllegalArgumentException("each group needs a value");
        }
        List<Double> all = new ArrayList<>(one);
        all.addAll(other);
        double observed = apart(all, one.size());
        Random random = new Random(SEED);
        int asFar = 1;
        for (int d = 0; d < DRAWS; d++) {
            Collections.shuffle(all, random);
            asFar += apart(all, one.size()) >= observed * (1 - ROUNDING) ? 1 : 0;
        }
        return (double) asFar / (DRAWS + 1);
    }

    private static double apart(List<Double> all, int first) {
        return Math.abs(mean(all.subList(0, first)) - mean(all.subList(first, all.size())));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }
}
