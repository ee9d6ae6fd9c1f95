package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.compare.Measure;
import tuttarco.compare.Scope;
import tuttarco.stats.Interval;

/**
 * {@code metrics.csv}: one line a figure, of the take, its bars, desks, groups and players. {@code value}, {@code low} and
 * {@code high} are in {@code unit} and empty where there is too little to go by; {@code time_s} is where a bar begins. What the
 * metrics mean stands in {@code results.json}.
 */
public final class MetricsCsv implements Output {
    @Override
    public String name() {
        return "metrics.csv";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()));
                CSVPrinter csv = CsvText.printer(
                        out, "metric", "scope", "name", "time_s", "count", "value", "low", "high", "unit")) {
            for (Measure measure : take.together().measures()) {
                csv.printRecord(
                        measure.metric().key(),
                        measure.scope().sort(),
                        CsvText.label(measure.scope().name()),
                        measure.scope() instanceof Scope.InBar bar ? CsvText.seconds(bar.startS()) : "",
                        measure.count(),
                        figure(measure.value()),
                        figure(measure.interval().map(Interval::low)),
                        figure(measure.interval().map(Interval::high)),
                        measure.metric().unit().word());
            }
        }
    }

    private static String figure(Optional<Double> value) {
        return value.map(CsvText::share).orElse("");
    }
}
