package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AAC;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.FrameRecorder;
import org.bytedeco.javacv.Java2DFrameConverter;
import tuttarco.files.OutputException;

/**
 * Writes a clip as MP4: H.264 pictures at the times given, and perhaps one channel of sound as AAC. The file has its name
 * only once it is whole.
 */
public final class ClipWriter implements AutoCloseable {
    /** Frames between two that stand by themselves: about two seconds, so that players can seek. */
    private static final int KEY_FRAME_EVERY = 60;

    private static final int SOUND_BITS_PER_S = 96_000;

    private final Path file;
    private final Path unfinished;
    private final FFmpegFrameRecorder recorder;
    private final Java2DFrameConverter converter = new Java2DFrameConverter();
    private final Optional<SoundFormat> sound;
    private Optional<Exception> trouble = Optional.empty();

    private ClipWriter(Path file, Path unfinished, FFmpegFrameRecorder recorder, Optional<SoundFormat> sound) {
        this.file = file;
        this.unfinished = unfinished;
        this.recorder = recorder;
        this.sound = sound;
    }

    /**
     * Begins a clip.
     *
     * @param framesPerS nominal rate; frames may come at other times
     * @param pictureBitsPerS what the pictures may take
     * @throws IllegalArgumentException if a side is odd, which H.264 pictures with halved colour can't be
     * @throws OutputException if the file can't be begun
     */
    public static ClipWriter open(
            Path file, int widthPx, int heightPx, double framesPerS, int pictureBitsPerS, Optional<SoundFormat> sound)
            throws OutputException {
        if (widthPx % 2 != 0 || heightPx % 2 != 0) {
            throw new IllegalArgumentException("a picture has even sides, not " + widthPx + "x" + heightPx);
        }
        av_log_set_level(AV_LOG_QUIET);
        Path unfinished = file.resolveSibling(file.getFileName() + ".part");
        FFmpegFrameRecorder recorder =
                new FFmpegFrameRecorder(unfinished.toFile(), widthPx, heightPx, sound.isPresent() ? 1 : 0);
        recorder.setFormat("mp4");
        recorder.setVideoCodec(AV_CODEC_ID_H264);
        recorder.setVideoCodecName("libopenh264");
        recorder.setPixelFormat(AV_PIX_FMT_YUV420P);
        recorder.setFrameRate(framesPerS);
        recorder.setGopSize(KEY_FRAME_EVERY);
        recorder.setVideoBitrate(pictureBitsPerS);
        if (sound.isPresent()) {
            recorder.setAudioCodec(AV_CODEC_ID_AAC);
            recorder.setSampleRate(sound.get().samplesPerS());
            recorder.setAudioBitrate(SOUND_BITS_PER_S);
        }
        ClipWriter writer = new ClipWriter(file, unfinished, recorder, sound);
        try {
            recorder.start();
            return writer;
        } catch (FFmpegFrameRecorder.Exception e) {
            writer.trouble = Optional.of(e);
            writer.discard();
            throw writer.refused(e);
        }
    }

    /** Writes a picture ({@code TYPE_3BYTE_BGR}) shown from a time on, seconds; times rise. */
    public void frame(double timeS, BufferedImage picture) throws OutputException {
        try {
            recorder.setTimestamp(Math.round(timeS * 1e6));
            recorder.record(converter.convert(picture));
        } catch (FFmpegFrameRecorder.Exception e) {
            trouble = Optional.of(e);
            throw refused(e);
        }
    }

    /** Writes the next samples of sound, -1 to 1. */
    public void sound(float[] samples) throws OutputException {
        int rate = sound.orElseThrow(() -> new IllegalStateException("this clip has no sound"))
                .samplesPerS();
        try {
            recorder.recordSamples(rate, 1, FloatBuffer.wrap(samples));
        } catch (FFmpegFrameRecorder.Exception e) {
            trouble = Optional.of(e);
            throw refused(e);
        }
    }

    /** Finishes the file, or takes it away if anything went wrong. */
    @Override
    public void close() throws OutputException {
        converter.close();
        if (trouble.isPresent()) {
            discard();
            return;
        }
        try {
            recorder.close();
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (FrameRecorder.Exception e) {
            trouble = Optional.of(e);
            discard();
            throw refused(e);
        } catch (IOException e) {
            throw refused(e);
        }
    }

    private void discard() throws OutputException {
        try {
            recorder.release();
            Files.deleteIfExists(unfinished);
        } catch (IOException e) {
            throw refused(e);
        }
    }

    private OutputException refused(Exception e) {
        return new OutputException(
                "The clip " + file.getFileName() + " could not be written; check that there is room on the disk.", e);
    }
}
