package tuttarco.tracks;

import static org.bytedeco.opencv.global.opencv_imgproc.INTER_AREA;
import static org.bytedeco.opencv.global.opencv_imgproc.resize;

import java.util.Optional;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_video;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Size;
import tuttarco.seats.SeatBox;

/**
 * Dense optical flow of one seat, frame by frame, as the mean motion of each cell of a square grid.
 *
 * <p>The seat box is scaled to a working height, Farneback's flow is taken between successive frames, and the mean over
 * each cell is kept: a few hundred numbers a frame instead of a picture.
 *
 * <p>Reference: G. Farneback, Two-frame motion estimation based on polynomial expansion, SCIA 2003.
 */
final class CellFlow implements AutoCloseable {
    /** Cells along each side of the seat box. */
    static final int GRID = 16;

    /** Numbers a frame: x and y of each cell. */
    static final int NUMBERS = 2 * GRID * GRID;

    /** Height to which a seat is scaled, pixels; measured on real clips: 48 loses the sign, 150 costs four times as much. */
    static final int WORKING_HEIGHT_PX = 72;

    /** Farneback's parameters, measured on real clips: levels, window in pixels, iterations, neighbourhood, its sigma. */
    private static final int LEVELS = 4;

    private static final int WINDOW_PX = 13;
    private static final int ITERATIONS = 3;
    private static final int NEIGHBOURHOOD_PX = 5;
    private static final double NEIGHBOURHOOD_SIGMA_PX = 1.1;

    private final Rect box;
    private final Size working;
    private final Size cells = new Size(GRID, GRID);
    private Mat previous = new Mat();
    private Mat current = new Mat();
    private final Mat flow = new Mat();
    private final Mat means = new Mat();
    private boolean started;

    CellFlow(SeatBox seat) {
        box = new Rect(seat.xPx(), seat.yPx(), seat.widthPx(), seat.heightPx());
        int widthPx = Math.max(GRID, Math.round((float) WORKING_HEIGHT_PX * seat.widthPx() / seat.heightPx()));
        working = new Size(widthPx, WORKING_HEIGHT_PX);
    }

    /**
     * Motion since the frame before, in seat heights per frame: x of all cells row by row, then y. Empty for the first
     * frame.
     */
    Optional<float[]> advance(Mat grey) {
        Mat swap = previous;
        previous = current;
        current = swap;
        try (Mat seat = new Mat(grey, box)) {
            resize(seat, current, working, 0, 0, INTER_AREA);
        }
        if (!started) {
            started = true;
            return Optional.empty();
        }
        opencv_video.calcOpticalFlowFarneback(
                previous,
                current,
                flow,
                0.5,
                LEVELS,
                WINDOW_PX,
                ITERATIONS,
                NEIGHBOURHOOD_PX,
                NEIGHBOURHOOD_SIGMA_PX,
                0);
        resize(flow, means, cells, 0, 0, INTER_AREA);
        float[] numbers = new float[NUMBERS];
        try (FloatIndexer at = means.createIndexer()) {
            for (int row = 0; row < GRID; row++) {
                for (int column = 0; column < GRID; column++) {
                    int cell = row * GRID + column;
                    numbers[cell] = at.get(row, column, 0) / WORKING_HEIGHT_PX;
                    numbers[GRID * GRID + cell] = at.get(row, column, 1) / WORKING_HEIGHT_PX;
                }
            }
        }
        return Optional.of(numbers);
    }

    double brightness() {
        return opencv_core.mean(current).get(0);
    }

    @Override
    public void close() {
        previous.close();
        current.close();
        flow.close();
        means.close();
        box.close();
        working.close();
        cells.close();
    }
}
