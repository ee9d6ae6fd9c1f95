package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /**
     * Five angles of which the circular package pingouin documents z = n r^2 = 1.236 (documentation of circ_rayleigh).
     */
    @Test
    void givesRayleighsZ() {
        double order = PhaseOrder.of(List.of(0.785, 1.570, 3.141, 0.839, 5.934));
        assertEquals(1.236, 5 * order * order, 0.0005);
    }

    /**
     * Critical values of Rayleigh's test (Mardia 1972, as table A.10 of J. C. Davis, Statistics and Data Analysis in Geology):
     * how often chance brings phases as close together as that.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 0.690, 0.05",
        "6, 0.825, 0.01",
        "12, 0.437, 0.10",
        "12, 0.494, 0.05",
        "12, 0.602, 0.01",
        "20, 0.385, 0.05",
        "20, 0.472, 0.01"
    })
    void chanceReachesTheTablesCriticalValuesAsOftenAsTheTableSays(int n, double critical, double level) {
        int runs = 40_000;
        Random random = new Random(n);
        int reached = 0;
        for (int run = 0; run < runs; run++) {
            List<Double> phasesRad = random.doubles(n, 0, 2 * Math.PI).boxed().toList();
            reached += PhaseOrder.of(phasesRad) >= critical ? 1 : 0;
        }
        double deviation = Math.sqrt(level * (1 - level) / runs);
        // the table is rounded to three places, which moves the level by about a hundredth of itself
        assertEquals(level, (double) reached / runs, 3 * deviation + 0.02 * level);
    }
}
