package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_GRAY8;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FrameGrabber.ImageMode;
import org.bytedeco.javacv.OpenCVFrameConverter;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * A video file, read frame by frame from its start and never held whole. Times are presentation times, so a variable
 * frame rate is honoured; the picture is turned upright as the file's rotation says.
 *
 * <p>Only files on this machine are opened, and only containers that hold pictures themselves: a playlist that points
 * elsewhere is refused.
 */
public final class Clip implements AutoCloseable {
    /** FFmpeg's names of the containers cameras and editors write. */
    static final String CONTAINERS = "mov,mp4,m4a,3gp,3g2,mj2,matroska,webm,avi,mpegts,mpeg,ogg,flv,asf,mxf,dv,"
            + "h264,hevc,mpegvideo,mjpeg,gif,ivf";

    /** Larger pictures than any camera takes are a damaged or hostile file; pixels along one side. */
    private static final int LARGEST_SIDE_PX = 16_384;

    /** A clip this much shorter than its container says, in seconds, was cut off. */
    private static final double TRUNCATED_S = 0.5;

    /** Clocks that were never set count from the beginning of 1904, 1970 or 1980 (no source). */
    private static final Instant CLOCK_NOT_SET = Instant.parse("1981-01-01T00:00:00Z");

    private final FFmpegFrameGrabber grabber;
    private final OpenCVFrameConverter.ToMat toMat = new OpenCVFrameConverter.ToMat();
    private final Mat turned = new Mat();
    private final ClipFacts facts;
    private final Rotation rotation;
    private final double originS;
    private int index;
    private double lastTimeS = Double.NEGATIVE_INFINITY;
    private boolean broken;

    private Clip(Path file, FFmpegFrameGrabber grabber) throws InputException {
        this.grabber = grabber;
        int widthPx = grabber.getImageWidth();
        int heightPx = grabber.getImageHeight();
        if (!grabber.hasVideo() || widthPx < 1 || heightPx < 1) {
            throw new InputException(InputBytes.name(file) + " holds no picture; give a video file.");
        }
        if (widthPx > LARGEST_SIDE_PX || heightPx > LARGEST_SIDE_PX) {
            throw new InputException(InputBytes.name(file) + " says its picture is " + widthPx + "x" + heightPx
                    + " pixels, which no camera takes; the file is damaged.");
        }
        rotation = Rotation.ofDegrees(grabber.getDisplayRotation());
        originS = originS(grabber);
        long lengthUs = grabber.getLengthInTime();
        facts = new ClipFacts(
                file,
                rotation.swapsSides() ? heightPx : widthPx,
                rotation.swapsSides() ? widthPx : heightPx,
                grabber.getVideoFrameRate(),
                lengthUs > 0 ? Optional.of(lengthUs / 1e6) : Optional.empty(),
                grabber.hasAudio(),
                made(grabber));
    }

    /**
     * Opens a clip.
     *
     * @throws InputException if there is no such file or it is not a video that can be read
     */
    public static Clip open(Path file) throws InputException {
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            throw new InputException(
                    "There is no readable video at " + Plain.text(file.toString()) + "; check the path.");
        }
        FFmpegFrameGrabber grabber = grabber(file, CONTAINERS);
        grabber.setImageMode(ImageMode.GRAY);
        grabber.setPixelFormat(AV_PIX_FMT_GRAY8);
        try {
            grabber.start(true);
            return new Clip(file, grabber);
        } catch (FFmpegFrameGrabber.Exception e) {
            release(grabber);
            throw unreadable(file, e);
        } catch (InputException e) {
            release(grabber);
            throw e;
        }
    }

    static InputException unreadable(Path file, Exception cause) {
        return new InputException(
                InputBytes.name(file) + " can't be read as a video; it may be damaged, cut off while copying, or"
                        + " another kind of file.",
                cause);
    }

    public ClipFacts facts() {
        return facts;
    }

    Rotation rotation() {
        return rotation;
    }

    /**
     * Returns the next frame, empty at the end of what can be read. A damaged tail ends the clip early; see
     * {@link #trouble()}. Frames whose time does not rise are passed over.
     */
    public Optional<Frame> next() {
        while (!broken) {
            org.bytedeco.javacv.Frame grabbed = grab();
            if (grabbed == null) {
                return Optional.empty();
            }
            double timeS = grabbed.timestamp / 1e6 - originS;
            if (timeS > lastTimeS) {
                lastTimeS = timeS;
                return Optional.of(new Frame(index++, timeS, rotation.upright(toMat.convert(grabbed), turned)));
            }
        }
        return Optional.empty();
    }

    private org.bytedeco.javacv.Frame grab() {
        try {
            return grabber.grabImage();
        } catch (FFmpegFrameGrabber.Exception e) {
            broken = true;
            return null;
        }
    }

    /**
     * Where reading a clip ended.
     *
     * @param lastTimeS time of the last frame, seconds; negative infinity if there was none
     * @param broken whether what follows is damaged
     */
    public record Ending(double lastTimeS, boolean broken) {}

    /** Where reading has come to; the end once no frame is left. */
    public Ending ending() {
        return new Ending(lastTimeS, broken);
    }

    /** What to tell the user about the clip once it is read to its end; see {@link #trouble(Ending)}. */
    public Optional<String> trouble() {
        return trouble(ending());
    }

    /**
     * What to tell the user about a clip that ended so, in this or an earlier run: one sentence if its tail was missing or
     * damaged, empty if all was well.
     */
    public Optional<String> trouble(Ending ending) {
        return trouble(facts, ending);
    }

    static Optional<String> trouble(ClipFacts facts, Ending ending) {
        boolean cutOff = facts.durationS()
                .filter(d -> ending.lastTimeS() < d - TRUNCATED_S)
                .isPresent();
        if (!ending.broken() && !cutOff) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                java.util.Locale.ROOT,
                "%s could be read up to %.1f s only%s; what follows is missing here.",
                InputBytes.name(facts.file()),
                Math.max(0, ending.lastTimeS()),
                facts.durationS()
                        .map(d -> String.format(java.util.Locale.ROOT, " of %.1f s", d))
                        .orElse("")));
    }

    @Override
    public void close() {
        turned.close();
        toMat.close();
        release(grabber);
    }

    /** What reads a file on this machine, and nothing else, if its container is one of those listed. */
    static FFmpegFrameGrabber grabber(Path file, String containers) {
        av_log_set_level(AV_LOG_QUIET);
        FFmpegFrameGrabber grabber =
                new FFmpegFrameGrabber(file.toAbsolutePath().toFile());
        grabber.setOption("protocol_whitelist", "file");
        grabber.setOption("format_whitelist", containers);
        return grabber;
    }

    /** When the container says it was made; a clock that was never set says nothing. */
    private static Optional<Instant> made(FFmpegFrameGrabber grabber) {
        try {
            return Optional.ofNullable(grabber.getMetadata("creation_time"))
                    .map(Instant::parse)
                    .filter(made -> made.isAfter(CLOCK_NOT_SET));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** The container's own time at the clip's start, seconds. */
    static double originS(FFmpegFrameGrabber grabber) {
        long startUs = grabber.getFormatContext().start_time();
        return startUs == AV_NOPTS_VALUE ? 0 : startUs / 1e6;
    }

    static void release(FFmpegFrameGrabber grabber) {
        try {
            grabber.close();
        } catch (org.bytedeco.javacv.FrameGrabber.Exception e) {
            throw new IllegalStateException("the video reader could not be closed", e);
        }
    }
}
