package tuttarco.sound;

import java.util.function.DoubleConsumer;

/**
 * Cuts sound of one channel into steps of 10 ms and gives the mean square of each, K-weighted. All that is measured is made
 * of these: a step is short beside a bow change, and ten of them are the hop of the gating blocks of ITU-R BS.1770.
 */
final class Steps {
    static final int PER_S = 100;

    private final int ratePerS;
    private final KWeighting weighting;
    private final DoubleConsumer powers;
    private long step;
    private long sample;
    private double sum;
    private int count;

    Steps(int ratePerS, DoubleConsumer powers) {
        if (ratePerS < PER_S) {
            throw new IllegalArgumentException("a step needs a sample: " + ratePerS + " a second are too few");
        }
        this.ratePerS = ratePerS;
        this.weighting = new KWeighting(ratePerS);
        this.powers = powers;
    }

    /** Takes the samples that follow, the first {@code length} of a block; the last step is given once it is full. */
    void add(float[] block, int length) {
        for (int i = 0; i < length; i++) {
            double weighted = weighting.next(block[i]);
            sum += weighted * weighted;
            count++;
            sample++;
            // a rate need not hold a whole number of samples a step; over a second it does
            if (sample * PER_S >= (step + 1) * ratePerS) {
                powers.accept(sum / count);
                weighting.settle();
                step++;
                sum = 0;
                count = 0;
            }
        }
    }
}
