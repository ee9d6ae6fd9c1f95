package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** One span of a truth file: {@code start_s,end_s,direction} and perhaps {@code player} and {@code sure}. */
record TruthSpan(double startS, double endS, StrokeKind kind, boolean sure) {
    static TruthSpan of(Stroke stroke) {
        return new TruthSpan(stroke.startS(), stroke.endS(), stroke.kind(), true);
    }

    /** Reads the spans of one player, or all where the file names none. */
    static List<TruthSpan> read(Path file, String player) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<TruthSpan> spans = new ArrayList<>();
        try (CSVParser rows = format.parse(Files.newBufferedReader(file))) {
            for (CSVRecord row : rows) {
                if (!row.isMapped("player") || row.get("player").equals(player)) {
                    spans.add(new TruthSpan(
                            Double.parseDouble(row.get("start_s")),
                            Double.parseDouble(row.get("end_s")),
                            kind(row.get("direction")),
                            !row.isMapped("sure") || row.get("sure").equals("yes")));
                }
            }
        }
        return spans;
    }

    private static StrokeKind kind(String word) {
        for (StrokeKind kind : StrokeKind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        // what truth files call a tremolo claims no direction either
        return StrokeKind.UNSURE;
    }

    boolean bowed() {
        return kind.direction().isPresent();
    }
}
