package tuttarco.demo;

import java.util.Random;

/**
 * How one player's instrument sounds, unlike another's.
 *
 * @param tuning what its pitches are multiplied by
 * @param vibratoHz how often the left hand rocks
 * @param vibratoDepth how far it takes the pitch to either side, as a share
 * @param colour by how much the body strengthens what lies around each multiple of {@link #APART_HZ}
 */
record Voice(double tuning, double vibratoHz, double vibratoDepth, double... colour) {
    /** In tune, still and colourless. */
    static final Voice PLAIN = new Voice(1, 0, 0, 1);

    /** Standard deviation of the tuning, as a share: 3 cents (chosen, a section and not a machine). */
    private static final double OUT_OF_TUNE = 0.0017;

    /** The usual vibrato (common practice, no source): so often, and 10 to 20 cents to either side. */
    private static final double SLOWEST_HZ = 5;

    private static final double FASTEST_HZ = 6.5;
    private static final double NARROWEST = 0.006;
    private static final double WIDEST = 0.012;

    /** Resonances of the body lie so far apart, hertz, and change the loudness by up to 6 dB (chosen). */
    private static final double APART_HZ = 150;

    private static final double WEAKEST = 0.5;
    private static final double STRONGEST = 2;
    private static final int COLOURS = 40;

    /** Partials of a bowed string fall as one over their number: Helmholtz motion is a sawtooth. */
    private static final int PARTIALS = 8;

    static Voice of(Random random) {
        return new Voice(
                1 + OUT_OF_TUNE * random.nextGaussian(),
                SLOWEST_HZ + (FASTEST_HZ - SLOWEST_HZ) * random.nextDouble(),
                NARROWEST + (WIDEST - NARROWEST) * random.nextDouble(),
                random.doubles(COLOURS, WEAKEST, STRONGEST).toArray());
    }

    Partials partials(double pitchHz) {
        double[] loudness = new double[PARTIALS];
        for (int k = 1; k <= PARTIALS; k++) {
            int near = (int) Math.min(colour.length - 1, Math.round(k * pitchHz / APART_HZ));
            loudness[k - 1] = colour[near] / k;
        }
        return new Partials(loudness);
    }

    /** Phase of a tone that began some time ago, radians. */
    double phase(double pitchHz, double sinceS) {
        double rocking = 2 * Math.PI * vibratoHz;
        double ahead = rocking > 0 ? vibratoDepth * (1 - Math.cos(rocking * sinceS)) / rocking : 0;
        return 2 * Math.PI * pitchHz * tuning * (sinceS + ahead);
    }
}
