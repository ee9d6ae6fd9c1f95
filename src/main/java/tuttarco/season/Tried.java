package tuttarco.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tuttarco.compare.Metric;
import tuttarco.compare.Timing;
import tuttarco.season.Changed.Of;
import tuttarco.stats.PairedDifference;
import tuttarco.stats.SignedRank;

/**
 * A figure and what is known of it.
 *
 * @param differences of the pairs, second less first
 * @param smallest no smaller change is claimed, in the metric's unit
 */
record Tried(
        Metric metric,
        Of of,
        String name,
        List<Double> differences,
        double before,
        double after,
        double smallest,
        Optional<PairedDifference> paired) {
    /** Of fewer pairs the signed-rank test can't reach one in twenty. */
    static final int LEAST_PAIRS = Timing.LEAST_CHANGES;

    /** Empty where too few pairs differ to ask. */
    OptionalDouble p() {
        SignedRank test = SignedRank.of(differences);
        return test.n() < LEAST_PAIRS
                ? OptionalDouble.empty()
                : OptionalDouble.of(paired.map(PairedDifference::pValue).orElse(test.p()));
    }

    Tried byStudent() {
        return new Tried(
                metric,
                of,
                name,
                differences,
                before,
                after,
                smallest,
                Optional.of(differences)
                        .filter(d -> d.size() >= LEAST_PAIRS)
                        .map(d -> PairedDifference.of(new double[d.size()], array(d))));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    boolean oneSided() {
        double mean =
                differences.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return mean * (after - before) > 0 && Math.abs(after - before) >= smallest;
    }
}
