package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.signal.Axis;

class SideMotionTest {
    private static final double RATE_HZ = 32;
    private static final double[] TIMES_S =
            IntStream.range(0, 150).mapToDouble(i -> i / RATE_HZ).toArray();
    private static final double FLOOR = 0.025;
    private static final double EXACT = 1e-9;

    /** Bowing to the right at 0.6 shoulder widths a second, with so much motion downwards. */
    private static double[] noise(double[] downwards) {
        Axis[] axes = new Axis[TIMES_S.length];
        Arrays.fill(axes, new Axis(1, 0));
        double[] along = new double[TIMES_S.length];
        Arrays.fill(along, 0.6);
        return SideMotion.noise(axes, TIMES_S, along, downwards);
    }

    @Test
    void whatMovesAlongTheBowIsNoNoise() {
        for (double noise : noise(new double[TIMES_S.length])) {
            assertEquals(FLOOR, noise, EXACT);
        }
    }

    @Test
    void halfOfASteadyMotionAcrossCounts() {
        double[] across = new double[TIMES_S.length];
        Arrays.fill(across, -0.4);
        for (double noise : noise(across)) {
            assertEquals(Math.hypot(FLOOR, 0.5 * 0.4), noise, EXACT);
        }
    }

    /** A twist of the body for half a second: 16 samples of 65 within a second, all of those near its middle. */
    @Test
    void aShortMotionAcrossCountsMoreWhileItLasts() {
        double[] across = new double[TIMES_S.length];
        Arrays.fill(across, 64, 80, 0.8);
        double[] noise = noise(across);
        assertEquals(Math.hypot(FLOOR, 0.5 * 0.8), noise[72], EXACT);
        assertEquals(Math.hypot(FLOOR, 0.3 * 0.8 * Math.sqrt(16 / 65.0)), noise[90], EXACT);
        assertEquals(FLOOR, noise[125], EXACT);
    }
}
