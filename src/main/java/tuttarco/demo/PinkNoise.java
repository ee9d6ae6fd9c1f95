package tuttarco.demo;

import java.util.Random;

/**
 * Noise that falls with the pitch as a room's does, of standard deviation 1: white noises added up, each held twice as long
 * as the one before (R. Voss, in M. Gardner, Scientific American, April 1978, from memory).
 */
final class PinkNoise {
    /** The slowest is held for 2 to the power of this many samples: some 90 ms, below any tone. */
    private static final int NOISES = 12;

    private final Random random;
    private final double[] held = new double[NOISES];
    private double sum;
    private int count;

    PinkNoise(Random random) {
        this.random = random;
        for (int i = 0; i < NOISES; i++) {
            held[i] = random.nextGaussian();
            sum += held[i];
        }
    }

    double next() {
        count++;
        int changes = Math.min(NOISES - 1, Integer.numberOfTrailingZeros(count));
        double fresh = random.nextGaussian();
        sum += fresh - held[changes];
        held[changes] = fresh;
        return sum / Math.sqrt(NOISES);
    }
}
