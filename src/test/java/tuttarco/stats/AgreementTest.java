package tuttarco.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.dkpro.statistics.agreement.coding.CodingAnnotationStudy;
import org.dkpro.statistics.agreement.coding.KrippendorffAlphaAgreement;
import org.dkpro.statistics.agreement.distance.NominalDistanceFunction;
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

    /** The library dkpro-statistics-agreement on random choices among three, of which some are missing. */
    @Test
    void alphaIsWhatALibraryGives() {
        Random random = new Random(7);
        int people = 6;
        for (int run = 0; run < 50; run++) {
            CodingAnnotationStudy study = new CodingAnnotationStudy(people);
            List<List<Object>> things = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                int usual = random.nextInt(3);
                Object[] chosen = IntStream.range(0, people)
                        .mapToObj(
                                p -> random.nextInt(4) == 0 ? null : random.nextInt(3) == 0 ? random.nextInt(3) : usual)
                        .toArray();
                study.addItemAsArray(chosen);
                things.add(Stream.of(chosen).filter(Objects::nonNull).toList());
            }
            double expected = new KrippendorffAlphaAgreement(study, new NominalDistanceFunction()).calculateAgreement();
            assertEquals(expected, Agreement.alpha(things).orElseThrow(), 1e-12);
        }
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
