package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionIntervalTest {
    /** Newcombe 1998, Stat. Med. 17:857, table I, method 3 (score interval without continuity correction), 95 %. */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0, 0.1611", "1, 29, 0.0061, 0.1718"})
    void agreesWithThePublishedTable(int successes, int n, double low, double high) {
        Interval interval = ProportionInterval.wilson(successes, n, 0.95);
        assertEquals(low, interval.low(), 0.00005);
        assertEquals(high, interval.high(), 0.00005);
    }

    @Test
    void failuresMirrorSuccesses() {
        Interval some = ProportionInterval.wilson(3, 17, 0.9);
        Interval others = ProportionInterval.wilson(14, 17, 0.9);
        assertEquals(1 - some.high(), others.low(), 1e-12);
        assertEquals(1 - some.low(), others.high(), 1e-12);
    }

    @Test
    void staysWithinNoneAndAll() {
        for (int n = 1; n <= 60; n++) {
            assertTrue(ProportionInterval.wilson(0, n, 0.95).low() >= 0);
            assertTrue(ProportionInterval.wilson(n, n, 0.95).high() <= 1);
        }
    }

    @Test
    void refusesWhatIsNoProportion() {
        assertThrows(IllegalArgumentException.class, () -> ProportionInterval.wilson(0, 0, 0.95));
        assertThrows(IllegalArgumentException.class, () -> ProportionInterval.wilson(-1, 3, 0.95));
        assertThrows(IllegalArgumentException.class, () -> ProportionInterval.wilson(4, 3, 0.95));
        assertThrows(IllegalArgumentException.class, () -> ProportionInterval.wilson(1, 3, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> ProportionInterval.wilson(1, 3, 1));
    }
}
