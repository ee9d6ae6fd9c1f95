package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.strokes.Stroke;

class DelayTest {
    @Test
    void aWholeDelayComesBackToTheStepOfTheSearch() {
        Random random = new Random(21);
        for (int delayMs = -200; delayMs <= 200; delayMs += 40) {
            List<Stroke> reference = Passage.random(random).asMarked();
            assertEquals(
                    delayMs / 1000.0,
                    Delay.ofS(Bows.late(reference, delayMs / 1000.0), reference, 0.2),
                    0.0051,
                    delayMs + " ms");
        }
    }

    /** Strokes of 0.1 s fit again 0.2 s earlier or later; unsteady changes must not lead there. */
    @Test
    void ofDelaysThatFitAlikeTheSmallestIsTaken() {
        Random random = new Random(22);
        List<Stroke> reference = Passage.steady(0.1, 0.5, 300).asMarked();
        List<Double> delaysS = IntStream.range(0, 50)
                .mapToObj(i -> Delay.ofS(Bows.jittered(reference, 0.02, random), reference, 0.25))
                .toList();
        assertEquals(50, delaysS.size());
        assertTrue(delaysS.stream().allMatch(d -> Math.abs(d) < 0.05), delaysS.toString());
    }

    @Test
    void tooLittleToGoByIsNoDelay() {
        List<Stroke> reference = Passage.steady(0.5, 0.5, 3).asMarked();
        assertEquals(0, Delay.ofS(Bows.late(reference, 0.1), reference, 0.2));
        assertEquals(0, Delay.ofS(List.of(), reference, 0.2));
    }
}
