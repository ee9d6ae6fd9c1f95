package tuttarco.sound;

import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;

/**
 * Loudness per ITU-R BS.1770-4 of one channel, in LUFS, and its time scales per EBU Tech 3341: momentary over 400 ms,
 * short-term over 3 s, integrated over all with both gates. Sound is given block by block; how much it keeps doesn't grow.
 *
 * <p>One channel is what {@code video.SoundTrack} gives. Two channels that are alike read as they would in stereo; where they
 * have nothing in common, up to 3 LU less.
 */
public final class LoudnessMeter {
    static final int MOMENTARY_STEPS = 4 * Steps.PER_S / 10;
    private static final int SHORT_TERM_STEPS = 3 * Steps.PER_S;

    /** Gating blocks are as long as momentary loudness and overlap by three quarters. */
    private static final int GATING_HOP_STEPS = MOMENTARY_STEPS / 4;

    private final Steps steps;
    private final double[] last = new double[SHORT_TERM_STEPS];
    private final GatedLoudness gated = new GatedLoudness();
    private long stepCount;
    private double highestMomentary;
    private double highestShortTerm;

    public LoudnessMeter(int samplesPerS) {
        this(samplesPerS, power -> {});
    }

    /** @param powers is given each step's power too */
    LoudnessMeter(int samplesPerS, DoubleConsumer powers) {
        DoubleConsumer own = this::step;
        steps = new Steps(samplesPerS, own.andThen(powers));
    }

    /** Takes the samples that follow, -1 to 1: the first {@code length} of a block. */
    public void add(float[] block, int length) {
        steps.add(block, length);
    }

    private void step(double power) {
        last[(int) (stepCount % last.length)] = power;
        stepCount++;
        if (stepCount >= MOMENTARY_STEPS) {
            double momentary = meanOfLast(MOMENTARY_STEPS);
            highestMomentary = Math.max(highestMomentary, momentary);
            if (stepCount % GATING_HOP_STEPS == 0) {
                gated.add(momentary);
            }
        }
        if (stepCount >= SHORT_TERM_STEPS) {
            highestShortTerm = Math.max(highestShortTerm, meanOfLast(SHORT_TERM_STEPS));
        }
    }

    private double meanOfLast(int count) {
        double sum = 0;
        for (long i = stepCount - count; i < stepCount; i++) {
            sum += last[(int) (i % last.length)];
        }
        return sum / count;
    }

    /** Loudness of the last 400 ms; empty before there were as many, minus infinity for silence. */
    public OptionalDouble momentaryLufs() {
        return ofLast(MOMENTARY_STEPS);
    }

    /** Loudness of the last 3 s; empty before there were as many, minus infinity for silence. */
    public OptionalDouble shortTermLufs() {
        return ofLast(SHORT_TERM_STEPS);
    }

    private OptionalDouble ofLast(int count) {
        return stepCount < count ? OptionalDouble.empty() : OptionalDouble.of(Loudness.lufs(meanOfLast(count)));
    }

    /** The highest momentary loudness so far; empty where there was nothing but silence. */
    public OptionalDouble highestMomentaryLufs() {
        return highest(highestMomentary);
    }

    /** The highest short-term loudness so far; empty where there was nothing but silence. */
    public OptionalDouble highestShortTermLufs() {
        return highest(highestShortTerm);
    }

    private static OptionalDouble highest(double power) {
        return power > 0 ? OptionalDouble.of(Loudness.lufs(power)) : OptionalDouble.empty();
    }

    /** Integrated loudness so far; empty where nothing was louder than -70 LUFS. */
    public OptionalDouble integratedLufs() {
        return gated.lufs();
    }
}
