package tuttarco.pose;

import static org.bytedeco.opencv.global.opencv_imgproc.INTER_AREA;
import static org.bytedeco.opencv.global.opencv_imgproc.resize;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacpp.Loader;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.RectVector;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_objdetect.CascadeClassifier;
import tuttarco.video.Frame;

/**
 * Finds faces that look towards the camera without a body to them, as of listeners who sit close: OpenCV's cascade over local
 * binary patterns. Quick, and often wrong: it sees faces in walls and windows.
 *
 * <p>Reference: S. Liao et al., Learning multi-scale block local binary patterns for face recognition, ICB 2007.
 */
public final class FaceSpotter implements AutoCloseable {
    private static final String CASCADE = "/share/opencv4/lbpcascades/lbpcascade_frontalface.xml";

    /** A wider picture is looked at as if it were this wide, pixels: it takes twice as long otherwise. */
    private static final double WIDEST_PX = 1280;

    /**
     * Faces are looked for in sizes that grow by this (chosen: half the work of OpenCV's 1.1, and fewer walls and windows), and
     * count where as many of those beside each other agree (OpenCV's default).
     */
    private static final double SCALES = 1.2;

    private static final int AGREEING = 3;

    /** The cascade's own size, pixels: no face is smaller. */
    private static final int SMALLEST_PX = 24;

    /** A face in pixels of the picture: the square from brows to chin. */
    public record Spotted(double centreXPx, double centreYPx, double sidePx) {}

    private final CascadeClassifier cascade;
    private final Mat small = new Mat();

    public FaceSpotter() {
        try {
            cascade = new CascadeClassifier(
                    Loader.cacheResource(opencv_core.class, "/org/bytedeco/opencv/" + Loader.getPlatform() + CASCADE)
                            .getPath());
        } catch (IOException e) {
            throw new UncheckedIOException("OpenCV's own files can't be read", e);
        }
    }

    public List<Spotted> in(Frame frame) {
        double scale = Math.max(1, frame.grey().cols() / WIDEST_PX);
        try (Size size = new Size(
                        (int) (frame.grey().cols() / scale), (int) (frame.grey().rows() / scale));
                Size smallest = new Size(SMALLEST_PX, SMALLEST_PX);
                Size largest = new Size();
                RectVector found = new RectVector()) {
            resize(frame.grey(), small, size, 0, 0, INTER_AREA);
            // whoever looks for faces waits for this, so that OpenCV may split this work, and only this
            opencv_core.setNumThreads(Runtime.getRuntime().availableProcessors());
            try {
                cascade.detectMultiScale(small, found, SCALES, AGREEING, 0, smallest, largest);
            } finally {
                opencv_core.setNumThreads(1);
            }
            List<Spotted> faces = new ArrayList<>();
            for (Rect face : found.get()) {
                faces.add(new Spotted(
                        scale * (face.x() + face.width() / 2.0),
                        scale * (face.y() + face.height() / 2.0),
                        scale * face.width()));
            }
            return List.copyOf(faces);
        }
    }

    @Override
    public void close() {
        cascade.close();
        small.close();
    }
}
