package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.beats.Beat;
import tuttarco.compare.Departure;
import tuttarco.compare.Divergence;
import tuttarco.compare.Spot;
import tuttarco.seats.Player;

/**
 * {@code divergences.csv}: one line a divergence in the order played; several players are joined by {@code "; "}. The times
 * are those at which the first and the last beat begin: they tell which playing of a bar it was. {@code back} is
 * the first beat on which all were back, empty where somebody was not seen back; {@code way_back} how those found back who
 * did.
 */
public final class DivergencesCsv implements Output {
    @Override
    public String name() {
        return "divergences.csv";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()));
                CSVPrinter csv = CsvText.printer(
                        out,
                        "first_bar",
                        "first_beat",
                        "last_bar",
                        "last_beat",
                        "players",
                        "against",
                        "confidence",
                        "first_time_s",
                        "last_time_s",
                        "standing",
                        "back_bar",
                        "back_beat",
                        "back_time_s",
                        "way_back")) {
            for (Divergence d : take.comparison().divergences()) {
                Spot spot = new Spot(d.against(), d.standing(), d.departures());
                Optional<Beat> back = spot.backIndex()
                        .map(i -> take.comparison().beats().beats().get(i));
                String ways = spot.waysBack().stream()
                        .map(Departure.Way::word)
                        .distinct()
                        .collect(Collectors.joining("; "));
                String players = d.players().stream().map(Player::label).collect(Collectors.joining("; "));
                csv.printRecord(
                        CsvText.label(d.first().bar()),
                        d.first().beat(),
                        CsvText.label(d.last().bar()),
                        d.last().beat(),
                        CsvText.label(players),
                        d.against().word(),
                        CsvText.share(d.confidence()),
                        CsvText.seconds(d.first().timeS()),
                        CsvText.seconds(d.last().timeS()),
                        d.standing().word(),
                        back.map(b -> CsvText.label(b.bar())).orElse(""),
                        back.map(b -> Integer.toString(b.beat())).orElse(""),
                        back.map(b -> CsvText.seconds(b.timeS())).orElse(""),
                        ways);
            }
        }
    }
}
