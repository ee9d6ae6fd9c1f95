package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.inference.PValueMethod;
import org.apache.commons.statistics.inference.WilcoxonSignedRankTest;
import org.junit.jupiter.api.Test;

class SignedRankTest {
    /** Hollander & Wolfe, depression scale (the data of R's help on wilcox.test): V = 40, one-sided p = 0.01953. */
    @Test
    void agreesWithThePublishedExample() {
        double[] before = {1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};
        double[] after = {0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
        SignedRank test = SignedRank.of(IntStream.range(0, before.length)
                .mapToObj(i -> before[i] - after[i])
                .toList());
        assertEquals(9, test.n());
        assertEquals(40, test.sum());
        assertEquals(2 * 0.01953, test.p(), 0.00001);
    }

    @Test
    void agreesWithCommonsStatisticsWithoutTies() {
        Random random = new Random(3);
        for (int n = 1; n <= 60; n++) {
            List<Double> values = normal(random, n, 0.3);
            assertEquals(
                    library(values, PValueMethod.EXACT), SignedRank.of(values).p(), 1e-9, "n = " + n);
        }
        for (int n = 61; n <= 2000; n += 97) {
            List<Double> values = normal(random, n, 0.05);
            assertEquals(
                    library(values, PValueMethod.ASYMPTOTIC),
                    SignedRank.of(values).p(),
                    1e-9,
                    "n = " + n);
        }
    }

    private static double library(List<Double> values, PValueMethod method) {
        return WilcoxonSignedRankTest.withDefaults()
                .with(method)
                .test(values.stream().mapToDouble(Double::doubleValue).toArray())
                .getPValue();
    }

    private static List<Double> normal(Random random, int n, double mean) {
        return Stream.generate(() -> mean + random.nextGaussian()).limit(n).toList();
    }

    /** With ties the distribution is that of all signs on the ranks that are shared: counted here one by one. */
    @Test
    void tiesAndZerosAreCountedAsTheyAre() {
        Random random = new Random(5);
        for (int run = 0; run < 40; run++) {
            List<Double> values =
                    random.ints(9, -3, 5).mapToObj(i -> (double) i).toList();
            assertEquals(allSigns(values), SignedRank.of(values).p(), 1e-12, values.toString());
        }
        assertEquals(
                2 / 32.0, SignedRank.of(List.of(5.0, 5.0, 5.0, 5.0, 5.0, 0.0)).p(), 1e-12);
    }

    private static double allSigns(List<Double> values) {
        List<Double> some = values.stream().filter(v -> v != 0).collect(Collectors.toList());
        double observed = Math.abs(signedSum(some, -1));
        long asFar = IntStream.range(0, 1 << some.size())
                .filter(signs -> Math.abs(signedSum(some, signs)) >= observed - 1e-9)
                .count();
        return (double) asFar / (1 << some.size());
    }

    /** Sum of the signed mid-ranks; the values' own signs where {@code signs} is -1. */
    private static double signedSum(List<Double> values, int signs) {
        double sum = 0;
        for (int i = 0; i < values.size(); i++) {
            double size = Math.abs(values.get(i));
            double smaller = values.stream().filter(v -> Math.abs(v) < size).count();
            double equal = values.stream().filter(v -> Math.abs(v) == size).count();
            boolean positive = signs == -1 ? values.get(i) > 0 : (signs >> i & 1) == 1;
            sum += (positive ? 1 : -1) * (smaller + (equal + 1) / 2);
        }
        return sum;
    }

    @Test
    void nothingButZerosFavoursNeitherSide() {
        assertEquals(1, SignedRank.of(List.of(0.0, 0.0)).p());
        assertEquals(1, SignedRank.of(List.of()).p());
        assertThrows(IllegalArgumentException.class, () -> SignedRank.of(List.of(Double.NaN)));
    }
}
