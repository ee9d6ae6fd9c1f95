package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BestStretchTest {
    @Test
    void theLargestSumIsFound() {
        // Bentley's own example: from the third to the seventh, 187
        double[] worths = {31, -41, 59, 26, -53, 58, 97, -93, -23, 84};
        assertEquals(new BestStretch(2, 7), BestStretch.of(worths));
        assertEquals(new BestStretch(0, 3), BestStretch.of(new double[] {1, -0.5, 1}));
        assertEquals(new BestStretch(0, 0), BestStretch.of(new double[] {-1, -2}));
    }

    @Test
    void gainIsCountedFromFrameToFrame() {
        GainSoFar gain = new GainSoFar(new float[] {1, 3, 3, 7}, 10, 0.5);
        assertEquals(7, gain.between(0, 60));
        assertEquals(2, gain.between(10.5, 11.5));
        assertEquals(0, gain.between(0, 10));
    }
}
