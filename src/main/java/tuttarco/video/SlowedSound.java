package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avutil.AV_SAMPLE_FMT_FLT;

import java.nio.FloatBuffer;
import java.util.Locale;
import org.bytedeco.javacv.FFmpegFrameFilter;
import org.bytedeco.javacv.Frame;

/**
 * Sound of {@link ClipSound}'s kind played slower at its own pitch, by FFmpeg's filter atempo: what goes in at a sample comes
 * out at that sample divided by the speed.
 */
public final class SlowedSound implements AutoCloseable {
    /** The slowest that atempo does at once; twice in a row is its square. */
    private static final double SLOWEST_AT_ONCE = 0.5;

    public static final double SLOWEST = SLOWEST_AT_ONCE * SLOWEST_AT_ONCE;

    /**
     * Atempo lengthens a note on either side, and on the whole has it come too early; seconds of what goes in by which it is put off, so
     * that notes begin about as much early as they end late (bursts of 50 to 500 ms at 0.25 to 0.75 of the speed, 2026-11-26).
     */
    private static final double EARLY_S = 0.008;

    private static final int ONLY_INPUT = 0;

    private final FFmpegFrameFilter filter;
    private FloatBuffer ready;

    /**
     * @param speed {@link #SLOWEST} to 1
     */
    public SlowedSound(double speed) {
        if (!(speed >= SLOWEST && speed <= 1)) {
            throw new IllegalArgumentException("sound is slowed to " + SLOWEST + " to 1, not " + speed);
        }
        boolean twice = speed < SLOWEST_AT_ONCE;
        double last = twice ? speed / SLOWEST_AT_ONCE : speed;
        filter = new FFmpegFrameFilter(
                twice ? atempo(SLOWEST_AT_ONCE) + "," + atempo(last) : atempo(last), ClipSound.CHANNELS);
        double earlyS = (EARLY_S + (twice ? EARLY_S / SLOWEST_AT_ONCE : 0)) / last;
        ready = FloatBuffer.allocate((int) Math.round(earlyS * ClipSound.SAMPLES_PER_S) * ClipSound.CHANNELS);
        filter.setSampleRate(ClipSound.SAMPLES_PER_S);
        filter.setSampleFormat(AV_SAMPLE_FMT_FLT);
        try {
            filter.start();
        } catch (FFmpegFrameFilter.Exception e) {
            throw refused(e);
        }
    }

    private static String atempo(double speed) {
        return String.format(Locale.ROOT, "atempo=%.6f", speed);
    }

    /** Takes a block of both channels, turn by turn, whole. */
    public void put(float[] block) {
        try {
            filter.pushSamples(
                    ONLY_INPUT,
                    ClipSound.CHANNELS,
                    ClipSound.SAMPLES_PER_S,
                    AV_SAMPLE_FMT_FLT,
                    FloatBuffer.wrap(block));
        } catch (FFmpegFrameFilter.Exception e) {
            throw refused(e);
        }
    }

    /** Fills part of a block with what has come out, as {@link ClipSound#read} counts; how many samples there were. */
    public int take(float[] block, int from, int samples) {
        int taken = 0;
        while (taken < samples && hasMore()) {
            int count = Math.min(samples - taken, ready.remaining() / ClipSound.CHANNELS);
            ready.get(block, (from + taken) * ClipSound.CHANNELS, count * ClipSound.CHANNELS);
            taken += count;
        }
        return taken;
    }

    private boolean hasMore() {
        if (ready.hasRemaining()) {
            return true;
        }
        try {
            Frame out = filter.pullSamples();
            if (out == null) {
                return false;
            }
            ready = (FloatBuffer) out.samples[0];
            return ready.hasRemaining();
        } catch (FFmpegFrameFilter.Exception e) {
            throw refused(e);
        }
    }

    private static IllegalStateException refused(FFmpegFrameFilter.Exception e) {
        return new IllegalStateException("sound could not be slowed", e);
    }

    @Override
    public void close() {
        try {
            filter.release();
        } catch (FFmpegFrameFilter.Exception e) {
            throw refused(e);
        }
    }
}
