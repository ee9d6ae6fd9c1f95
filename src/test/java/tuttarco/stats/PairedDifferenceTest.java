package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class PairedDifferenceTest {
    /**
     * Student's sleep data (Student 1908, Biometrika 6:1; in R, {@code t.test(extra ~ group, data = sleep, paired = TRUE)},
     * from memory): t = -4.0621, df = 9, p = 0.002833, interval -2.4598858 to -0.7001142, mean -1.58.
     */
    @Test
    void isStudentsOwnExample() {
        double[] first = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
        double[] second = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
        PairedDifference sleep = PairedDifference.of(first, second);
        assertEquals(10, sleep.pairs());
        assertEquals(1.58, sleep.mean(), 1e-9);
        assertEquals(0.7001142, sleep.interval().low(), 1e-6);
        assertEquals(2.4598858, sleep.interval().high(), 1e-6);
        assertEquals(0.002833, sleep.pValue(), 1e-6);
        assertEquals(4.0621 / Math.sqrt(10), sleep.effectSize(), 1e-4);
    }

    @Test
    void theSameIsNoDifference() {
        double[] values = {1, 2, 3};
        PairedDifference none = PairedDifference.of(values, values);
        assertEquals(new PairedDifference(3, 0, new Interval(0, 0), 0, 1), none);
    }

    @Test
    void pairsAreWhole() {
        assertThrows(IllegalArgumentException.class, () -> PairedDifference.of(new double[2], new double[3]));
        assertThrows(IllegalArgumentException.class, () -> PairedDifference.of(new double[1], new double[1]));
    }
}
