package tuttarco.sound;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * How loud a recording was at any time: the K-weighted power of each step of 10 ms (1.4 MB an hour), and the loudness of the
 * whole. Levels are in LUFS as ITU-R BS.1770 computes them, over whatever time is asked for. Times are seconds from the clip's
 * start.
 */
public final class LevelCurve {
    /** Of what is fainter nothing is said: the absolute gate of ITU-R BS.1770. */
    public static final double FAINTEST_LUFS = GatedLoudness.ABSOLUTE_GATE_LUFS;

    /** Over which momentary loudness is measured (EBU Tech 3341), seconds. */
    public static final double MOMENTARY_S = (double) LoudnessMeter.MOMENTARY_STEPS / Steps.PER_S;

    private final double startS;
    private final float[] powers;
    private final OptionalDouble integratedLufs;

    private LevelCurve(double startS, float[] powers, OptionalDouble integratedLufs) {
        this.startS = startS;
        this.powers = powers;
        this.integratedLufs = integratedLufs;
    }

    /** The loudness of the whole, gated; empty where nothing was louder than {@link #FAINTEST_LUFS}. */
    public OptionalDouble integratedLufs() {
        return integratedLufs;
    }

    /** When the curve ends. */
    public double endS() {
        return startS + (double) powers.length / Steps.PER_S;
    }

    /**
     * The loudness of a while around a time, to whole steps; minus infinity for silence, empty where the while is not wholly
     * within the sound.
     */
    public OptionalDouble aroundLufs(double timeS, double lengthS) {
        return lufs(timeS - lengthS / 2, lengthS);
    }

    /** The loudness from a time on, like {@link #aroundLufs}. */
    public OptionalDouble lufs(double fromS, double lengthS) {
        long first = Math.round((fromS - startS) * Steps.PER_S);
        long count = Math.max(1, Math.round(lengthS * Steps.PER_S));
        if (first < 0 || first + count > powers.length) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (long i = first; i < first + count; i++) {
            sum += powers[(int) i];
        }
        return OptionalDouble.of(Loudness.lufs(sum / count));
    }

    /** Gathers a curve while the sound is read block by block. */
    public static final class Gathering {
        private static final int FIRST_STEPS = 60 * Steps.PER_S;

        private final double startS;
        private final LoudnessMeter meter;
        private float[] powers = new float[FIRST_STEPS];
        private int count;

        /** @param startS when the first sample sounds */
        public Gathering(int samplesPerS, double startS) {
            this.startS = startS;
            this.meter = new LoudnessMeter(samplesPerS, this::keep);
        }

        private void keep(double power) {
            if (count == powers.length) {
                powers = Arrays.copyOf(powers, 2 * count);
            }
            powers[count] = (float) power;
            count++;
        }

        /** Takes the samples that follow, -1 to 1: the first {@code length} of a block. */
        public void add(float[] block, int length) {
            meter.add(block, length);
        }

        public LevelCurve curve() {
            return new LevelCurve(startS, Arrays.copyOf(powers, count), meter.integratedLufs());
        }
    }
}
