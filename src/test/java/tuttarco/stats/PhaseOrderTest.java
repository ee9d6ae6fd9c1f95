package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PhaseOrderTest {
    @Test
    void isKnownInClosedForm() {
        assertEquals(1, PhaseOrder.of(List.of(2.0, 2.0 + 2 * Math.PI, 2.0)), 1e-12);
        assertEquals(0, PhaseOrder.of(List.of(0.3, 0.3 + Math.PI)), 1e-12);
        assertEquals(Math.cos(0.2), PhaseOrder.of(List.of(-0.2, 0.2)), 1e-12);
        assertEquals(0.5, PhaseOrder.of(List.of(0.0, 0.0, 0.0, Math.PI)), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> PhaseOrder.of(List.of()));
    }

    /** Rayleigh: the mean square of the resultant of {@code n} random unit vectors is {@code 1 / n}, the mean sqrt(pi / 4n). */
    @Test
    void byChanceIsWhatRayleighFound() {
        Random random = new Random(4);
        int n = 12;
        double mean = random.doubles(4000)
                .map(unused ->
                        PhaseOrder.of(random.doubles(n, 0, 2 * Math.PI).boxed().toList()))
                .average()
                .orElseThrow();
        assertEquals(Math.sqrt(Math.PI / (4 * n)), mean, 0.01);
    }
}
