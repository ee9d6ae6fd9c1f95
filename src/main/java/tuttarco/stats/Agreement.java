package tuttarco.stats;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.dkpro.statistics.agreement.coding.CodingAnnotationStudy;
import org.dkpro.statistics.agreement.coding.FleissKappaAgreement;

/**
 * How far several people chose alike beyond what chance would do: 1 where they always did, 0 where no more than chance,
 * below 0 where less.
 */
public final class Agreement {
    private Agreement() {}

    /**
     * Krippendorff's alpha for choices without an order (K. Krippendorff, Computing Krippendorff's Alpha-Reliability, 2011).
     * Who is not known to have chosen is simply missing; a thing on which fewer than two chose says nothing.
     *
     * @param choices one list a thing: what was chosen by those who are known to have chosen, in any order
     * @return nothing where all chose one and the same all the time, or no two chose on one thing: chance says nothing there
     */
    public static <T> Optional<Double> alpha(List<List<T>> choices) {
        List<List<T>> paired = choices.stream().filter(c -> c.size() > 1).toList();
        if (lessThanTwoSorts(paired)) {
            return Optional.empty();
        }
        Map<T, Long> all = new HashMap<>();
        double apart = 0;
        for (List<T> thing : paired) {
            Map<T, Long> here = new HashMap<>();
            thing.forEach(choice -> here.merge(choice, 1L, Long::sum));
            here.forEach((choice, count) -> all.merge(choice, count, Long::sum));
            apart += differing(here.values()) / (thing.size() - 1);
        }
        long chosen = all.values().stream().mapToLong(Long::longValue).sum();
        return Optional.of(1 - (chosen - 1) * apart / differing(all.values()));
    }

    /** How many ordered pairs chose differently, by how many chose each. */
    private static double differing(Collection<Long> counts) {
        double sum = 0;
        double squares = 0;
        for (long count : counts) {
            sum += count;
            squares += (double) count * count;
        }
        return sum * sum - squares;
    }

    /**
     * Fleiss' kappa (J. L. Fleiss 1971, Psychol. Bull. 76:378). Knows nothing of missing choices: things on which fewer chose
     * than on others are left out.
     *
     * @param choices as for {@link #alpha}
     * @param people how many might have chosen, at least 2
     * @return nothing where all chose one and the same all the time, or nothing was chosen on by all
     */
    public static <T> Optional<Double> kappa(List<List<T>> choices, int people) {
        if (people < 2) {
            throw new IllegalArgumentException("agreement takes at least two, not " + people);
        }
        List<List<T>> whole = choices.stream().filter(c -> c.size() == people).toList();
        return lessThanTwoSorts(whole)
                ? Optional.empty()
                : Optional.of(new FleissKappaAgreement(study(whole, people)).calculateAgreement());
    }

    private static <T> boolean lessThanTwoSorts(List<List<T>> choices) {
        return choices.stream().flatMap(List::stream).distinct().limit(2).count() < 2;
    }

    /** The library wants as many entries a thing as there are people, null for what is missing. */
    private static <T> CodingAnnotationStudy study(List<List<T>> choices, int people) {
        CodingAnnotationStudy study = new CodingAnnotationStudy(people);
        for (List<T> chosen : choices) {
            Object[] entries = Collections.nCopies(people, null).toArray();
            for (int i = 0; i < chosen.size(); i++) {
                entries[i] = chosen.get(i);
            }
            study.addItemAsArray(entries);
        }
        return study;
    }
}
