package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantilesTest {
    /** By the definition of type 7 in Hyndman & Fan 1996: position 1 + (n - 1) p among the ordered values. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.1, 1.9", "0.25, 3.25", "0.5, 5.5", "0.75, 7.75", "0.9, 9.1", "1, 10"})
    void interpolatesAsTypeSeven(double share, double expected) {
        List<Double> oneToTen = List.of(7.0, 1.0, 10.0, 3.0, 5.0, 9.0, 2.0, 8.0, 4.0, 6.0);
        assertEquals(expected, Quantiles.quantile(oneToTen, share), 1e-12);
    }

    @Test
    void medianIsTheMiddle() {
        assertEquals(4, Quantiles.median(List.of(4.0)));
        assertEquals(4, Quantiles.median(List.of(100.0, 4.0, -3.0)));
        assertEquals(0.5, Quantiles.median(List.of(1.0, 0.0)));
    }

    @Test
    void refusesNothingAndNonsense() {
        assertThrows(IllegalArgumentException.class, () -> Quantiles.median(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Quantiles.median(List.of(1.0, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> Quantiles.quantile(List.of(1.0), Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Quantiles.quantile(List.of(1.0), 1.01));
    }

    /** Type 7: of 1 to 5 the quarters are 2 and 4; of 1, 2, 4, 8 they are 1.75 and 5. */
    @Test
    void middleHalfLiesBetweenTheQuarters() {
        assertEquals(2, Quantiles.middleHalf(List.of(5.0, 1.0, 4.0, 2.0, 3.0)), 1e-12);
        assertEquals(3.25, Quantiles.middleHalf(List.of(1.0, 2.0, 4.0, 8.0)), 1e-12);
    }
}
