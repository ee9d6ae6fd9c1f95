package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AV_SAMPLE_FMT_FLT;
import static org.bytedeco.ffmpeg.global.avutil.av_channel_layout_default;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;
import static org.bytedeco.ffmpeg.global.swresample.swr_alloc;
import static org.bytedeco.ffmpeg.global.swresample.swr_close;
import static org.bytedeco.ffmpeg.global.swresample.swr_convert_frame;
import static org.bytedeco.ffmpeg.global.swresample.swr_free;

import java.nio.FloatBuffer;
import java.util.Arrays;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swresample.SwrContext;
import tuttarco.files.InputException;

/**
 * The sound of a clip for hearing, from any place on: two channels at a rate every sound card takes, samples from -1 to 1
 * turn by turn. Its times are those of {@link Clip}; where the clip has no sound there is silence, before its start and
 * after its end too. Not for two threads at once.
 */
public final class ClipSound implements AutoCloseable {
    /** Rate of sound that goes with pictures (common practice); hertz. */
    public static final int SAMPLES_PER_S = 48_000;

    public static final int CHANNELS = 2;

    /** Coded sound begins to be right only some blocks after the place it is decoded from; seconds (chosen: four of AAC's 1024 samples). */
    private static final double RUN_UP_S = 0.1;

    private final DecodedStream stream;
    private final SwrContext converter = swr_alloc();
    private final AVFrame converted = av_frame_alloc();
    /** Samples decoded and not read, each of both channels. */
    private FloatBuffer ready = FloatBuffer.allocate(0);
    /** Where the first of them belongs, counted from the clip's start, and where the next read begins. */
    private long readyAt = Long.MIN_VALUE;

    private long at;
    private boolean ended;

    private ClipSound(DecodedStream stream) {
        this.stream = stream;
    }

    /**
     * Opens the sound of a clip at its start; empty if it has none.
     *
     * @throws InputException if the sound is of a kind that can't be read
     */
    public static Optional<ClipSound> open(ClipFacts clip) throws InputException {
        return clip.hasSound()
                ? Optional.of(new ClipSound(new DecodedStream(clip.file(), AVMEDIA_TYPE_AUDIO)))
                : Optional.empty();
    }

    /** Goes to a sample, counted from the clip's start at {@link #SAMPLES_PER_S}. */
    public void seek(long sample) {
        at = sample;
        stream.seek(Math.max(0, (double) sample / SAMPLES_PER_S - RUN_UP_S));
        swr_close(converter);
        ready = FloatBuffer.allocate(0);
        readyAt = Long.MIN_VALUE;
        ended = false;
    }

    /** The sample the next read begins with. */
    public long at() {
        return at;
    }

    /** Fills part of the block with the next samples of both channels: so many of each, from a place counted likewise. */
    public void read(float[] block, int from, int samples) {
        int filled = 0;
        while (filled < samples) {
            long missing = missing();
            int room = samples - filled;
            int count = (int) Math.min(room, missing > 0 ? missing : ready.remaining() / CHANNELS);
            int place = (from + filled) * CHANNELS;
            if (missing > 0) {
                Arrays.fill(block, place, place + count * CHANNELS, 0);
            } else {
                ready.get(block, place, count * CHANNELS);
                readyAt += count;
            }
            filled += count;
            at += count;
        }
    }

    /** How many samples of silence come before those that are ready; 0 if these come now, and there is at least one. */
    private long missing() {
        while (!ended) {
            long past = at - readyAt;
            if (ready.hasRemaining() && past < ready.remaining() / CHANNELS) {
                if (past < 0) {
                    return -past;
                }
                ready.position(ready.position() + (int) past * CHANNELS);
                readyAt = at;
                return 0;
            }
            ended = !decode();
        }
        return Long.MAX_VALUE;
    }

    /** Decodes what follows. It follows without a gap unless its time says clearly otherwise. */
    private boolean decode() {
        long expected = readyAt + ready.remaining() / CHANNELS;
        if (!stream.next()) {
            return false;
        }
        long told = Math.round(stream.timeS() * SAMPLES_PER_S);
        boolean gap =
                readyAt == Long.MIN_VALUE || Math.abs(told - expected) > SoundTrack.SHORTEST_GAP_S * SAMPLES_PER_S;
        ready = convert();
        readyAt = gap ? told : expected;
        return true;
    }

    private FloatBuffer convert() {
        av_frame_unref(converted);
        converted.format(AV_SAMPLE_FMT_FLT).sample_rate(SAMPLES_PER_S);
        av_channel_layout_default(converted.ch_layout(), CHANNELS);
        int result = swr_convert_frame(converter, converted, stream.frame());
        if (result < 0) {
            // another format from here on
            swr_close(converter);
            result = swr_convert_frame(converter, converted, stream.frame());
        }
        return result < 0
                ? FloatBuffer.allocate(0)
                : converted
                        .data(0)
                        .capacity((long) converted.nb_samples() * CHANNELS * Float.BYTES)
                        .asByteBuffer()
                        .asFloatBuffer();
    }

    @Override
    public void close() {
        av_frame_free(converted);
        swr_free(converter);
        stream.close();
    }
}
