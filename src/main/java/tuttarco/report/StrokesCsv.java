package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;

public final class StrokesCsv {
    private StrokesCsv() {}

    public static void write(List<Reading> readings, Writer to) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader("player", "start_s", "end_s", "direction", "confidence")
                .setRecordSeparator('\n')
                .get();
        CSVPrinter csv = new CSVPrinter(to, format);
        for (Reading reading : readings) {
            for (Stroke stroke : reading.strokes()) {
                csv.printRecord(
                        reading.player().label(),
                        String.format(Locale.ROOT, "%.4f", stroke.startS()),
                        String.format(Locale.ROOT, "%.4f", stroke.endS()),
                        stroke.kind().word(),
                        String.format(Locale.ROOT, "%.3f", stroke.confidence()));
            }
        }
        csv.flush();
    }
}
