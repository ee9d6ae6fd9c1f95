package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Edge;

/**
 * {@code bows.csv}: one line a down-bow or up-bow, players one after the other: how sure its times are, how much bow it
 * took and where. What is not known is left empty; a region that is not known is {@code unknown}.
 */
public final class BowsCsv implements Output {
    @Override
    public String name() {
        return "bows.csv";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        write(take.bows(), folder);
    }

    /** Writes bows alone into an existing folder. */
    public void write(List<Bows> bows, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()));
                CSVPrinter csv = CsvText.printer(
                        out,
                        "player",
                        "start_s",
                        "start_se_s",
                        "end_s",
                        "end_se_s",
                        "direction",
                        "length_shoulder_widths",
                        "length_share",
                        "region",
                        "region_confidence")) {
            for (Bows player : bows) {
                for (Bow bow : player.bows()) {
                    if (bow.stroke().kind().direction().isPresent()) {
                        write(CsvText.label(player.player().label()), bow, csv);
                    }
                }
            }
        }
    }

    private static void write(String label, Bow bow, CSVPrinter csv) throws IOException {
        Optional<BowUse.Measured> length = as(BowUse.Measured.class, bow.use());
        Optional<BowUse.Placed> place = as(BowUse.Placed.class, bow.use());
        csv.printRecord(
                label,
                CsvText.seconds(bow.stroke().startS()),
                error(bow.start()),
                CsvText.seconds(bow.stroke().endS()),
                error(bow.end()),
                bow.stroke().kind().word(),
                length.map(l -> CsvText.share(l.lengthShoulderWidths())).orElse(""),
                length.map(l -> CsvText.share(l.lengthShare())).orElse(""),
                place.map(p -> p.part().word()).orElse("unknown"),
                place.map(p -> CsvText.share(p.confidence())).orElse(""));
    }

    private static <T> Optional<T> as(Class<T> type, BowUse use) {
        return Optional.of(use).filter(type::isInstance).map(type::cast);
    }

    private static String error(Edge edge) {
        return edge instanceof Edge.Change change ? CsvText.seconds(change.standardErrorS()) : "";
    }
}
