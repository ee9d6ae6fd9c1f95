package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Loudness whose every rise is known in closed form. */
class RiseTest {
    private static final int BESIDE = 12;
    private static final int MOMENTS = 80;

    /** The moment at whose half hop a tone has come to half its loudness. */
    private static final int HALF_WAY = 40;

    private static double[] worth(boolean again, DoubleUnaryOperator loudnessFromHalfWayS) {
        Rise rise = new Rise(BESIDE, BESIDE, again);
        return rise.worth(IntStream.range(0, rise.needed(MOMENTS))
                .mapToDouble(
                        i -> loudnessFromHalfWayS.applyAsDouble((i - BESIDE - HALF_WAY) * SoundFeatures.FLUX_HOP_S))
                .toArray());
    }

    private static int best(double[] worth) {
        return IntStream.range(0, worth.length)
                .reduce((a, b) -> worth[a] >= worth[b] ? a : b)
                .orElseThrow();
    }

    /** A tone that rises evenly is half as loud half way up, however long that takes. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.07, 0.12, 0.18})
    void aToneBeginsHalfWayUpHoweverSlowItIs(double attackS) {
        double[] worth = worth(false, s -> 0.2 + Math.max(0, Math.min(1, s / attackS + 0.5)));
        assertEquals(HALF_WAY, best(worth), 1);
        assertTrue(worth[HALF_WAY] > worth[0] + 2, Arrays.toString(worth));
    }

    /** The same tone stops, rings for a moment and rises again; the loudest dip lies before it is half way up. */
    @Test
    void aToneThatIsPlayedAgainBeginsAfterItsDip() {
        double[] worth =
                worth(true, s -> Math.min(1, Math.exp(-(s + 0.06) / 0.03)) + Math.max(0, Math.min(1, s / 0.12 + 0.5)));
        assertEquals(HALF_WAY, best(worth), 1);
        assertTrue(worth[HALF_WAY] > worth[0] + 2, Arrays.toString(worth));
    }

    /** What only falls, does not change or is silent begins nowhere. */
    @Test
    void whatDoesNotRiseBeginsNowhere() {
        for (DoubleUnaryOperator still : new DoubleUnaryOperator[] {s -> 0, s -> 0.7, s -> s < 0 ? 1 : 0.1}) {
            for (double worth : worth(false, still)) {
                assertEquals(0, worth, 1e-6);
            }
        }
    }

    /** The more noise there is, the less is said: no weight needs to be set for it. */
    @Test
    void noiseMakesItSayLess() {
        double before = Double.POSITIVE_INFINITY;
        for (double noise : new double[] {0.1, 0.5, 2.5}) {
            Random random = new Random(7);
            double said = 0;
            for (int i = 0; i < 50; i++) {
                said += worth(false, s -> (s < 0 ? 0 : 1) + noise * random.nextGaussian())[HALF_WAY] / 50;
            }
            assertTrue(said < 0.7 * before, noise + ": " + said);
            before = said;
        }
    }
}
