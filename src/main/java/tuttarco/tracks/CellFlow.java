package tuttarco.tracks;

import static org.bytedeco.opencv.global.opencv_imgproc.INTER_AREA;
import static org.bytedeco.opencv.global.opencv_imgproc.resize;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_video;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Size;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/**
 * Dense optical flow of one seat as the mean motion of each cell of a square grid.
 *
 * <p>The seat box is scaled to a working size, Farneback's flow is taken between each frame and one a little earlier, and
 * the mean over each cell is kept: a few hundred numbers a frame instead of a picture. The earlier frame is not the one
 * just before: a slow bow moves so little from frame to frame that compression and noise hide it.
 *
 * <p>Reference: G. Farneback, Two-frame motion estimation based on polynomial expansion, SCIA 2003.
 */
final class CellFlow implements AutoCloseable {
    /** Cells along each side of the seat box. */
    static final int GRID = 16;

    static final int CELLS = GRID * GRID;

    /**
     * Side of a square as large as the scaled seat, pixels. Chosen on rendered scenes: at 84 slow bows of figures seen whole
     * are lost, 150 is no better.
     */
    static final double WORKING_SIDE_PX = 120;

    /** Age of the earlier frame, seconds; chosen on rendered scenes: 0.033 loses shaken scenes, 0.2 quick strokes. */
    private static final double BASELINE_S = 0.066;

    /**
     * Frames that follow another sooner than this, seconds, are passed over: from 50 frames a second on every other one
     * tells nothing more (rendered scenes) and costs as much.
     */
    private static final double LEAST_STEP_S = 0.028;

    /** Farneback's parameters, measured on real clips: levels, window in pixels, iterations, neighbourhood, its sigma. */
    private static final int LEVELS = 4;

    private static final int WINDOW_PX = 13;
    private static final int ITERATIONS = 3;
    private static final int NEIGHBOURHOOD_PX = 5;
    private static final double NEIGHBOURHOOD_SIGMA_PX = 1.1;

    /** Mean luma to which each picture is brought, 0 to 255, and the strongest gain that may take. */
    private static final double EVEN_LUMA = 100;

    private static final double STRONGEST_GAIN = 8;

    private record Seen(double timeS, Mat picture) {}

    private final Grid grid;
    private final Rect box;
    private final Size working;
    private final double pxPerUnit;
    private final Size cells = new Size(GRID, GRID);
    private final Deque<Seen> recent = new ArrayDeque<>();
    private final Deque<Mat> spare = new ArrayDeque<>();
    private final Mat flow = new Mat();
    private final Mat means = new Mat();
    private double luma;

    /**
     * @param region the part of the picture to look at
     * @param unitPx the unit of all motion, pixels of the picture
     */
    CellFlow(SeatBox region, double unitPx) {
        grid = new Grid(region);
        box = new Rect(region.xPx(), region.yPx(), region.widthPx(), region.heightPx());
        double scale = WORKING_SIDE_PX / Math.sqrt((double) region.widthPx() * region.heightPx());
        int widthPx = Math.max(GRID, (int) Math.round(scale * region.widthPx()));
        int heightPx = Math.max(GRID, (int) Math.round(scale * region.heightPx()));
        working = new Size(widthPx, heightPx);
        pxPerUnit = heightPx * unitPx / region.heightPx();
    }

    /** Where the cells lie in the picture, row by row. */
    record Grid(SeatBox region) {
        /** Middle of a cell, pixels. */
        double xPx(int cell) {
            return region.xPx() + (cell % GRID + 0.5) / GRID * region.widthPx();
        }

        double yPx(int cell) {
            return region.yPx() + (cell / GRID + 0.5) / GRID * region.heightPx();
        }
    }

    /** What moved between two frames. */
    static final class Motion {
        private final double fromS;
        private final double toS;
        private final float[] shift;
        private final double bodyX;
        private final double bodyY;

        /**
         * @param fromS time of the earlier frame, {@code toS} of the later, seconds
         * @param shift what moved between them, in the flow's unit: x of all cells row by row, then y
         */
        Motion(double fromS, double toS, float[] shift) {
            this.fromS = fromS;
            this.toS = toS;
            this.shift = shift;
            bodyX = median(shift, 0);
            bodyY = median(shift, CELLS);
        }

        private static double median(float[] numbers, int from) {
            float[] sorted = Arrays.copyOfRange(numbers, from, from + CELLS);
            Arrays.sort(sorted);
            return 0.5 * (sorted[CELLS / 2 - 1] + sorted[CELLS / 2]);
        }

        double fromS() {
            return fromS;
        }

        double toS() {
            return toS;
        }

        double x(int cell) {
            return shift[cell];
        }

        double y(int cell) {
            return shift[CELLS + cell];
        }

        /** The median over all cells, which stands for body, camera and background. */
        double bodyX() {
            return bodyX;
        }

        double bodyY() {
            return bodyY;
        }
    }

    Grid grid() {
        return grid;
    }

    /** Takes the next frame. Empty for the first, and for frames that come too soon after another. */
    Optional<Motion> advance(Frame frame) {
        if (!recent.isEmpty() && frame.timeS() - recent.getLast().timeS() < LEAST_STEP_S) {
            return Optional.empty();
        }
        Mat now = spare.isEmpty() ? new Mat() : spare.pop();
        try (Mat seat = new Mat(frame.grey(), box)) {
            resize(seat, now, working, 0, 0, INTER_AREA);
        }
        luma = opencv_core.mean(now).get(0);
        // flickering light is no motion: every picture is brought to the same mean
        now.convertTo(now, -1, Math.min(STRONGEST_GAIN, EVEN_LUMA / Math.max(1, luma)), 0);
        recent.addLast(new Seen(frame.timeS(), now));
        while (recent.size() > 2 && closer(frame.timeS())) {
            spare.push(recent.removeFirst().picture());
        }
        if (recent.size() < 2) {
            return Optional.empty();
        }
        Seen earlier = recent.getFirst();
        return Optional.of(new Motion(earlier.timeS(), frame.timeS(), shift(earlier.picture(), now)));
    }

    /** Whether the second frame kept is nearer to the wanted age than the first. */
    private boolean closer(double nowS) {
        var oldest = recent.iterator();
        double first = nowS - oldest.next().timeS();
        double second = nowS - oldest.next().timeS();
        return Math.abs(second - BASELINE_S) <= Math.abs(first - BASELINE_S) + 1e-6;
    }

    private float[] shift(Mat earlier, Mat now) {
        opencv_video.calcOpticalFlowFarneback(
                earlier, now, flow, 0.5, LEVELS, WINDOW_PX, ITERATIONS, NEIGHBOURHOOD_PX, NEIGHBOURHOOD_SIGMA_PX, 0);
        resize(flow, means, cells, 0, 0, INTER_AREA);
        float[] numbers = new float[2 * CELLS];
        try (FloatIndexer at = means.createIndexer()) {
            for (int row = 0; row < GRID; row++) {
                for (int column = 0; column < GRID; column++) {
                    int cell = row * GRID + column;
                    numbers[cell] = (float) (at.get(row, column, 0) / pxPerUnit);
                    numbers[CELLS + cell] = (float) (at.get(row, column, 1) / pxPerUnit);
                }
            }
        }
        return numbers;
    }

    /** Mean luma of the frame last taken, 0 to 255. */
    double luma() {
        return luma;
    }

    @Override
    public void close() {
        recent.forEach(s -> s.picture().close());
        spare.forEach(Mat::close);
        flow.close();
        means.close();
        box.close();
        working.close();
        cells.close();
    }
}
