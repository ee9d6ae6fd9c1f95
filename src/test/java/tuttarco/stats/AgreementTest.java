package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AgreementTest {
    /** What each observer said of each thing, a dot where nothing, turned into what was said of each thing. */
    private static List<List<Character>> things(String... observers) {
        return IntStream.range(0, observers[0].length())
                .mapToObj(i -> Stream.of(observers)
                        .map(o -> o.charAt(i))
                        .filter(c -> c != '.')
                        .toList())
                .toList();
    }

    /** Krippendorff 2011, Computing Krippendorff's Alpha-Reliability, example A. */
    @Test
    void alphaOfTwoObserversIsThePublishedOne() {
        assertEquals(0.095, Agreement.alpha(things("0100000010", "1110010000")).orElseThrow(), 0.0005);
    }

    /** The same, example C. */
    @Test
    void alphaWithMissingDataIsThePublishedOne() {
        double alpha = Agreement.alpha(things(
                        "123321412...",
                        "1233224125.3",
                        ".333234225 1.".replace(" ", ""),
                        "1233244125 1.".replace(" ", "")))
                .orElseThrow();
        assertEquals(0.743, alpha, 0.0005);
    }

    /** The much-reprinted example of 14 raters, 10 subjects and 5 categories; method Fleiss 1971. */
    @Test
    void kappaIsThePublishedOne() {
        int[][] counts = {
            {0, 0, 0, 0, 14}, {0, 2, 6, 4, 2}, {0, 0, 3, 5, 6}, {0, 3, 9, 2, 0}, {2, 2, 8, 1, 1},
            {7, 7, 0, 0, 0}, {3, 2, 6, 3, 0}, {2, 5, 3, 2, 2}, {6, 5, 2, 1, 0}, {0, 2, 2, 3, 7}
        };
        List<List<Integer>> things = new ArrayList<>();
        for (int[] row : counts) {
            things.add(IntStream.range(0, row.length)
                    .boxed()
                    .flatMap(c -> Collections.nCopies(row[c], c).stream())
                    .toList());
        }
        assertEquals(0.210, Agreement.kappa(things, 14).orElseThrow(), 0.0005);
    }

    /** Alpha by its formula for nominal data (the same paper, section B), written out. */
    @Test
    void alphaIsItsFormulaOnRandomChoices() {
        Random random = new Random(7);
        for (int run = 0; run < 50; run++) {
            List<List<Integer>> things = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                int usual = random.nextInt(2);
                things.add(random.ints(1 + random.nextInt(6), 0, 4)
                        .mapToObj(x -> x == 0 ? 1 - usual : usual)
                        .toList());
            }
            assertEquals(formula(things), Agreement.alpha(things).orElseThrow(), 1e-12);
        }
    }

    private static double formula(List<List<Integer>> things) {
        double[] totals = new double[2];
        double alike = 0;
        for (List<Integer> thing : things) {
            if (thing.size() > 1) {
                for (int c = 0; c < 2; c++) {
                    int of = Collections.frequency(thing, c);
                    totals[c] += of;
                    alike += of * (of - 1.0) / (thing.size() - 1);
                }
            }
        }
        double n = totals[0] + totals[1];
        double byChance = totals[0] * (totals[0] - 1) + totals[1] * (totals[1] - 1);
        return ((n - 1) * alike - byChance) / (n * (n - 1) - byChance);
    }

    @Test
    void whoIsMissingDoesNotCount() {
        List<List<Character>> known = things("dudu", "dudd", "duuu");
        List<List<Character>> more = new ArrayList<>(known);
        more.add(List.of('d'));
        more.add(List.of());
        assertEquals(Agreement.alpha(known), Agreement.alpha(more));
        more.add(List.of('d', 'd'));
        assertEquals(Agreement.kappa(known, 3), Agreement.kappa(more, 3));
    }

    @Test
    void perfectAgreementIsOneAndConstantOppositionLessThanChance() {
        assertEquals(1, Agreement.alpha(things("dudu", "dudu")).orElseThrow(), 1e-12);
        assertEquals(1, Agreement.kappa(things("dudu", "dudu"), 2).orElseThrow(), 1e-12);
        assertTrue(Agreement.alpha(things("dudu", "udud")).orElseThrow() < -0.5);
    }

    @Test
    void whereChanceSaysNothingNothingIsSaid() {
        assertEquals(Optional.empty(), Agreement.alpha(List.of()));
        assertEquals(Optional.empty(), Agreement.alpha(things("du..", "..du")));
        assertEquals(Optional.empty(), Agreement.alpha(things("ddd", "ddd")));
        assertEquals(Optional.empty(), Agreement.kappa(things("du..", "..du"), 2));
        assertThrows(IllegalArgumentException.class, () -> Agreement.kappa(things("du"), 1));
    }
}
