package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class HolmTest {
    /** By hand from Holm 1979: 4 x 0.005, 3 x 0.01, 2 x 0.03, and 0.04 raised to the one before. */
    @Test
    void stepsDown() {
        List<Double> adjusted = Holm.adjusted(List.of(0.01, 0.04, 0.03, 0.005));
        assertEquals(0.03, adjusted.get(0), 1e-12);
        assertEquals(0.06, adjusted.get(1), 1e-12);
        assertEquals(0.06, adjusted.get(2), 1e-12);
        assertEquals(0.02, adjusted.get(3), 1e-12);
    }

    @Test
    void staysAProbability() {
        assertEquals(List.of(1.0, 1.0, 1.0), Holm.adjusted(List.of(0.5, 0.9, 0.6)));
        assertEquals(List.of(0.2), Holm.adjusted(List.of(0.2)));
        assertEquals(List.of(), Holm.adjusted(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Holm.adjusted(List.of(0.5, Double.NaN)));
    }
}
