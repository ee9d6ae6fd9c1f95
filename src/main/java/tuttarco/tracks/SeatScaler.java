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

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
    private final List<Size> steps;
    private final List<Mat> scaled;
    private final List<Filter> fineToCoarse = Stream.of(FlowLevel.FINEST, FlowLevel.MIDDLE, FlowLevel.COARSE)
            .map(Filter::new)
            .toList();
    private double luma;

    SeatScaler(SeatBox region) {
        box = new Rect(region.xPx(), region.yPx(), region.widthPx(), region.heightPx());
        steps = steps(region.widthPx(), region.heightPx(), FlowLevel.FINEST.sidePx());
        scaled = steps.stream().map(step -> new Mat()).toList();
    }

    /** Sizes by which the seat comes to the wanted square: it is halved first, so that no pixel is passed over. */
    private static List<Size> steps(int seatWidthPx, int seatHeightPx, int sidePx) {
        List<Size> steps = new ArrayList<>();
        int widthPx = seatWidthPx;
        int heightPx = seatHeightPx;
        while ((long) widthPx * heightPx > 4L * sidePx * sidePx) {
            widthPx = Math.max(1, widthPx / 2);
            heightPx = Math.max(1, heightPx / 2);
            steps.add(new Size(widthPx, heightPx));
        }
        steps.add(new Size(sidePx, sidePx));
        return steps;
    }

    /** Makes the pyramid of the seat in a frame's grey picture. */
    void scale(Mat grey, SeatPyramid into) {
        Mat square = square(grey);
        luma = mean(square).get(0);
        // flickering light is no motion: every picture is brought to the same mean
        double gain = Math.min(STRONGEST_GAIN, EVEN_LUMA / Math.max(1, luma));
        square.convertTo(fineToCoarse.get(0).picture, CV_32F, gain, 0);
        for (int i = 0; i < fineToCoarse.size(); i++) {
            Filter filter = fineToCoarse.get(i);
            if (i > 0) {
                resize(fineToCoarse.get(i - 1).picture, filter.picture, filter.size, 0, 0, INTER_AREA);
            }
            filter.fineStructure(into.at(filter.level));
        }
    }

    private Mat square(Mat grey) {
        try (Mat seat = new Mat(grey, box)) {
            Mat picture = seat;
            for (int i = 0; i < steps.size(); i++) {
                resize(picture, scaled.get(i), steps.get(i), 0, 0, INTER_LINEAR);
                picture = scaled.get(i);
            }
            return picture;
        }
    }

    /** Mean luma of the seat last scaled, 0 to 255. */
    double luma() {
        return luma;
    }

    @Override
    public void close() {
        fineToCoarse.forEach(Filter::close);
        scaled.forEach(Mat::close);
        steps.forEach(Size::close);
        box.close();
    }

    /** Filters of one level, with working memory that is made once and not every frame. */
    private static final class Filter implements AutoCloseable {
        private final FlowLevel level;
        private final Size size;
        private final Mat picture = new Mat();
        private final Mat fine = new Mat();
        private final Mat shade = new Mat();
        private final Mat bordered;
        private final FloatPointer pixels;

        Filter(FlowLevel level) {
            this.level = level;
            size = new Size(level.sidePx(), level.sidePx());
            bordered = new Mat(level.stridePx(), level.stridePx(), CV_32F);
            pixels = new FloatPointer(bordered.data());
        }

        void fineStructure(float[] into) {
            GaussianBlur(picture, fine, SMOOTHING, SMOOTHING_SIGMA_PX);
            blur(fine, shade, SHADE);
            subtract(fine, shade, fine);
            int borderPx = level.borderPx();
            copyMakeBorder(fine, bordered, borderPx, borderPx, borderPx, borderPx, BORDER_REPLICATE);
            pixels.get(into);
        }

        @Override
        public void close() {
            pixels.close();
            for (Mat own : new Mat[] {picture, fine, shade, bordered}) {
                own.close();
            }
            size.close();
        }
    }
}
