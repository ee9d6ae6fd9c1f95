package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AAC;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGR0;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGR24;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameRecorder;
import org.bytedeco.javacv.Java2DFrameConverter;
import tuttarco.files.GrowingFile;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;

/**
 * Writes a clip as MP4, frame by frame: H.264 pictures, each at a presentation time of its own, and perhaps one or two
 * channels of AAC sound. The file has its name once the clip is {@linkplain #finish() finished}; a clip closed before that, because
 * something failed, leaves nothing behind.
 */
public final class ClipWriter implements AutoCloseable {
    /** Presentation times are kept to this part of a second: the clock of MPEG systems, ISO/IEC 13818-1. */
    private static final int TICKS_PER_S = 90_000;

    /**
     * OpenH264 takes the ticks for frames, but never more than this many a second (MAX_FRAME_RATE in its param_svc.h),
     * and shares its bits out accordingly.
     */
    private static final double MOST_FRAMES_PER_S = 60;

    /** At most this long from one frame that stands alone to the next, seconds (chosen; keeps seeking quick). */
    private static final double KEY_FRAME_EVERY_S = 2;

    /** Clear for one channel, and two that share much (common practice). */
    private static final int MONO_BITS_PER_S = 96_000;

    private static final int STEREO_BITS_PER_S = 160_000;

    /** Bytes of a pixel of a {@link BufferedImage#TYPE_INT_RGB}: blue, green, red, and one that says nothing. */
    private static final int CHANNELS_PACKED = 4;

    private final GrowingFile growing;
    private final Path file;
    private final int widthPx;
    private final int heightPx;
    private final Optional<SoundFormat> sound;
    private final FFmpegFrameRecorder recorder;
    private final Java2DFrameConverter converter = new Java2DFrameConverter();
    private Optional<Frame> pixels = Optional.empty();
    private long lastTick = -1;

    private ClipWriter(GrowingFile growing, Path file, int widthPx, int heightPx, Optional<SoundFormat> sound) {
        this.growing = growing;
        this.file = file;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.sound = sound;
        this.recorder = new FFmpegFrameRecorder(
                growing.path().toFile(),
                widthPx,
                heightPx,
                sound.map(SoundFormat::channels).orElse(0));
    }

    /**
     * Begins a clip; missing parent folders of the file are made.
     *
     * @param widthPx even, as is the height: H.264 halves the colour both ways
     * @param nominalFramesPerS how many frames a second there will be on the whole, to share the bits out; each frame may
     *     come at any time
     * @param videoBitsPerS what the pictures may take
     * @throws IllegalArgumentException if a side is odd or a number is not positive
     * @throws OutputException if the file can't be begun
     */
    public static ClipWriter open(
            Path file,
            int widthPx,
            int heightPx,
            double nominalFramesPerS,
            int videoBitsPerS,
            Optional<SoundFormat> sound)
            throws OutputException {
        ClipWriter writer = checked(file, widthPx, heightPx, nominalFramesPerS, videoBitsPerS, sound);
        writer.start(nominalFramesPerS, videoBitsPerS, false);
        return writer;
    }

    /**
     * Begins a clip whose index comes first, so that it plays while it is still being loaded; otherwise as {@link #open}. Two
     * threads share each picture.
     */
    public static ClipWriter openIndexFirst(
            Path file,
            int widthPx,
            int heightPx,
            double nominalFramesPerS,
            int videoBitsPerS,
            Optional<SoundFormat> sound)
            throws OutputException {
        ClipWriter writer = checked(file, widthPx, heightPx, nominalFramesPerS, videoBitsPerS, sound);
        writer.start(nominalFramesPerS, videoBitsPerS, true);
        return writer;
    }

    private static ClipWriter checked(
            Path file,
            int widthPx,
            int heightPx,
            double nominalFramesPerS,
            int videoBitsPerS,
            Optional<SoundFormat> sound)
            throws OutputException {
        if (widthPx < 2 || heightPx < 2 || widthPx % 2 != 0 || heightPx % 2 != 0) {
            throw new IllegalArgumentException("a clip has even sides, not " + widthPx + "x" + heightPx + " pixels");
        }
        if (!(nominalFramesPerS > 0 && Double.isFinite(nominalFramesPerS)) || videoBitsPerS < 1) {
            throw new IllegalArgumentException(
                    "a clip has frames and bits, not " + nominalFramesPerS + " and " + videoBitsPerS + " a second");
        }
        return new ClipWriter(GrowingFile.besides(file), file, widthPx, heightPx, sound);
    }

    private void start(double nominalFramesPerS, int videoBitsPerS, boolean indexFirst) throws OutputException {
        av_log_set_level(AV_LOG_QUIET);
        recorder.setFormat("mp4");
        recorder.setVideoCodec(AV_CODEC_ID_H264);
        recorder.setVideoCodecName("libopenh264");
        recorder.setPixelFormat(AV_PIX_FMT_YUV420P);
        recorder.setFrameRate(TICKS_PER_S);
        recorder.setVideoBitrate(
                (int) Math.min(Integer.MAX_VALUE, videoBitsPerS * MOST_FRAMES_PER_S / nominalFramesPerS));
        recorder.setGopSize((int) Math.max(1, Math.round(KEY_FRAME_EVERY_S * nominalFramesPerS)));
        recorder.setMaxBFrames(0);
        // a fixed number of threads and no dates, so that the same pictures make the same file
        recorder.setVideoOption("threads", indexFirst ? "2" : "1");
        recorder.setOption("fflags", "+bitexact");
        if (indexFirst) {
            recorder.setOption("movflags", "+faststart");
        }
        sound.ifPresent(format -> {
            recorder.setAudioCodec(AV_CODEC_ID_AAC);
            recorder.setSampleRate(format.samplesPerS());
            recorder.setAudioBitrate(format.channels() == 1 ? MONO_BITS_PER_S : STEREO_BITS_PER_S);
        });
        try {
            recorder.start();
        } catch (FFmpegFrameRecorder.Exception e) {
            OutputException refused = refused(e);
            try {
                close();
            } catch (OutputException left) {
                refused.addSuppressed(left);
            }
            throw refused;
        }
    }

    /**
     * Adds a frame, {@link BufferedImage#TYPE_3BYTE_BGR} or {@link BufferedImage#TYPE_INT_RGB} of the clip's size, shown from {@code timeS} seconds on; times
     * start at 0 or later and rise.
     */
    public void frame(double timeS, BufferedImage picture) throws OutputException {
        boolean packed = picture.getType() == BufferedImage.TYPE_INT_RGB;
        if (!packed && picture.getType() != BufferedImage.TYPE_3BYTE_BGR
                || picture.getWidth() != widthPx
                || picture.getHeight() != heightPx) {
            throw new IllegalArgumentException(
                    "a frame is " + widthPx + "x" + heightPx + " pixels of blue, green, red");
        }
        long tick = Math.round(timeS * TICKS_PER_S);
        if (!(timeS >= 0) || tick <= lastTick || tick > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("frames follow each other in time, from 0 s on, but one is at " + timeS);
        }
        lastTick = tick;
        try {
            recorder.setFrameNumber((int) tick);
            if (packed) {
                recorder.record(packed(picture), AV_PIX_FMT_BGR0);
            } else {
                recorder.record(converter.convert(picture), AV_PIX_FMT_BGR24);
            }
        } catch (FFmpegFrameRecorder.Exception e) {
            throw refused(e);
        }
    }

    /** The picture in memory that FFmpeg reads. */
    private Frame packed(BufferedImage picture) {
        if (pixels.isEmpty()) {
            pixels = Optional.of(new Frame(widthPx, heightPx, Frame.DEPTH_UBYTE, CHANNELS_PACKED));
        }
        Frame frame = pixels.get();
        int[] rgb = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        IntBuffer into = ((ByteBuffer) frame.image[0].rewind()).asIntBuffer();
        int rowInts = frame.imageStride / Integer.BYTES;
        for (int y = 0; y < heightPx; y++) {
            into.put(y * rowInts, rgb, y * widthPx, widthPx);
        }
        return frame;
    }

    /** Adds samples, -1 to 1, of all channels turn by turn, where the last ended; the first is at 0 s. */
    public void sound(float[] samples) throws OutputException {
        SoundFormat format = sound.orElseThrow(() -> new IllegalStateException("this clip was begun without sound"));
        try {
            recorder.recordSamples(format.samplesPerS(), format.channels(), FloatBuffer.wrap(samples));
        } catch (FFmpegFrameRecorder.Exception e) {
            throw refused(e);
        }
    }

    /** Ends the clip, which holds at least one frame, and gives the file its name. */
    public void finish() throws OutputException {
        if (lastTick < 0) {
            throw new IllegalStateException("a clip has at least one frame");
        }
        try {
            recorder.stop();
        } catch (FrameRecorder.Exception e) {
            throw refused(e);
        }
        checkReadable();
        growing.keep();
    }

    /** JavaCV does not say when the end could not be written; the index of an MP4 lies there, so it is then missing. */
    private void checkReadable() throws OutputException {
        try (Clip written = Clip.open(growing.path())) {
            if (written.next().isEmpty()) {
                throw new InputException("the clip written holds no frame");
            }
        } catch (InputException e) {
            throw refused(e);
        }
    }

    /** Lets go of the file; if it was not finished, of what was written too. */
    @Override
    public void close() throws OutputException {
        try (growing) {
            converter.close();
            pixels.ifPresent(Frame::close);
            recorder.release();
        } catch (FrameRecorder.Exception e) {
            throw refused(e);
        }
    }

    private OutputException refused(Exception e) {
        return new OutputException(
                "The clip " + file.getFileName() + " could not be written; check that there is room on the disk.", e);
    }
}
