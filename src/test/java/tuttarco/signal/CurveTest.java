package tuttarco.signal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CurveTest {
    private static final Curve ROOF = new Curve(new double[] {1, 2, 4}, new double[] {0, 3, 1});

    @Test
    void isStraightBetweenItsTimesAndLevelOutside() {
        assertEquals(0, ROOF.at(-5), 0);
        assertEquals(0, ROOF.at(1), 0);
        assertEquals(1.5, ROOF.at(1.5), 1e-12);
        assertEquals(3, ROOF.at(2), 0);
        assertEquals(2, ROOF.at(3), 1e-12);
        assertEquals(1, ROOF.at(9), 0);
    }

    @Test
    void theIntegralIsTheAreaUnderTheLines() {
        assertArrayEquals(new double[] {0, 1.5, 5.5}, ROOF.integral().values(), 1e-12);
    }

    @Test
    void slopesAreThoseOfTheChord() {
        assertEquals(3, ROOF.slope(1.5, 0.5), 1e-12);
        assertEquals(1, ROOF.slope(2, 1), 1e-12);
    }

    @Test
    void aMovingMeanTakesWhatLiesWithinReachOfItsTime() {
        assertArrayEquals(new double[] {1.5, 1.5, 1}, ROOF.movingMean(1).values(), 1e-12);
        double[] timesS = IntStream.range(0, 50).mapToDouble(i -> 0.1 * i).toArray();
        double[] line = IntStream.range(0, 50).mapToDouble(i -> 7 - 0.3 * i).toArray();
        double[] mean = new Curve(timesS, line).movingMean(0.55).values();
        for (int i = 5; i < 45; i++) {
            assertEquals(line[i], mean[i], 1e-9, "the mean of a line is the line, at " + i);
        }
    }

    @Test
    void timesOutOfOrderAreRefused() {
        assertThrows(RuntimeException.class, () -> new Curve(new double[] {2, 1}, new double[2]));
        assertThrows(IllegalArgumentException.class, () -> new Curve(new double[] {1, 2}, new double[1]));
        assertThrows(IllegalArgumentException.class, () -> new Curve(new double[0], new double[0]));
    }
}
