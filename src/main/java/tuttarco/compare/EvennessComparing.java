package tuttarco.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import tuttarco.stats.PairedDifference;

/**
 * Compares how evenly two takes of the same passage sounded, bar by bar. A bar that was played several times counts once, by its
 * mean; what one take has and the other hasn't doesn't count. Neighbouring bars are somewhat alike, so the certainty is a little
 * flattered. {@link Evenness#CAUTION} holds, and a microphone that was moved makes the takes incomparable.
 */
public final class EvennessComparing {
    /** With fewer bars nothing is said (chosen). */
    public static final int LEAST_BARS = 6;

    private EvennessComparing() {}

    /** How much more the loudness spreads within a bar of the second take, LU; empty with fewer than six bars in common. */
    public static Optional<PairedDifference> spread(List<BarEvenness> first, List<BarEvenness> second) {
        return compare(first, second, BarEvenness::spreadLu);
    }

    /** How much deeper the dips at bow changes of the second take are, LU; empty with fewer than six bars in common. */
    public static Optional<PairedDifference> dips(List<BarEvenness> first, List<BarEvenness> second) {
        return compare(first, second, BarEvenness::dipLu);
    }

    private static Optional<PairedDifference> compare(
            List<BarEvenness> first, List<BarEvenness> second, Function<BarEvenness, OptionalDouble> figure) {
        Map<String, Double> before = byBar(first, figure);
        Map<String, Double> after = byBar(second, figure);
        List<String> common = new ArrayList<>(before.keySet());
        common.retainAll(after.keySet());
        return common.size() < LEAST_BARS
                ? Optional.empty()
                : Optional.of(PairedDifference.of(
                        common.stream().mapToDouble(before::get).toArray(),
                        common.stream().mapToDouble(after::get).toArray()));
    }

    /** A figure by printed bar, in the order first played; bars without it are left out. */
    public static Map<String, Double> byBar(List<BarEvenness> bars, Function<BarEvenness, OptionalDouble> figure) {
        return bars.stream()
                .filter(b -> figure.apply(b).isPresent())
                .collect(Collectors.groupingBy(
                        BarEvenness::bar,
                        LinkedHashMap::new,
                        Collectors.averagingDouble(b -> figure.apply(b).getAsDouble())));
    }
}
