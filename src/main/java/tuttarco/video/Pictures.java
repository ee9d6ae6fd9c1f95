package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGR24;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FrameGrabber.ImageMode;
import org.bytedeco.javacv.OpenCVFrameConverter;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.files.InputException;

/** Single pictures of a clip, upright and in colour, at whatever times. */
public final class Pictures implements AutoCloseable {
    private final FFmpegFrameGrabber grabber;
    private final OpenCVFrameConverter.ToMat toMat = new OpenCVFrameConverter.ToMat();
    private final Mat turned = new Mat();
    private final ClipFacts facts;
    private final Clip.Rotation rotation;
    private final double originS;

    private Pictures(FFmpegFrameGrabber grabber, ClipFacts facts) {
        this.grabber = grabber;
        this.facts = facts;
        rotation = Clip.Rotation.ofDegrees(grabber.getDisplayRotation());
        originS = Clip.originS(grabber);
    }

    /**
     * Opens a clip.
     *
     * @throws InputException if there is no such file or it is not a video that can be read
     */
    public static Pictures open(Path file) throws InputException {
        ClipFacts facts;
        try (Clip clip = Clip.open(file)) {
            facts = clip.facts();
        }
        FFmpegFrameGrabber grabber = Clip.grabber(file, Clip.CONTAINERS);
        grabber.setImageMode(ImageMode.COLOR);
        grabber.setPixelFormat(AV_PIX_FMT_BGR24);
        try {
            grabber.start(true);
            return new Pictures(grabber, facts);
        } catch (FFmpegFrameGrabber.Exception e) {
            Clip.release(grabber);
            throw Clip.unreadable(file, e);
        }
    }

    public ClipFacts facts() {
        return facts;
    }

    /**
     * The picture at a time or the next one after it; empty where none can be read.
     *
     * @param timeS seconds from the clip's start
     */
    public Optional<BufferedImage> at(double timeS) {
        try {
            grabber.setTimestamp(Math.round((Math.max(0, timeS) + originS) * 1e6), true);
            org.bytedeco.javacv.Frame grabbed = grabber.grabImage();
            return grabbed == null
                    ? Optional.empty()
                    : Optional.of(image(rotation.upright(toMat.convert(grabbed), turned)));
        } catch (FFmpegFrameGrabber.Exception e) {
            return Optional.empty();
        }
    }

    private static BufferedImage image(Mat bgr) {
        BufferedImage image = new BufferedImage(bgr.cols(), bgr.rows(), BufferedImage.TYPE_3BYTE_BGR);
        byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int rowBytes = 3 * bgr.cols();
        for (int y = 0; y < bgr.rows(); y++) {
            bgr.ptr(y).get(pixels, y * rowBytes, rowBytes);
        }
        return image;
    }

    @Override
    public void close() {
        turned.close();
        toMat.close();
        Clip.release(grabber);
    }
}
