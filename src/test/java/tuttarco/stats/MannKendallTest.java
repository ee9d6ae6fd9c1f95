package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MannKendallTest {
    /**
     * One-sided probabilities of S or more: R. O. Gilbert, Statistical Methods for Environmental Pollution Monitoring, 1987,
     * table A18, after Kendall 1970 (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "4, 6, 0.042",
        "4, 4, 0.167",
        "5, 10, 0.0083",
        "5, 8, 0.042",
        "5, 6, 0.117",
        "8, 16, 0.031",
        "8, 18, 0.016",
        "8, 20, 0.0071",
        "8, 22, 0.0028"
    })
    void tabledProbabilitiesAreReached(int n, int s, double oneSided) {
        MannKendall test = MannKendall.of(withSum(n, s));
        assertEquals(s, test.s());
        assertEquals(n, test.n());
        assertEquals(2 * oneSided, test.p(), 2 * (oneSided < 0.01 ? 0.00005 : 0.0005));
    }

    /** Values 1 to n with neighbours exchanged until the sum is low enough. */
    private static List<Double> withSum(int n, int s) {
        List<Double> values = new ArrayList<>(
                IntStream.rangeClosed(1, n).mapToObj(i -> (double) i).toList());
        int tooMuch = (n * (n - 1) / 2 - s) / 2;
        for (int last = n - 1; tooMuch > 0; last--) {
            for (int i = 0; i < last && tooMuch > 0; i++, tooMuch--) {
                Collections.swap(values, i, i + 1);
            }
        }
        return values;
    }

    /** All orders of the values, counted one by one. */
    @ParameterizedTest
    @ValueSource(strings = {"1 2 3", "1 1 2", "1 1 2 2 3", "5 5 5 1", "1 1 1 2 2 2 3", "0.5 0.9 0.9 1 1 1 1"})
    void equalValuesAreCountedToo(String row) {
        List<Double> values = Stream.of(row.split(" ")).map(Double::valueOf).toList();
        List<Integer> sums = new ArrayList<>();
        orders(new ArrayList<>(values), 0, sums);
        int s = MannKendall.of(values).s();
        double p = sums.stream().filter(o -> Math.abs(o) >= Math.abs(s)).count() / (double) sums.size();
        assertEquals(p, MannKendall.of(values).p(), 1e-12);
    }

    private static void orders(List<Double> values, int from, List<Integer> sums) {
        if (from == values.size()) {
            sums.add(MannKendall.of(values).s());
            return;
        }
        for (int i = from; i < values.size(); i++) {
            Collections.swap(values, from, i);
            orders(values, from + 1, sums);
            Collections.swap(values, from, i);
        }
    }

    @Test
    void aRowThatRisesAllTheWayIsTheLeastProbable() {
        for (int n = 2; n <= 20; n++) {
            List<Double> rising = IntStream.range(0, n).mapToObj(i -> -i * 0.1).toList();
            assertEquals(MannKendall.leastP(n), MannKendall.of(rising).p(), 1e-12 * MannKendall.leastP(n) + 1e-300);
        }
        assertEquals(2.0 / 120, MannKendall.leastP(5), 1e-15);
        assertEquals(1, MannKendall.leastP(1));
    }

    /** Variance 21 x 20 x 47 / 18, so z = (60 - 1) / 33.116 = 1.782; twice the normal tail beyond it is 0.0748. */
    @Test
    void aboveTwentyValuesTheSumIsTakenToBeNormal() {
        assertEquals(0.0748, MannKendall.of(withSum(21, 60)).p(), 0.0001);
        List<Double> rising = IntStream.range(0, 60).mapToObj(i -> (double) i).toList();
        assertTrue(MannKendall.of(rising).p() < 1e-10);
    }

    @Test
    void nothingButEqualValuesIsNoTrend() {
        assertEquals(new MannKendall(30, 0, 1), MannKendall.of(Collections.nCopies(30, 0.9)));
        assertEquals(new MannKendall(6, 0, 1), MannKendall.of(List.of(0.0, -0.0, 0.0, -0.0, 0.0, -0.0)));
        assertEquals(new MannKendall(0, 0, 1), MannKendall.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> MannKendall.of(List.of(1.0, Double.NaN)));
    }
}
