package tuttarco.signal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LocalQuadraticTest {
    /** Savitzky & Golay 1964, Anal. Chem. 36:1627, quadratic smoothing, 5 points. */
    @Test
    void fivePointsOnEvenSpacingAreTheSavitzkyGolayWeights() {
        assertWeights(2, new double[] {-3, 12, 17, 12, -3}, 35);
    }

    /** Savitzky & Golay 1964, Anal. Chem. 36:1627, quadratic smoothing, 7 points. */
    @Test
    void sevenPointsOnEvenSpacingAreTheSavitzkyGolayWeights() {
        assertWeights(3, new double[] {-2, 3, 6, 7, 6, 3, -2}, 21);
    }

    private static void assertWeights(int reach, double[] weights, double divisor) {
        double frameS = 1.0 / 30;
        int n = 21;
        double[] timesS = IntStream.range(0, n).mapToDouble(i -> i * frameS).toArray();
        LocalQuadratic smoothing = new LocalQuadratic(reach * frameS);
        for (int k = 0; k < weights.length; k++) {
            double[] impulse = new double[n];
            impulse[n / 2 - reach + k] = 1;
            assertEquals(weights[k] / divisor, smoothing.smooth(timesS, impulse)[n / 2], 1e-9, "weight " + k);
        }
    }

    @Test
    void aQuadraticOnUnevenTimesComesBackAsItWas() {
        Random random = new Random(1);
        double[] timesS = random.doubles(200, 0, 10).sorted().toArray();
        double[] values =
                Arrays.stream(timesS).map(t -> 2 - 3 * t + 0.5 * t * t).toArray();
        assertArrayEquals(values, new LocalQuadratic(0.5).smooth(timesS, values), 1e-6);
    }

    @Test
    void aLonePointStaysAsItIs() {
        assertArrayEquals(new double[] {7}, new LocalQuadratic(1).smooth(new double[] {3}, new double[] {7}), 0);
    }

    @Test
    void aWindowWithoutWidthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new LocalQuadratic(0));
        assertThrows(IllegalArgumentException.class, () -> new LocalQuadratic(Double.NaN));
    }
}
