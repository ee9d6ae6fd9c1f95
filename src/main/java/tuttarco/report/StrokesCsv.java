package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;

/**
 * {@code strokes.csv}: one line a stroke, players one after the other. Each stroke ends where the next begins, to the
 * last printed digit.
 */
public final class StrokesCsv implements Output {
    @Override
    public String name() {
        return "strokes.csv";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()))) {
            write(take.readings(), out);
        }
    }

    /** Writes readings alone; leaves the writer open. */
    public static void write(List<Reading> readings, Writer out) throws IOException {
        CSVPrinter csv = CsvText.printer(out, "player", "start_s", "end_s", "direction", "confidence");
        for (Reading reading : readings) {
            writePlayer(reading, csv);
        }
        csv.flush();
    }

    private static void writePlayer(Reading reading, CSVPrinter csv) throws IOException {
        List<Stroke> strokes = reading.strokes();
        String label = CsvText.label(reading.player().label());
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            boolean last = i + 1 == strokes.size();
            String start = CsvText.seconds(stroke.startS());
            String end =
                    CsvText.seconds(last ? stroke.endS() : strokes.get(i + 1).startS());
            if (!start.equals(end)) {
                csv.printRecord(label, start, end, stroke.kind().word(), CsvText.share(stroke.confidence()));
            }
        }
    }
}
