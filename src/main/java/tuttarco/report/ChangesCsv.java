package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.season.Changed;
import tuttarco.season.TakeAgainstTake;

/**
 * {@code compare.csv}: one line a figure of two takes. {@code from} and {@code to} are the takes' numbers in the order given;
 * {@code scope} is section, player or bar and {@code name} which of them; {@code first} and {@code second} are in
 * {@code unit}, of what both takes have; {@code p} is empty where too few pairs differ; {@code claim} is better, worse,
 * otherwise, none or too-few.
 */
final class ChangesCsv {
    private ChangesCsv() {}

    static void write(ComparedTakes takes, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve("compare.csv"));
                CSVPrinter csv = CsvText.printer(
                        out, "from", "to", "metric", "scope", "name", "pairs", "first", "second", "unit", "p",
                        "claim")) {
            for (TakeAgainstTake pair : takes.pairs()) {
                int[] numbers = takes.numbers(pair);
                for (Changed change : pair.changes()) {
                    csv.printRecord(
                            numbers[0],
                            numbers[1],
                            change.metric().key(),
                            change.of().word(),
                            CsvText.label(change.name()),
                            change.pairs(),
                            CsvText.share(change.first()),
                            CsvText.share(change.second()),
                            change.metric().unit().word(),
                            change.p().isPresent()
                                    ? CsvText.probability(change.p().getAsDouble())
                                    : "",
                            change.claim().word());
                }
            }
        }
    }
}
