package tuttarco.video;

import static org.bytedeco.opencv.global.opencv_imgproc.INTER_AREA;
import static org.bytedeco.opencv.global.opencv_imgproc.INTER_LINEAR;
import static org.bytedeco.opencv.global.opencv_imgproc.resize;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;

/**
 * A picture as the mean luma of a thousand cells, brought to mean 0 and standard deviation 1, so that light that
 * flickers or dims as a whole is no change.
 */
final class Thumbnail {
    /** Cells along each side; so few that noise and compression are averaged out. */
    static final int SIDE = 32;

    /** A picture whose cells differ by less than this standard deviation, luma of 255, is as good as blank. */
    private static final double BLANK = 4;

    /** The cells that differ most, as a share of all: an arm that leaps takes few, a change of quality takes all. */
    private static final int MOST_CHANGED = SIDE * SIDE / 20;

    /** Pictures no larger than this are averaged exactly, pixels along a side. */
    private static final int FINE_PX = 16 * SIDE;

    private final double[] cells;

    private Thumbnail(double[] cells) {
        this.cells = cells;
    }

    static Thumbnail of(Mat grey) {
        byte[] luma = new byte[SIDE * SIDE];
        try (Mat small = new Mat()) {
            shrink(grey, small);
            small.data().get(luma);
        }
        double[] cells = new double[luma.length];
        double mean = 0;
        for (int i = 0; i < cells.length; i++) {
            cells[i] = luma[i] & 0xFF;
            mean += cells[i] / cells.length;
        }
        double variance = 0;
        for (int i = 0; i < cells.length; i++) {
            cells[i] -= mean;
            variance += cells[i] * cells[i] / cells.length;
        }
        double deviation = Math.max(BLANK, Math.sqrt(variance));
        for (int i = 0; i < cells.length; i++) {
            cells[i] /= deviation;
        }
        return new Thumbnail(cells);
    }

    /** By halves first: all at once takes longer than decoding does. */
    private static void shrink(Mat grey, Mat small) {
        if (Math.max(grey.cols(), grey.rows()) > FINE_PX) {
            try (Mat half = new Mat();
                    Size size = new Size(Math.max(1, grey.cols() / 2), Math.max(1, grey.rows() / 2))) {
                resize(grey, half, size, 0, 0, INTER_LINEAR);
                shrink(half, small);
            }
            return;
        }
        try (Size size = new Size(SIDE, SIDE)) {
            resize(grey, small, size, 0, 0, INTER_AREA);
        }
    }

    /** Mean difference of the cells that differ most; 0 if alike, about 2 if nothing is. */
    double leap(Thumbnail other) {
        double[] sorted = differences(other);
        return Arrays.stream(sorted, sorted.length - MOST_CHANGED, sorted.length)
                .average()
                .orElseThrow();
    }

    /** Difference of a cell in the middle of all when ordered by how much they differ. */
    double medianChange(Thumbnail other) {
        return differences(other)[cells.length / 2];
    }

    private double[] differences(Thumbnail other) {
        double[] differences = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            differences[i] = Math.abs(cells[i] - other.cells[i]);
        }
        Arrays.sort(differences);
        return differences;
    }

    /** Correlation of all cells, -1 to 1; smaller where a picture is all but blank. */
    double correlation(Thumbnail other) {
        double sum = 0;
        for (int i = 0; i < cells.length; i++) {
            sum += cells[i] * other.cells[i];
        }
        return sum / cells.length;
    }

    /**
     * How much of the difference to another picture comes about if this one as a whole moves and grows a little, as a share
     * of its square: near 1 for a camera that pans or zooms slowly, near 0 where one picture has nothing to do with the
     * other.
     */
    double moved(Thumbnail other) {
        double[][] ways = new double[cells.length][];
        double[] difference = new double[cells.length];
        double all = 0;
        for (int i = 0; i < cells.length; i++) {
            double acrossWay = slope(other, i, i % SIDE, 1);
            double downWay = slope(other, i, i / SIDE, SIDE);
            ways[i] = new double[] {acrossWay, downWay, middled(i % SIDE) * acrossWay + middled(i / SIDE) * downWay};
            difference[i] = other.cells[i] - cells[i];
            all += difference[i] * difference[i];
        }
        RealMatrix matrix = new Array2DRowRealMatrix(ways, false);
        RealVector wanted = new ArrayRealVector(difference, false);
        RealVector best = new SingularValueDecomposition(matrix).getSolver().solve(wanted);
        double left = wanted.subtract(matrix.operate(best)).getNorm();
        return all == 0 ? 0 : 1 - left * left / all;
    }

    /** How the mean of both pictures rises at a cell from its neighbour on one side to that on the other; 0 at the edge. */
    private double slope(Thumbnail other, int cell, int place, int step) {
        return place == 0 || place == SIDE - 1
                ? 0
                : (cells[cell + step] + other.cells[cell + step] - cells[cell - step] - other.cells[cell - step]) / 4;
    }

    private static double middled(int place) {
        return (place - (SIDE - 1) / 2.0) / (SIDE / 2.0);
    }

    /** Whether there is nothing to be seen. */
    boolean blank() {
        return correlation(this) < 0.999;
    }

    /**
     * This picture as a mixture of two.
     *
     * @param share of the second in it
     * @param rest what the mixture does not explain, as a part of what the two differ by; root mean squares
     */
    record Mixture(double share, double rest) {}

    /** The mixture of two pictures that is nearest to this one, by least squares; one that explains nothing if there is none. */
    Mixture mixtureOf(Thumbnail first, Thumbnail second) {
        double ff = first.correlation(first);
        double ss = second.correlation(second);
        double fs = first.correlation(second);
        double determinant = ff * ss - fs * fs;
        double a = (correlation(first) * ss - correlation(second) * fs) / determinant;
        double b = (correlation(second) * ff - correlation(first) * fs) / determinant;
        double rest = correlation(this) - a * correlation(first) - b * correlation(second);
        double apart = ff + ss - 2 * fs;
        return determinant > 1e-9 && a + b > 0
                ? new Mixture(b / (a + b), Math.sqrt(Math.max(0, rest) / apart))
                : new Mixture(0, Double.POSITIVE_INFINITY);
    }
}
