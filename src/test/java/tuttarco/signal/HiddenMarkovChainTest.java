package tuttarco.signal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * The umbrella world of Russell & Norvig, Artificial Intelligence: A Modern Approach, chapter on temporal models (from
 * memory): rain follows rain with 0.7; an umbrella is seen with 0.9 when it rains, with 0.2 when it does not.
 */
class HiddenMarkovChainTest {
    private static final double[][] RAIN = log(new double[][] {{0.7, 0.3}, {0.3, 0.7}});

    private static HiddenMarkovChain umbrellas(boolean... seen) {
        double[][] evidence = new double[seen.length][];
        for (int i = 0; i < seen.length; i++) {
            evidence[i] = seen[i] ? new double[] {0.9, 0.2} : new double[] {0.1, 0.8};
        }
        return new HiddenMarkovChain(log(new double[][] {{0.5, 0.5}})[0], log(evidence), i -> RAIN);
    }

    @Test
    void twoUmbrellasMakeRainOnTheFirstDayEightyEightPercentLikely() {
        double[][] posterior = umbrellas(true, true).posterior();
        assertEquals(2, posterior.length);
        assertEquals(0.883, posterior[0][0], 5e-4);
        assertEquals(0.883, posterior[1][0], 5e-4);
        assertEquals(1, posterior[0][0] + posterior[0][1], 1e-12);
    }

    @Test
    void theMostLikelyWeatherFollowsTheUmbrellas() {
        assertArrayEquals(
                new int[] {0, 0, 1, 0, 0},
                umbrellas(true, true, false, true, true).path());
    }

    @Test
    void manyStepsDoNotUnderflow() {
        boolean[] seen = new boolean[20_000];
        Arrays.fill(seen, true);
        double[][] posterior = umbrellas(seen).posterior();
        assertEquals(20_000, posterior.length);
        assertEquals(posterior[5_000][0], posterior[15_000][0], 1e-9);
    }

    private static double[][] log(double[][] p) {
        return Arrays.stream(p)
                .map(row -> Arrays.stream(row).map(Math::log).toArray())
                .toArray(double[][]::new);
    }
}
