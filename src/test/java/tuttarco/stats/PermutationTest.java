package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PermutationTest {
    /** Of 70 ways to choose 4 of 8 only the one observed and its mirror are so far apart. */
    @Test
    void isTheShareOfDrawsAsFarApart() {
        assertEquals(2 / 70.0, Permutation.p(List.of(1.0, 2.0, 3.0, 4.0), List.of(5.0, 6.0, 7.0, 8.0)), 0.005);
        assertEquals(1, Permutation.p(List.of(1.0, 1.0), List.of(1.0)), 0);
    }

    @Test
    void chanceIsSeldomTakenForADifference() {
        Random random = new Random(6);
        long called = Stream.generate(() -> Permutation.p(normal(random), normal(random)))
                .limit(400)
                .filter(p -> p <= 0.05)
                .count();
        assertTrue(called >= 8 && called <= 32, "5 % of 400 is 20 with a deviation of 4.4, not " + called);
    }

    private static List<Double> normal(Random random) {
        return Stream.generate(random::nextGaussian).limit(6).toList();
    }

    @Test
    void refusesAnEmptyGroup() {
        assertThrows(IllegalArgumentException.class, () -> Permutation.p(List.of(), List.of(1.0)));
    }
}
