package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/**
 * A smooth pattern, known in closed form at any place, is moved by less than a quarter of its waves: each cell moved by that
 * way.
 */
class CellFlowTest {
    /** Cells along the seat's rim that look at what comes in from outside: three of neighbours, one of filters. */
    private static final int RIM = 4;

    /** Two waves of about a tenth of the picture across each other, 50 to 150 of 255, and a slower one. */
    private static double shade(double x, double y) {
        return 100
                + 20 * Math.sin(2 * Math.PI * (x / 23 + y / 71))
                + 20 * Math.sin(2 * Math.PI * (y / 29 - x / 83))
                + 10 * Math.sin(2 * Math.PI * (x / 131 + y / 97));
    }

    private static Mat pattern(int widthPx, int heightPx, double movedX, double movedY, double gain) {
        Mat grey = new Mat(heightPx, widthPx, opencv_core.CV_8UC1);
        try (UByteIndexer at = grey.createIndexer()) {
            for (int y = 0; y < heightPx; y++) {
                for (int x = 0; x < widthPx; x++) {
                    at.put(y, x, (int) Math.round(gain * shade(x - movedX, y - movedY)));
                }
            }
        }
        return grey;
    }

    private static CellFlow.Motion shift(SeatBox seat, Mat first, Mat second) {
        try (CellFlow flow = new CellFlow(seat, seat.heightPx())) {
            assertEquals(Optional.empty(), flow.advance(new Frame(0, 0, first)));
            CellFlow.Motion motion = flow.advance(new Frame(1, 0.04, second)).orElseThrow();
            assertEquals(0, motion.fromS());
            assertEquals(0.04, motion.toS());
            return motion;
        }
    }

    /** Of the cells off the seat's rim, where nothing new comes in, every one. */
    private static void assertMoved(SeatBox seat, double movedX, double movedY, CellFlow.Motion moved) {
        for (int row = RIM; row < CellFlow.GRID - RIM; row++) {
            for (int column = RIM; column < CellFlow.GRID - RIM; column++) {
                int cell = row * CellFlow.GRID + column;
                String where = "row " + row + ", column " + column;
                assertEquals(movedX, seat.heightPx() * moved.x(cell), 0.2, where);
                assertEquals(movedY, seat.heightPx() * moved.y(cell), 0.2, where);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0,0", "0.5,0", "0,-0.5", "3,1.5", "-2.3,4", "5,-4.5"})
    void everyCellMovesWithThePicture(double movedX, double movedY) {
        for (SeatBox seat :
                new SeatBox[] {new SeatBox(0, 0, 128, 128), new SeatBox(10, 20, 200, 150), new SeatBox(5, 5, 391, 265)
                }) {
            try (Mat first = pattern(400, 280, 0, 0, 1);
                    Mat second = pattern(400, 280, movedX, movedY, 1)) {
                assertMoved(seat, movedX, movedY, shift(seat, first, second));
            }
        }
    }

    @Test
    void lightThatComesAndGoesIsNoMotion() {
        SeatBox seat = new SeatBox(0, 0, 160, 160);
        try (Mat first = pattern(160, 160, 0, 0, 1);
                Mat second = pattern(160, 160, 0, 0, 1.4)) {
            assertMoved(seat, 0, 0, shift(seat, first, second));
        }
    }

    @Test
    void aBlankSeatDoesNotMove() {
        SeatBox seat = new SeatBox(0, 0, 160, 160);
        try (Mat first = Mat.zeros(160, 160, opencv_core.CV_8UC1).asMat();
                Mat second = Mat.ones(160, 160, opencv_core.CV_8UC1).asMat()) {
            CellFlow.Motion moved = shift(seat, first, second);
            for (int cell = 0; cell < CellFlow.CELLS; cell++) {
                assertEquals(0, moved.x(cell), 1e-6);
                assertEquals(0, moved.y(cell), 1e-6);
            }
        }
    }

    @Test
    void frameIsPassedOverThatFollowsAtOnce() {
        SeatBox seat = new SeatBox(0, 0, 160, 160);
        try (Mat grey = pattern(160, 160, 0, 0, 1);
                CellFlow flow = new CellFlow(seat, 160)) {
            assertTrue(flow.advance(new Frame(0, 0, grey)).isEmpty());
            assertTrue(flow.advance(new Frame(1, 0.016, grey)).isEmpty());
            assertTrue(flow.advance(new Frame(2, 0.033, grey)).isPresent());
        }
    }
}
