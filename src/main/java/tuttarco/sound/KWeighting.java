package tuttarco.sound;

/**
 * The K-weighting of ITU-R BS.1770: a shelf that stands for the head, then a high-pass. The recommendation gives its
 * coefficients for 48,000 samples a second; for other rates they are carried over by their analogue prototypes, so that the
 * response is the same but near the highest frequencies.
 */
final class KWeighting {
    private static final double PUBLISHED_PER_S = 48_000;

    /** ITU-R BS.1770-4, table 1. */
    private static final Biquad HEAD =
            new Biquad(1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585);

    /** ITU-R BS.1770-4, table 2. */
    private static final Biquad HIGH_PASS = new Biquad(1, -2, 1, -1.99004745483398, 0.99007225036621);

    private final Biquad.State head;
    private final Biquad.State highPass;

    KWeighting(double ratePerS) {
        head = new Biquad.State(head(ratePerS));
        highPass = new Biquad.State(highPass(ratePerS));
    }

    static Biquad head(double ratePerS) {
        return HEAD.at(ratePerS, PUBLISHED_PER_S);
    }

    static Biquad highPass(double ratePerS) {
        return HIGH_PASS.at(ratePerS, PUBLISHED_PER_S);
    }

    double next(double sample) {
        return highPass.next(head.next(sample));
    }

    void settle() {
        head.settle();
        highPass.settle();
    }
}
