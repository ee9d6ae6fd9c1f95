package tuttarco.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.chart.Words;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.Evenness;
import tuttarco.stats.Quantiles;

/** How evenly the take sounded, in sentences. */
final class EvennessWords {
    private EvennessWords() {}

    /** Empty where the sound was too faint to tell anything. */
    static Optional<String> of(Evenness evenness) {
        List<Double> spreads = evenness.bars().stream()
                .map(BarEvenness::spreadLu)
                .flatMap(s -> s.stream().boxed())
                .toList();
        String within = spreads.isEmpty()
                ? ""
                : "Within a bar the loudness spreads by " + decibels(Quantiles.median(spreads)) + " (median). ";
        String dips = evenness.dipLu().isEmpty()
                ? ""
                : "At bow changes the sound dips by " + decibels(evenness.dipLu().getAsDouble()) + " (median of "
                        + Words.count(evenness.changes(), "change") + ")"
                        + (evenness.amidStrokesLu().isPresent()
                                ? ", amid long strokes by "
                                        + decibels(evenness.amidStrokesLu().getAsDouble())
                                : "")
                        + ". ";
        return (within + dips).isEmpty() ? Optional.empty() : Optional.of(within + dips + Evenness.CAUTION);
    }

    private static String decibels(double value) {
        return String.format(Locale.ROOT, "%.1f dB", value);
    }
}
