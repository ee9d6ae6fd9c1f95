package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import tuttarco.chart.Words;
import tuttarco.compare.Evenness;
import tuttarco.stats.Quantiles;

/** How evenly the take sounded, in sentences. */
final class EvennessWords {
    private EvennessWords() {}

    /** With the caution last; none where the sound was too faint to tell anything. */
    static List<String> of(Evenness evenness) {
        List<String> sentences = new ArrayList<>();
        List<Double> spreads = evenness.bars().stream()
                .flatMap(bar -> bar.spreadLu().stream().boxed())
                .toList();
        if (!spreads.isEmpty()) {
            sentences.add("Within a bar the loudness spreads by " + decibels(Quantiles.median(spreads))
                    + " (standard deviation, median of " + Words.count(spreads.size(), "bar") + ").");
        }
        evenness.dipLu()
                .ifPresent(dip -> sentences.add("At bow changes the sound dips by " + decibels(dip) + " (median of "
                        + Words.count(evenness.changes(), "change") + ")" + amid(evenness) + "."));
        if (!sentences.isEmpty()) {
            sentences.add(Evenness.CAUTION);
        }
        return sentences;
    }

    private static String amid(Evenness evenness) {
        OptionalDouble amid = evenness.amidStrokesLu();
        return amid.isEmpty() ? "" : "; amid long strokes, measured alike, by " + decibels(amid.getAsDouble());
    }

    static String decibels(double value) {
        return String.format(Locale.ROOT, "%.1f dB", value);
    }
}
