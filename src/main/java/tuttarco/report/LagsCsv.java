package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.beats.Beat;
import tuttarco.compare.Lag;

/**
 * {@code lags.csv}: one line a bow change that could be paired with one of the leader's, players one after the other. Bar and
 * beat are those nearest to the leader's change, {@code time_s} is when the leader changed, and {@code lag_ms} how much later
 * the player did. Where no bars are known {@code bar} is empty and {@code beat} counts the leader's strokes.
 */
public final class LagsCsv implements Output {
    @Override
    public String name() {
        return "lags.csv";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        List<Beat> beats = take.comparison().beats().beats();
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()));
                CSVPrinter csv = CsvText.printer(out, "player", "bar", "beat", "time_s", "lag_ms")) {
            for (Lag lag : take.comparison().lags()) {
                for (Lag.Pair pair : lag.pairs()) {
                    Beat beat = nearest(beats, pair.leaderS());
                    csv.printRecord(
                            CsvText.label(lag.player().label()),
                            CsvText.label(beat.bar()),
                            beat.beat(),
                            CsvText.seconds(pair.leaderS()),
                            Math.round(pair.lagMs()));
                }
            }
        }
    }

    private static Beat nearest(List<Beat> beats, double timeS) {
        return beats.stream()
                .min(Comparator.comparingDouble(b -> Math.abs(b.timeS() - timeS)))
                .orElseThrow();
    }
}
