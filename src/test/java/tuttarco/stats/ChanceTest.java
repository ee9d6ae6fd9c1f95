package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

class ChanceTest {
    @Test
    void equalChancesMakeABinomial() {
        BinomialDistribution ten = new BinomialDistribution(null, 10, 0.3);
        for (int k = 0; k <= 11; k++) {
            assertEquals(
                    1 - ten.cumulativeProbability(k - 1), ChanceCount.atLeast(k, Collections.nCopies(10, 0.3)), 1e-12);
        }
    }

    /** Two things: neither with .9 x .5, both with .1 x .5. */
    @Test
    void differentChancesAreCounted() {
        assertEquals(0.55, ChanceCount.atLeast(1, List.of(0.1, 0.5)), 1e-12);
        assertEquals(0.05, ChanceCount.atLeast(2, List.of(0.1, 0.5)), 1e-12);
        assertEquals(1, ChanceCount.atLeast(0, List.of()), 1e-12);
        assertEquals(0, ChanceCount.atLeast(1, List.of()), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> ChanceCount.atLeast(1, List.of(1.5)));
    }

    /** Of n trials all: the greatest p alone. Of two trials one: Fisher's p1 p2 (1 - ln(p1 p2)). */
    @Test
    void severalOfSomeTrialsAreToldFromFewer() {
        assertEquals(0.2, SeveralOf.p(List.of(0.01, 0.2, 0.001), 3), 1e-9);
        double product = 0.03 * 0.2;
        assertEquals(product * (1 - Math.log(product)), SeveralOf.p(List.of(0.2, 0.03), 1), 1e-9);
        assertEquals(product * (1 - Math.log(product)), SeveralOf.p(List.of(0.2, 1e-30, 0.03), 2), 1e-9);
        assertEquals(1, SeveralOf.p(List.of(1.0, 1.0, 0.0), 2), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> SeveralOf.p(List.of(0.5), 2));
        assertThrows(IllegalArgumentException.class, () -> SeveralOf.p(List.of(0.5), 0));
    }
}
