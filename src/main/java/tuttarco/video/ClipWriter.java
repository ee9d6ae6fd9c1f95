package tuttarco.video;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ShortBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Java2DFrameConverter;

/**
 * Writes a clip frame by frame, each at a presentation time of its own. The file appears under its name when the clip is
 * {@linkplain #finish() finished}; a clip that is closed before leaves nothing behind.
 */
public final class ClipWriter implements AutoCloseable {
    /** Sample rate of the sound, hertz. */
    public static final int SOUND_HZ = 44100;

    private static final int SOUND_BIT_PER_S = 96_000;
    /** Presentation times are kept to this many parts of a second where frames do not come evenly. */
    private static final int FINE_TICKS_PER_S = 1000;
    /** At most this many frames from one frame that stands alone to the next (chosen; keeps seeking quick). */
    private static final int FRAMES_TO_KEY = 50;

    private final Path file;
    private final Path unfinished;
    private final FFmpegFrameRecorder recorder;
    private final Java2DFrameConverter converter = new Java2DFrameConverter();
    private boolean finished;

    /**
     * @param evenly whether frames come at {@code framesPerS} exactly; otherwise each time is kept to a millisecond
     * @param kbitPerS bits for the picture, thousands a second
     * @throws IOException if the file can't be written or the picture can't be encoded
     */
    public ClipWriter(
            Path file, int widthPx, int heightPx, double framesPerS, boolean evenly, int kbitPerS, boolean sound)
            throws IOException {
        this.file = file;
        this.unfinished = file.resolveSibling("." + file.getFileName() + ".unfinished");
        avutil.av_log_set_level(avutil.AV_LOG_ERROR);
        recorder = new FFmpegFrameRecorder(unfinished.toFile(), widthPx, heightPx, sound ? 1 : 0);
        recorder.setFormat("mp4");
        recorder.setVideoCodec(videoCodec());
        recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
        double ticksPerS = evenly ? framesPerS : FINE_TICKS_PER_S;
        recorder.setFrameRate(ticksPerS);
        // the encoder shares its bits out per tick, so they are given per tick
        recorder.setVideoBitrate((int) Math.min(Integer.MAX_VALUE, kbitPerS * 1000.0 * ticksPerS / framesPerS));
        recorder.setGopSize(FRAMES_TO_KEY);
        recorder.setMaxBFrames(0);
        recorder.setVideoOption("threads", "1");
        recorder.setOption("fflags", "+bitexact");
        if (sound) {
            recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
            recorder.setSampleRate(SOUND_HZ);
            recorder.setAudioBitrate(SOUND_BIT_PER_S);
        }
        recorder.start();
    }

    /** Adds a frame; its size must be the clip's, its type {@link BufferedImage#TYPE_3BYTE_BGR}. */
    public void frame(BufferedImage image, double timeS) throws IOException {
        recorder.setTimestamp(Math.round(timeS * 1e6));
        recorder.record(converter.convert(image), avutil.AV_PIX_FMT_BGR24);
    }

    /** Adds sound, one channel, {@link #SOUND_HZ} samples a second, where the last ended. */
    public void sound(short[] samples) throws IOException {
        recorder.recordSamples(SOUND_HZ, 1, ShortBuffer.wrap(samples));
    }

    /** Ends the clip and puts the file in its place. */
    public void finish() throws IOException {
        recorder.stop();
        recorder.release();
        Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        finished = true;
    }

    @Override
    public void close() throws IOException {
        converter.close();
        if (!finished) {
            recorder.release();
            Files.deleteIfExists(unfinished);
        }
    }

    /** H.264 where this build of FFmpeg encodes it under a free licence, MPEG-4 part 2 elsewhere. */
    private static int videoCodec() {
        return Optional.ofNullable(avcodec.avcodec_find_encoder_by_name("libopenh264"))
                .map(AVCodec::id)
                .orElse(avcodec.AV_CODEC_ID_MPEG4);
    }
}
