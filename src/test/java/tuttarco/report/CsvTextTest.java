package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables that spreadsheets and programs of any country read as they are meant. */
class CsvTextTest {
    private static final Set<String> WORDS = Set.of(
            "player",
            "bar",
            "first_bar",
            "last_bar",
            "back_bar",
            "players",
            "direction",
            "region",
            "marked",
            "played",
            "verdict",
            "leader_verdict",
            "against",
            "standing",
            "way_back",
            "metric",
            "scope",
            "name",
            "unit");

    @TempDir
    Path folder;

    /** What OWASP's page on CSV injection names (from memory), and blanks before it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                " =1",
                "\u00A0@x",
                "\u2003-1",
                "\uFF1D1+1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20x"
            })
    void whatBeginsLikeAFormulaIsText(String label) {
        assertTrue(CsvText.label(label).startsWith("'"), CsvText.label(label));
    }

    @Test
    void soIsWhatWouldBeginACellElsewhere() {
        assertEquals("Ann;' =1+1", CsvText.label("Ann; =1+1"));
        assertEquals("Ann\t'@x", CsvText.label("Ann\t@x"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Ann", "Desk 1 outside", "A=1", "Ann; Bo", "12a", "e-mail", "'quoted'", " blank"})
    void otherWordsStayAsTheyAre(String label) {
        assertEquals(label, CsvText.label(label));
    }

    static Stream<Output> tables() {
        return Stream.of(
                new StrokesCsv(), new BowsCsv(), new BeatsCsv(), new DivergencesCsv(), new LagsCsv(), new MetricsCsv());
    }

    /** RFC 4180 by a reader of other hands, where decimals have a comma and digits are others. */
    @ParameterizedTest
    @MethodSource("tables")
    void tablesAreReadBackWithAPointWhateverTheLocale(Output table) throws Exception {
        String label = "Ann \"the first\", Ōe;\u00A0=1";
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "fa-IR-u-nu-arabext")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertReadable(table, Fixtures.unified());
                String text = assertReadable(table, Fixtures.named(label));
                if (text.contains("Ann")) {
                    assertTrue(text.contains("Ann \"\"the first\"\", Ōe;'\u00A0=1"), text);
                }
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private String assertReadable(Output table, AnalysedTake take) throws Exception {
        table.write(take, folder);
        String text = Files.readString(folder.resolve(table.name()));
        List<CSVRecord> records = records(text);
        assertFalse(records.isEmpty());
        List<String> headings = records.get(0).toList();
        for (CSVRecord record : records.subList(1, records.size())) {
            assertEquals(headings.size(), record.size(), record.toString());
            for (int i = 0; i < record.size(); i++) {
                String cell = record.get(i);
                if (!WORDS.contains(headings.get(i)) && !cell.isEmpty()) {
                    // refuses what is no number with a point in digits of its own
                    assertEquals(cell.replaceAll("[^0-9.eE+-]", ""), cell, headings.get(i));
                    new BigDecimal(cell);
                }
            }
        }
        return text;
    }

    private static List<CSVRecord> records(String text) throws IOException {
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
            return parser.getRecords();
        }
    }
}
