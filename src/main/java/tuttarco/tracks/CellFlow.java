package tuttarco.tracks;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/**
 * Motion of one seat as that of each cell of a square grid: a few hundred numbers a frame instead of a picture.
 *
 * <p>The seat box is scaled to a square, and each frame compared with one a little earlier. The earlier frame is not the
 * one just before: a slow bow moves so little from frame to frame that compression and noise hide it.
 */
final class CellFlow implements AutoCloseable {
    /** Cells along each side of the seat box. */
    static final int GRID = 16;

    /** Cells of the grid. */
    static final int CELLS = GRID * GRID;

    /** Age of the earlier frame, seconds; chosen on rendered scenes: 0.033 loses shaken scenes, 0.2 quick strokes. */
    private static final double BASELINE_S = 0.066;

    /**
     * Frames that follow another sooner than this, seconds, are passed over: from 50 frames a second on every other one
     * tells nothing more (rendered scenes) and costs as much.
     */
    private static final double LEAST_STEP_S = 0.028;

    private record Seen(double timeS, SeatPyramid picture) {}

    private final Grid grid;
    private final SeatScaler scaler;
    private final CellAlignment alignment = new CellAlignment();
    private final double unitsPerPxX;
    private final double unitsPerPxY;
    private final Deque<Seen> recent = new ArrayDeque<>();
    private final Deque<SeatPyramid> spare = new ArrayDeque<>();

    /**
     * @param region the part of the picture to look at
     * @param unitPx the unit of all motion, pixels of the picture
     */
    CellFlow(SeatBox region, double unitPx) {
        grid = new Grid(region);
        scaler = new SeatScaler(region);
        double finestPx = FlowLevel.FINEST.sidePx();
        unitsPerPxX = region.widthPx() / finestPx / unitPx;
        unitsPerPxY = region.heightPx() / finestPx / unitPx;
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
        SeatPyramid now = spare.isEmpty() ? SeatPyramid.empty() : spare.pop();
        scaler.scale(frame.grey(), now);
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

    /** Times of the frames still compared with; their pictures are {@linkplain #recall recalled}. */
    void note(Memo memo) throws IOException {
        List<Double> timesS = new ArrayList<>(recent.stream().map(Seen::timeS).toList());
        memo.list(Double.class, timesS);
        timesS.stream().skip(recent.size()).forEach(timeS -> recent.addLast(new Seen(timeS, SeatPyramid.empty())));
    }

    /** Takes the picture of a frame still compared with from the clip again. */
    void recall(Frame frame) {
        recent.stream()
                .filter(seen -> seen.timeS() == frame.timeS())
                .forEach(seen -> scaler.scale(frame.grey(), seen.picture()));
    }

    /** Whether the second frame kept is nearer to the wanted age than the first. */
    private boolean closer(double nowS) {
        var oldest = recent.iterator();
        double first = nowS - oldest.next().timeS();
        double second = nowS - oldest.next().timeS();
        return Math.abs(second - BASELINE_S) <= Math.abs(first - BASELINE_S) + 1e-6;
    }

    private float[] shift(SeatPyramid earlier, SeatPyramid now) {
        alignment.align(earlier, now);
        float[] shift = new float[2 * CELLS];
        for (int cell = 0; cell < CELLS; cell++) {
            shift[cell] = (float) (alignment.x()[cell] * unitsPerPxX);
            shift[CELLS + cell] = (float) (alignment.y()[cell] * unitsPerPxY);
        }
        return shift;
    }

    /** Mean luma of the frame last taken, 0 to 255. */
    double luma() {
        return scaler.luma();
    }

    @Override
    public void close() {
        scaler.close();
        alignment.close();
    }
}
