package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import org.junit.jupiter.api.Test;
import tuttarco.seats.SeatBox;

/**
 * Of a motion v that one half of a disc shows and the other does not, a plane leaves (1/4 - 16 / (9 pi^2)) v^2, and half of
 * v is common to all (closed form: the half disc's centre is 4 R / (3 pi) from the middle). Less the square of a fifth of
 * that this is more than 0.135^2 for v above 0.55 shoulder widths a second.
 */
class FaceWatchTest {
    private static final double STEP_S = 0.04;
    private static final int MOTIONS = 400;

    /** The face covers about a hundred cells, and others than the face's are more, so that the median motion is theirs. */
    private static final double SHOULDERS_PX = 150;

    private static final KeyPose.Place NOSE = new KeyPose.Place(80, 80);
    private static final CellFlow.Grid GRID = new CellFlow.Grid(new SeatBox(0, 0, 160, 160));

    /** Motion at a place, shoulder widths from the nose, and a time; shoulder widths a second. */
    private interface Field {
        double right(double x, double y, double timeS);

        default double down(double x, double y, double timeS) {
            return 0;
        }
    }

    private static BitSet crossed(Field field, double shoulderWidthPx) {
        FaceWatch watch = new FaceWatch();
        for (int i = 1; i <= MOTIONS; i++) {
            double timeS = i * STEP_S;
            float[] shift = new float[2 * CellFlow.CELLS];
            for (int cell = 0; cell < CellFlow.CELLS; cell++) {
                double x = (GRID.xPx(cell) - NOSE.xPx()) / shoulderWidthPx;
                double y = (GRID.yPx(cell) - NOSE.yPx()) / shoulderWidthPx;
                if (Math.hypot(x, y) < 0.4) {
                    shift[cell] = (float) (STEP_S * field.right(x, y, timeS));
                    shift[CellFlow.CELLS + cell] = (float) (STEP_S * field.down(x, y, timeS));
                }
            }
            watch.accept(new CellFlow.Motion(timeS - STEP_S, timeS, shift), GRID, NOSE, shoulderWidthPx);
        }
        return watch.crossed();
    }

    private static Field halfAt(double speed) {
        return (x, y, timeS) -> x > 0 ? speed : 0;
    }

    @Test
    void whatMovesBeforeHalfTheFaceIsNoticedFromTheClosedFormsSpeedOn() {
        assertEquals(MOTIONS, crossed(halfAt(0.59), SHOULDERS_PX).cardinality());
        assertTrue(crossed(halfAt(0.51), SHOULDERS_PX).isEmpty());
    }

    /** A head that is carried along, nods and comes nearer at once: a plane over the places. */
    @Test
    void aHeadThatMovesAsOneCrossesNothing() {
        Field head = new Field() {
            @Override
            public double right(double x, double y, double timeS) {
                return 2 + 3 * x - 2 * y;
            }

            @Override
            public double down(double x, double y, double timeS) {
                return 1 + 2 * x + 3 * y;
            }
        };
        assertTrue(crossed(head, SHOULDERS_PX).isEmpty());
    }

    /** Squares are pooled over three seconds to either side: (0.0599 v^2) / 6 is more than 0.135^2 for a second of 2. */
    @Test
    void aMomentIsRememberedForThreeSecondsToEitherSide() {
        BitSet crossed = crossed((x, y, timeS) -> x > 0 && Math.abs(timeS - 8) < 0.5 ? 2 : 0, SHOULDERS_PX);
        assertTrue(crossed.get(index(8)));
        assertTrue(crossed.get(index(8 - 2.2)));
        assertTrue(crossed.get(index(8 + 2.2)));
        assertFalse(crossed.get(index(8 - 3.6)));
        assertFalse(crossed.get(index(8 + 3.6)));
    }

    private static int index(double timeS) {
        return (int) Math.round(timeS / STEP_S);
    }

    /** The nearest four cells lie half a cell to either side of the nose; the next are farther than this head is wide. */
    @Test
    void ofAFaceOfFourCellsNothingIsTold() {
        double cellPx = 10;
        assertTrue(crossed(halfAt(5), cellPx / 0.4).isEmpty());
    }
}
