package tuttarco.demo;

import java.util.Random;

/**
 * Hears a soundtrack in a room, from the start on: with the room's echoes (M. Schroeder, Natural Sounding Artificial
 * Reverberation, J. Audio Eng. Soc. 10, 1962: four combs, then two all-passes), its noise, and what is too loud bent.
 */
final class Microphone {
    /** Delays of Schroeder's combs and all-passes, seconds, and the latter's gain. */
    private static final double[] COMBS_S = {0.0297, 0.0371, 0.0411, 0.0437};

    private static final double[] ALL_PASSES_S = {0.005, 0.0017};
    private static final double ALL_PASS = 0.7;

    /** Loudness of the echoes in a room whose echoes last a second, as a share of the direct sound (chosen: 8 dB below). */
    private static final double ECHOES = 0.4;

    /** An echo has died away after falling to this share: 60 dB. */
    private static final double DIED_AWAY = 0.001;

    private final Soundtrack source;
    private final Delay[] combs = new Delay[COMBS_S.length];
    private final double[] feedbacks = new double[COMBS_S.length];
    private final Delay[] allPasses = new Delay[ALL_PASSES_S.length];
    private final double echoes;
    private final PinkNoise noise;
    private final double noiseLevel;
    private long next;

    /** A line that gives back what went in some time before. */
    private static final class Delay {
        private final double[] line;
        private int at;

        Delay(double lengthS) {
            line = new double[(int) Math.round(lengthS * Soundtrack.FORMAT.samplesPerS())];
        }

        double out() {
            return line[at];
        }

        void in(double sample) {
            line[at] = sample;
            at = (at + 1) % line.length;
        }
    }

    Microphone(Soundtrack source, Acoustics acoustics, long seed) {
        this.source = source;
        for (int i = 0; i < combs.length; i++) {
            combs[i] = new Delay(COMBS_S[i]);
            feedbacks[i] = Math.pow(DIED_AWAY, COMBS_S[i] / acoustics.echoesS());
        }
        for (int i = 0; i < allPasses.length; i++) {
            allPasses[i] = new Delay(ALL_PASSES_S[i]);
        }
        // their energy grows with the time they last (W. Sabine, 1900)
        echoes = ECHOES * Math.sqrt(acoustics.echoesS());
        noise = new PinkNoise(new Random(seed));
        noiseLevel = Math.pow(10, acoustics.noiseDb() / 20);
    }

    /** The samples that follow, -1 to 1, up to a time. */
    float[] until(double endS) {
        float[] block = new float[(int) Math.max(0, Math.round(endS * Soundtrack.FORMAT.samplesPerS()) - next)];
        source.fill(next, block);
        next += block.length;
        for (int i = 0; i < block.length; i++) {
            block[i] = (float) Math.tanh(block[i] + echoes * echo(block[i]) + noiseLevel * noise.next());
        }
        return block;
    }

    private double echo(double dry) {
        double sum = 0;
        for (int i = 0; i < combs.length; i++) {
            double out = combs[i].out();
            combs[i].in(dry + feedbacks[i] * out);
            // as loud, on the whole, however long it lasts
            sum += out * Math.sqrt((1 - feedbacks[i] * feedbacks[i]) / combs.length);
        }
        for (Delay allPass : allPasses) {
            double before = allPass.out();
            double in = sum + ALL_PASS * before;
            allPass.in(in);
            sum = before - ALL_PASS * in;
        }
        return sum;
    }
}
