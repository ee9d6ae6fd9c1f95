package tuttarco.tracks;

import static org.bytedeco.opencv.global.opencv_core.BORDER_REPLICATE;
import static org.bytedeco.opencv.global.opencv_core.CV_32FC;
import static org.bytedeco.opencv.global.opencv_imgproc.sepFilter2D;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;

/**
 * How far each cell of a square grid moved between two pictures of a seat: the shift under which both look alike in the
 * least-squares sense, from coarse to fine.
 *
 * <p>Each cell gives two equations for its shift; those of a cell and its neighbours are added up before they are solved.
 *
 * <p>Reference: B. D. Lucas, T. Kanade, An iterative image registration technique with an application to stereo vision,
 * IJCAI 1981; coarse to fine as in J.-Y. Bouguet, Pyramidal implementation of the Lucas Kanade feature tracker, 2000.
 *
 * <p>Differences from the papers: cells shift by whole pixels, so that nothing is interpolated, and the rest is taken from
 * the gradient alone; the gradient is the mean of both pictures'; neighbours' equations are added where each was shifted by
 * its own way; where a cell shows little, the coarser level's answer holds.
 */
final class CellAlignment implements AutoCloseable {
    private static final int GRID = CellFlow.GRID;
    private static final int CELLS = GRID * GRID;

    /**
     * Weight of the coarser level's answer, squared grey values a pixel squared: gradients this strong count as much.
     * Chosen on rendered scenes: 0.5 follows noise, 8 loses weak arms.
     */
    private static final float PRIOR = 2;

    /** Numbers of a cell's equations [xx xy; xy yy] shift = [x; y]. */
    private static final int NUMBERS = 5;

    private static final Point CENTRE = new Point(-1, -1);

    private final Map<FlowLevel, Mat> weights = new EnumMap<>(FlowLevel.class);
    private final float[] numbers = new float[NUMBERS * CELLS];
    private final Mat equations = new Mat(GRID, GRID, CV_32FC(NUMBERS));
    private final FloatPointer inEquations = new FloatPointer(equations.data());
    private final float[] x = new float[CELLS];
    private final float[] y = new float[CELLS];
    private final float[] coarseX = new float[CELLS];
    private final float[] coarseY = new float[CELLS];

    CellAlignment() {
        for (FlowLevel level : FlowLevel.values()) {
            weights.put(level, new Mat(level.weights()));
        }
    }

    /** Finds the shifts from the earlier to the later picture; see {@link #x()} and {@link #y()}. */
    void align(SeatPyramid earlier, SeatPyramid later) {
        Arrays.fill(x, 0);
        Arrays.fill(y, 0);
        int coarserPx = FlowLevel.COARSE.sidePx();
        for (FlowLevel level : FlowLevel.values()) {
            enlarge((float) level.sidePx() / coarserPx);
            coarserPx = level.sidePx();
            for (int round = 0; round < level.rounds(); round++) {
                for (int cell = 0; cell < CELLS; cell++) {
                    equate(level, cell, earlier.at(level), later.at(level));
                }
                addNeighbours(weights.get(level));
                solve();
            }
        }
    }

    private void enlarge(float scale) {
        for (int cell = 0; cell < CELLS; cell++) {
            x[cell] *= scale;
            y[cell] *= scale;
            coarseX[cell] = x[cell];
            coarseY[cell] = y[cell];
        }
    }

    /** Shift of each cell to the right, pixels of the finest level. */
    float[] x() {
        return x;
    }

    /** Shift of each cell downwards, pixels of the finest level. */
    float[] y() {
        return y;
    }

    /** Sets up a cell's equations about its shift so far, rounded to whole pixels. */
    private void equate(FlowLevel level, int cell, float[] a, float[] b) {
        int stride = level.stridePx();
        int cellPx = level.cellPx();
        int farthest = level.borderPx() - 1;
        int shiftX = Math.max(-farthest, Math.min(farthest, Math.round(x[cell])));
        int shiftY = Math.max(-farthest, Math.min(farthest, Math.round(y[cell])));
        int shift = shiftY * stride + shiftX;
        int corner = (level.borderPx() + cell / GRID * cellPx) * stride + level.borderPx() + cell % GRID * cellPx;
        float xx = 0;
        float xy = 0;
        float yy = 0;
        float xt = 0;
        float yt = 0;
        for (int row = 0; row < cellPx; row++) {
            int end = corner + row * stride + cellPx;
            for (int i = end - cellPx; i < end; i++) {
                int j = i + shift;
                // four times the mean gradient of both pictures
                float gx = a[i + 1] - a[i - 1] + b[j + 1] - b[j - 1];
                float gy = a[i + stride] - a[i - stride] + b[j + stride] - b[j - stride];
                float change = b[j] - a[i];
                xx += gx * gx;
                xy += gx * gy;
                yy += gy * gy;
                xt += gx * change;
                yt += gy * change;
            }
        }
        float squared = 1f / (16 * cellPx * cellPx);
        float single = 1f / (4 * cellPx * cellPx);
        int at = NUMBERS * cell;
        numbers[at] = squared * xx;
        numbers[at + 1] = squared * xy;
        numbers[at + 2] = squared * yy;
        numbers[at + 3] = squared * (xx * shiftX + xy * shiftY) - single * xt;
        numbers[at + 4] = squared * (xy * shiftX + yy * shiftY) - single * yt;
    }

    private void addNeighbours(Mat weighting) {
        inEquations.put(numbers);
        sepFilter2D(equations, equations, -1, weighting, weighting, CENTRE, 0, BORDER_REPLICATE);
        inEquations.get(numbers);
    }

    private void solve() {
        for (int cell = 0; cell < CELLS; cell++) {
            int at = NUMBERS * cell;
            float xx = numbers[at] + PRIOR;
            float xy = numbers[at + 1];
            float yy = numbers[at + 2] + PRIOR;
            float towardsX = numbers[at + 3] + PRIOR * coarseX[cell];
            float towardsY = numbers[at + 4] + PRIOR * coarseY[cell];
            float determinant = xx * yy - xy * xy;
            x[cell] = (yy * towardsX - xy * towardsY) / determinant;
            y[cell] = (xx * towardsY - xy * towardsX) / determinant;
        }
    }

    @Override
    public void close() {
        weights.values().forEach(Mat::close);
        inEquations.close();
        equations.close();
    }
}
