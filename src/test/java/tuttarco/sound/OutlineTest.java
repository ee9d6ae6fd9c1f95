package tuttarco.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class OutlineTest {
    private static final int SAMPLES_PER_S = 64_000;

    @Test
    void aStepReachesAsFarAsItsSamples() {
        Outline.Gathering gathering = new Outline.Gathering(SAMPLES_PER_S, 2);
        float[] block = new float[3 * Outline.FINEST];
        block[10] = 1;
        block[Outline.FINEST + 5] = -0.5f;
        gathering.add(block, block.length);
        Outline outline = gathering.outline();
        assertEquals(2, outline.startS());
        assertEquals(0.001, outline.stepS());
        assertEquals(2.003, outline.endS(), 1e-12);
        assertEquals(new Outline.Reach(0, 1), outline.reach(2.0001, 2.0009));
        // kept in 127 steps either way
        assertEquals(-0.5, outline.reach(2.0011, 2.0019).low(), 0.5 / 127);
        assertEquals(Outline.Reach.SILENT, outline.reach(2.0021, 2.0029));
        assertEquals(1, outline.reach(0, 9).high());
        assertEquals(Outline.Reach.SILENT, outline.reach(5, 9));
    }

    @Test
    void aLongSoundTakesNoMoreRoomAndKeepsItsTime() {
        Outline.Gathering gathering = new Outline.Gathering(SAMPLES_PER_S, 0);
        float[] second = new float[SAMPLES_PER_S];
        int seconds = 3 * Outline.MOST_STEPS / 1000;
        for (int s = 0; s < seconds; s++) {
            Arrays.fill(second, s % 10 == 7 ? 0.9f : 0);
            gathering.add(second, second.length);
        }
        Outline outline = gathering.outline();
        assertTrue(outline.endS() / outline.stepS() <= Outline.MOST_STEPS, "steps " + outline.stepS());
        assertEquals(seconds, outline.endS(), 2 * outline.stepS());
        for (int s = 0; s < seconds; s++) {
            double high = outline.reach(s + 0.1, s + 0.9).high();
            assertEquals(s % 10 == 7 ? 0.9 : 0, high, 0.005, "second " + s);
        }
    }
}
