package tuttarco.tracks;

import static org.bytedeco.opencv.global.opencv_core.BORDER_REPLICATE;
import static org.bytedeco.opencv.global.opencv_core.CV_32F;
import static org.bytedeco.opencv.global.opencv_core.copyMakeBorder;
import static org.bytedeco.opencv.global.opencv_core.mean;
import static org.bytedeco.opencv.global.opencv_core.subtract;
import static org.bytedeco.opencv.global.opencv_imgproc.GaussianBlur;
import static org.bytedeco.opencv.global.opencv_imgproc.INTER_AREA;
import static org.bytedeco.opencv.global.opencv_imgproc.INTER_LINEAR;
import static org.bytedeco.opencv.global.opencv_imgproc.blur;
import static org.bytedeco.opencv.global.opencv_imgproc.resize;

import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Size;
import tuttarco.seats.SeatBox;

/** Cuts a seat out of a frame and makes its pyramid. Keeps only working memory between frames. */
final class SeatScaler implements AutoCloseable {
    /** Mean luma to which each picture is brought, 0 to 255, and the strongest gain that may take. */
    private static final double EVEN_LUMA = 100;

    private static final double STRONGEST_GAIN = 8;

    /** Smoothing against noise, pixels of the level. */
    private static final double SMOOTHING_SIGMA_PX = 1.1;

    /**
     * Side of the square whose mean is taken off, pixels of the level: light and shadow that come and go are no motion.
     * Chosen on rendered scenes: without it a shaken camera and flickering light are misread, 15 is worse than 7 or 9.
     */
    private static final int SHADE_SIDE_PX = 7;

    private static final Size SMOOTHING = new Size(5, 5);
    private static final Size SHADE = new Size(SHADE_SIDE_PX, SHADE_SIDE_PX);

    private final Rect box;
    private final Mat halved = new Mat();
    private final Mat square = new Mat();
    private final Mat level = new Mat();
    private final Mat fine = new Mat();
    private final Mat shade = new Mat();
    private final Mat bordered = new Mat();
    private double luma;

    SeatScaler(SeatBox region) {
        box = new Rect(region.xPx(), region.yPx(), region.widthPx(), region.heightPx());
    }

    /** Makes the pyramid of the seat in a frame's grey picture. */
    void scale(Mat grey, SeatPyramid into) {
        int sidePx = FlowLevel.finest().sidePx();
        try (Mat seat = new Mat(grey, box)) {
            resize(halvedTowards(sidePx, seat), square, new Size(sidePx, sidePx), 0, 0, INTER_LINEAR);
        }
        luma = mean(square).get(0);
        // flickering light is no motion: every picture is brought to the same mean
        square.convertTo(level, CV_32F, Math.min(STRONGEST_GAIN, EVEN_LUMA / Math.max(1, luma)), 0);
        for (int i = FlowLevel.COARSE_TO_FINE.size() - 1; i >= 0; i--) {
            FlowLevel next = FlowLevel.COARSE_TO_FINE.get(i);
            resize(level, level, new Size(next.sidePx(), next.sidePx()), 0, 0, INTER_AREA);
            fineStructure(next.borderPx(), into.coarseToFine().get(i));
        }
    }

    /** Halves the picture as long as it is more than twice as large as wanted, so that no pixel is passed over. */
    private Mat halvedTowards(int sidePx, Mat seat) {
        Mat picture = seat;
        while ((long) picture.rows() * picture.cols() > 4L * sidePx * sidePx) {
            resize(picture, halved, new Size(picture.cols() / 2, picture.rows() / 2), 0, 0, INTER_LINEAR);
            picture = halved;
        }
        return picture;
    }

    private void fineStructure(int borderPx, float[] into) {
        GaussianBlur(level, fine, SMOOTHING, SMOOTHING_SIGMA_PX);
        blur(fine, shade, SHADE);
        subtract(fine, shade, fine);
        copyMakeBorder(fine, bordered, borderPx, borderPx, borderPx, borderPx, BORDER_REPLICATE);
        try (FloatPointer pixels = new FloatPointer(bordered.data())) {
            pixels.get(into);
        }
    }

    /** Mean luma of the seat last scaled, 0 to 255. */
    double luma() {
        return luma;
    }

    @Override
    public void close() {
        for (Mat own : new Mat[] {halved, square, level, fine, shade, bordered}) {
            own.close();
        }
        box.close();
    }
}
