package tuttarco.pose;

import static org.bytedeco.opencv.global.opencv_core.BORDER_CONSTANT;
import static org.bytedeco.opencv.global.opencv_core.CV_32F;
import static org.bytedeco.opencv.global.opencv_dnn.blobFromImage;
import static org.bytedeco.opencv.global.opencv_dnn.readNetFromTFLite;
import static org.bytedeco.opencv.global.opencv_imgproc.COLOR_GRAY2RGB;
import static org.bytedeco.opencv.global.opencv_imgproc.INTER_LINEAR;
import static org.bytedeco.opencv.global.opencv_imgproc.WARP_INVERSE_MAP;
import static org.bytedeco.opencv.global.opencv_imgproc.cvtColor;
import static org.bytedeco.opencv.global.opencv_imgproc.warpAffine;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.MatVector;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_core.StringVector;
import org.bytedeco.opencv.opencv_dnn.Net;
import tuttarco.video.Frame;

/** The pose model at work, for one thread at a time. It works on that thread alone. */
public final class PoseNet implements AutoCloseable {
    /** Side of the picture the model takes, pixels. */
    private static final int INPUT_PX = 256;

    /** Numbers a landmark in the model's first output: x, y, z, visibility, presence. */
    private static final int NUMBERS = 5;

    private static final int CENTRE = 33;
    private static final int RIM = 34;

    /** A picture darker than this on average, luma 0 to 255, is brightened to the even one; rendered scenes. */
    private static final double DARK_LUMA = 60;

    private static final double EVEN_LUMA = 110;
    private static final double STRONGEST_GAIN = 8;

    /** A crop hardly in the picture is not judged by the little that is, share of its area. */
    private static final double LEAST_SHARE = 0.05;

    private final Net net;
    private final StringVector outputs = new StringVector("Identity", "Identity_1");
    private final Size inputSize = new Size(INPUT_PX, INPUT_PX);
    private final Scalar black = new Scalar(0);
    private final Mat toPicture = new Mat(2, 3, opencv_core.CV_64F);
    private final Mat cut = new Mat();
    private final Mat colours = new Mat();
    private final Mat blob = new Mat();

    PoseNet(byte[] model) {
        // the workers share the cores among themselves: OpenCV must not split the work again
        opencv_core.setNumThreads(1);
        net = readNetFromTFLite(model);
    }

    /** The person in the middle of a crop of the frame, or what the model takes for one. */
    public Pose estimate(Frame frame, Crop crop) {
        return estimate(frame.grey(), crop);
    }

    /**
     * The person in the middle of the crop, or what the model takes for one: {@link Pose#person} tells.
     *
     * @param grey luma, one byte a pixel
     */
    public Pose estimate(Mat grey, Crop crop) {
        double scale = crop.sidePx() / INPUT_PX;
        cut(grey, crop, scale);
        cvtColor(cut, colours, COLOR_GRAY2RGB);
        blobFromImage(colours, blob, 1 / 255.0, inputSize, black, false, false, CV_32F);
        net.setInput(blob);
        try (MatVector out = new MatVector()) {
            net.forward(out, outputs);
            try (Mat points = out.get(0);
                    Mat flag = out.get(1)) {
                return pose(numbers(points), numbers(flag)[0], crop, scale);
            }
        }
    }

    private void cut(Mat grey, Crop crop, double scale) {
        try (DoubleIndexer at = toPicture.createIndexer()) {
            // pixel centres lie at half pixels
            at.put(0, 0, scale, 0, crop.leftPx() + scale / 2 - 0.5);
            at.put(1, 0, 0, scale, crop.topPx() + scale / 2 - 0.5);
        }
        warpAffine(grey, cut, toPicture, inputSize, INTER_LINEAR | WARP_INVERSE_MAP, BORDER_CONSTANT, black);
        brighten(crop, grey.cols(), grey.rows());
    }

    /** A dark stage is shown to the model as bright as the pictures it knows; what lies outside the picture stays black. */
    private void brighten(Crop crop, int widthPx, int heightPx) {
        double across = Math.min(widthPx, crop.leftPx() + crop.sidePx()) - Math.max(0, crop.leftPx());
        double down = Math.min(heightPx, crop.topPx() + crop.sidePx()) - Math.max(0, crop.topPx());
        double share = Math.max(0, across) * Math.max(0, down) / (crop.sidePx() * crop.sidePx());
        double luma = opencv_core.mean(cut).get(0) / Math.max(LEAST_SHARE, share);
        if (luma < DARK_LUMA) {
            cut.convertTo(cut, -1, Math.min(STRONGEST_GAIN, EVEN_LUMA / Math.max(1, luma)), 0);
        }
    }

    private static float[] numbers(Mat output) {
        float[] numbers = new float[(int) output.total()];
        output.<java.nio.FloatBuffer>createBuffer().get(numbers);
        return numbers;
    }

    private static Pose pose(float[] numbers, double person, Crop crop, double scale) {
        List<Landmark> landmarks = new ArrayList<>(Pose.LANDMARKS);
        for (int i = 0; i < Pose.LANDMARKS; i++) {
            landmarks.add(landmark(numbers, i, crop, scale));
        }
        return new Pose(landmarks, landmark(numbers, CENTRE, crop, scale), landmark(numbers, RIM, crop, scale), person);
    }

    private static Landmark landmark(float[] numbers, int index, Crop crop, double scale) {
        int first = NUMBERS * index;
        return new Landmark(
                crop.leftPx() + scale * numbers[first],
                crop.topPx() + scale * numbers[first + 1],
                probability(numbers[first + 3]),
                probability(numbers[first + 4]));
    }

    private static double probability(double logOdds) {
        return 1 / (1 + Math.exp(-logOdds));
    }

    @Override
    public void close() {
        net.close();
        outputs.close();
        inputSize.close();
        black.close();
        toPicture.close();
        cut.close();
        colours.close();
        blob.close();
    }
}
