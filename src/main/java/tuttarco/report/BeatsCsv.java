package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BeatReading;

/**
 * {@code beats.csv}: one line a player and beat, players one after the other. {@code marked} is {@code down}, {@code up},
 * {@code rest} where the part rests or says nothing on the beat, or {@code none} where the take has no part. Where
 * no bars are known {@code bar} is empty and {@code beat} counts the leader's strokes.
 */
public final class BeatsCsv implements Output {
    @Override
    public String name() {
        return "beats.csv";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        String unmarked = take.part().isPresent() ? "rest" : "none";
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()));
                CSVPrinter csv = CsvText.printer(
                        out,
                        "player",
                        "bar",
                        "beat",
                        "time_s",
                        "marked",
                        "played",
                        "confidence",
                        "verdict",
                        "leader_verdict")) {
            for (List<BeatReading> player : take.comparison().beatReadings()) {
                for (BeatReading r : player) {
                    csv.printRecord(
                            CsvText.label(r.player().label()),
                            CsvText.label(r.beat().bar()),
                            r.beat().beat(),
                            CsvText.seconds(r.beat().timeS()),
                            r.marked().map(BowDirection::word).orElse(unmarked),
                            r.played().word(),
                            CsvText.share(r.confidence()),
                            r.verdict().word(),
                            r.leaderVerdict().word());
                }
            }
        }
    }
}
