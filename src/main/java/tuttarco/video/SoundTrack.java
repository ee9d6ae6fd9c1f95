package tuttarco.video;

import java.nio.FloatBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameGrabber.SampleMode;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * The sound of a clip or of a sound file, read block by block from its start and never held whole. It comes as one channel,
 * from -1 to 1 where the file has one; several are mixed, each at 3 dB less where there are two. Its times are those of {@link Clip}. Where the file leaves a gap in the sound there is silence, so that
 * what follows keeps its time.
 */
public final class SoundTrack implements AutoCloseable {
    /** Enough for every pitch a string plays and its first partials: half the rate of the compact disc; hertz. */
    public static final int SAMPLES_PER_S = 22_050;

    /** FFmpeg's names of the containers of sound without a picture. */
    private static final String SOUND_CONTAINERS = ",wav,w64,aiff,au,caf,flac,mp3,aac,amr";

    /** Jitter of a container's clock is no gap; seconds (chosen: beyond any tick of common containers). */
    static final double SHORTEST_GAP_S = 0.05;

    /** A longer gap is a damaged clock; seconds: a day. */
    private static final double LONGEST_GAP_S = 86_400;

    private final Path file;
    private final FFmpegFrameGrabber grabber;
    private final double originS;
    private final double startS;
    /** Samples that came before those of {@link #ready}, silence included. */
    private long before;

    private long silent;
    private FloatBuffer ready = FloatBuffer.allocate(0);
    private boolean broken;

    private SoundTrack(Path file, FFmpegFrameGrabber grabber) throws InputException {
        this.file = file;
        this.grabber = grabber;
        if (!grabber.hasAudio() || grabber.getAudioChannels() < 1) {
            throw new InputException(
                    InputBytes.name(file) + " has no sound to hear beats in; give them as a list or a steady tempo.");
        }
        originS = Clip.originS(grabber);
        Frame first = grab();
        if (first == null) {
            throw new InputException(InputBytes.name(file)
                    + " has a sound track, but nothing in it can be read; it may be damaged or empty.");
        }
        startS = first.timestamp / 1e6 - originS;
        ready = (FloatBuffer) first.samples[0];
    }

    /**
     * Opens the sound of a clip, or a sound file.
     *
     * @throws InputException if there is no such file, or it holds no sound that can be read
     */
    public static SoundTrack open(Path file) throws InputException {
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            throw new InputException(
                    "There is no readable recording at " + Plain.text(file.toString()) + "; check the path.");
        }
        FFmpegFrameGrabber grabber = Clip.grabber(file, Clip.CONTAINERS + SOUND_CONTAINERS);
        grabber.setAudioChannels(1);
        grabber.setSampleMode(SampleMode.FLOAT);
        grabber.setSampleRate(SAMPLES_PER_S);
        try {
            grabber.start(true);
            return new SoundTrack(file, grabber);
        } catch (FFmpegFrameGrabber.Exception e) {
            Clip.release(grabber);
            throw new InputException(
                    InputBytes.name(file) + " can't be read as a recording; it may be damaged, cut off while copying,"
                            + " or another kind of file.",
                    e);
        } catch (InputException e) {
            Clip.release(grabber);
            throw e;
        }
    }

    /** When the first sample sounds, seconds from the clip's start; for a sound file from its own. */
    public double startS() {
        return startS;
    }

    /** Fills the block with the samples that follow, and returns how many there were: fewer than it holds at the end. */
    public int read(float[] block) {
        int filled = 0;
        while (filled < block.length && hasMore()) {
            int room = block.length - filled;
            if (silent > 0) {
                int count = (int) Math.min(room, silent);
                Arrays.fill(block, filled, filled + count, 0);
                silent -= count;
                filled += count;
            } else {
                int count = Math.min(room, ready.remaining());
                ready.get(block, filled, count);
                filled += count;
            }
        }
        return filled;
    }

    private boolean hasMore() {
        while (silent == 0 && !ready.hasRemaining()) {
            Frame next = grab();
            if (next == null) {
                return false;
            }
            before += ready.limit();
            ready = (FloatBuffer) next.samples[0];
            double gapS = next.timestamp / 1e6 - originS - startS - (double) before / SAMPLES_PER_S;
            if (gapS > SHORTEST_GAP_S && gapS < LONGEST_GAP_S) {
                silent = Math.round(gapS * SAMPLES_PER_S);
                before += silent;
            }
        }
        return true;
    }

    private Frame grab() {
        try {
            return broken ? null : grabber.grabSamples();
        } catch (FFmpegFrameGrabber.Exception e) {
            broken = true;
            return null;
        }
    }

    /** What to tell the user once the sound is read to its end: one sentence if its tail is damaged. */
    public Optional<String> trouble() {
        return broken
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "The sound of %s is damaged and could be read up to %.1f s only.",
                        InputBytes.name(file),
                        startS + (double) (before + ready.limit()) / SAMPLES_PER_S))
                : Optional.empty();
    }

    @Override
    public void close() {
        Clip.release(grabber);
    }
}
