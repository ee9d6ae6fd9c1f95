package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.files.Sha256;
import tuttarco.report.ResultsJson;
import tuttarco.strokes.StrokeKind;

/**
 * Corrections from one analysis to the next. Both players of the tiny take bow down and up in turn, half a second each, and are
 * read so.
 */
class CorrectedTakeTest {
    @TempDir
    static Path given;

    @TempDir
    Path around;

    private static Path cache;

    private Path folder;
    private Path take;
    private int runs;

    @BeforeAll
    static void writeClip() throws Exception {
        TinyTake.writeClip(given.resolve("clip.mkv"), 90, 30);
        cache = given.resolve("cache");
    }

    @BeforeEach
    void layOut() throws IOException {
        folder = Files.createDirectory(around.resolve("take"));
        Files.copy(given.resolve("clip.mkv"), folder.resolve("clip.mkv"));
        take = TinyTake.writeTexts(folder);
    }

    private Path analysed() {
        Path out = around.resolve("out" + runs++);
        Shell shell = Shell.run("analyse", take, "--show-names", "--cache", cache, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        return out;
    }

    private LogEntry.Done correct(Correction correction) throws Exception {
        LogEntry.Done done = new LogEntry.Done(
                UUID.randomUUID(),
                Instant.parse("2026-11-26T07:00:00Z"),
                correction,
                correction instanceof Correction.StrokeSet ? Map.of(StrokeKind.DOWN, 0.5) : Map.of());
        CorrectionLog.append(take, done);
        return done;
    }

    private static List<String> lines(Path csv, String player) throws IOException {
        return Files.readAllLines(csv).stream()
                .filter(l -> l.startsWith(player))
                .toList();
    }

    /** What a player did and how it stood to the marking, beat by beat. */
    private static List<String> beats(Path out, String player) throws IOException {
        return lines(out.resolve("beats.csv"), player).stream()
                .map(line -> line.split(",", -1))
                .map(cells -> cells[5] + " " + cells[7])
                .toList();
    }

    /** The results, which are as their schema says. */
    private static JsonNode results(Path out) throws IOException {
        JsonNode results =
                new ObjectMapper().readTree(out.resolve("results.json").toFile());
        try (InputStream schema = ResultsJson.class.getResourceAsStream("results.schema.json")) {
            assertEquals(
                    Set.of(),
                    JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                            .getSchema(schema)
                            .validate(results));
        }
        return results;
    }

    private static Stream<JsonNode> all(JsonNode list) {
        return Stream.iterate(0, i -> i < list.size(), i -> i + 1).map(list::get);
    }

    @Test
    void threeCorrectionsSurviveAnotherAnalysisAndOneIsTakenBack() throws Exception {
        Path before = analysed();
        assertEquals(
                List.of("down with", "up with", "down with", "up with", "down with", "up with"), beats(before, "Jon"));
        assertFalse(results(before).get("sha256").has("corrections"));
        assertEquals(0, results(before).get("corrections").size());

        correct(new Correction.StrokeSet("Jon", 0.5, 1, StrokeKind.DOWN));
        correct(new Correction.Absent("Jon", 1.5, 2));
        LogEntry.Done last = correct(new Correction.StrokeSet("Jon", 2.5, 3, StrokeKind.DOWN));
        List<String> corrected =
                List.of("down with", "down against", "down with", "absent rest", "down with", "down against");
        Path after = analysed();
        assertEquals(corrected, beats(after, "Jon"));
        Path again = analysed();
        assertEquals(corrected, beats(again, "Jon"));
        assertEquals(Files.readString(after.resolve("strokes.csv")), Files.readString(again.resolve("strokes.csv")));
        for (String file : List.of("strokes.csv", "beats.csv", "bows.csv")) {
            assertEquals(lines(before.resolve(file), "Ida"), lines(after.resolve(file), "Ida"), "Ida's stay");
            assertEquals(
                    Files.readAllLines(before.resolve(file)).get(0),
                    Files.readAllLines(after.resolve(file)).get(0),
                    "columns are a contract");
        }

        JsonNode results = results(after);
        assertEquals(
                Sha256.of(CorrectionLog.beside(take)),
                results.get("sha256").get("corrections").textValue());
        assertEquals(3, results.get("corrections").size());
        assertEquals(
                last.id().toString(),
                results.get("corrections").get(2).get("id").textValue());
        assertEquals(
                0.5, results.get("corrections").get(2).get("was_s").get("down").doubleValue());
        assertEquals(
                List.of("Jon"),
                all(results.get("beats"))
                        .filter(b -> b.has("by_hand"))
                        .map(b -> b.get("player").textValue())
                        .distinct()
                        .toList());
        assertTrue(all(results.get("notes")).anyMatch(n -> n.textValue().equals("3 readings were corrected by hand.")));
        String page = Files.readString(after.resolve("report.html"));
        assertTrue(page.contains("3 readings were corrected by hand."), "in the report");
        assertTrue(page.contains("down, against, by hand"), "in the section's table");
        assertTrue(page.contains("absent, by hand"), "in the section's table");
        assertTrue(page.contains("set by hand"), "among how sure the readings are");
        assertFalse(Files.readString(before.resolve("report.html")).contains("by hand"));

        CorrectionLog.append(take, new LogEntry.Undone(UUID.randomUUID(), Instant.now(), last.id()));
        Path undone = analysed();
        assertEquals(
                List.of("down with", "down against", "down with", "absent rest", "down with", "up with"),
                beats(undone, "Jon"));
        assertEquals(2, results(undone).get("corrections").size());
    }

    @Test
    void takesComparedAreTheCorrectedOnes() throws Exception {
        Files.writeString(take, TinyTake.JSON);
        Path first = folder.resolve("first.take.json");
        Files.writeString(first, TinyTake.JSON.replace("Three seconds", "First"));
        correct(new Correction.StrokeSet("Jon", 0.5, 1, StrokeKind.DOWN));
        correct(new Correction.StrokeSet("Jon", 1.5, 2, StrokeKind.DOWN));
        Path out = around.resolve("compared");
        Shell shell = Shell.run("compare", first, take, "--cache", cache, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.err().contains("2 readings were corrected by hand."), shell.err());
        assertFalse(CorrectionLog.of(first).sha256().isPresent(), "the other take has a log of its own");
    }

    @Test
    void aMovedBeatCountsWhereverTheBeatsAreAsked() throws Exception {
        correct(new Correction.BeatMoved("2", 2, 2, 2.25));
        correct(new Correction.ChangeMoved("Ida", 1, 1.2));
        Path out = analysed();
        assertEquals(2, results(out).get("corrections").size());
        assertTrue(Files.readString(out.resolve("results.json")).contains("\"start_by_hand\" : true"));
        List<String> times = lines(out.resolve("beats.csv"), "Jon").stream()
                .map(line -> line.split(",", -1)[3])
                .toList();
        assertEquals(List.of("0.0000", "0.5000", "1.0000", "1.5000", "2.2500", "2.5000"), times);
        Shell shell = Shell.run("beats", take, "--out", around.resolve("beats.csv"));
        assertEquals(0, shell.code(), shell.err());
        List<String> beats = Files.readAllLines(around.resolve("beats.csv"));
        assertEquals("2,2,2.25,0.025,by hand", beats.get(5));
        assertEquals("2,1,1.5,0.025,list", beats.get(4));
    }

    @Test
    void whatFindsNoPlaceIsToldAndStaysInTheLog() throws Exception {
        Path before = analysed();
        correct(new Correction.StrokeSet("Nobody", 0.5, 1, StrokeKind.DOWN));
        correct(new Correction.StrokeSet("Jon", 60, 61, StrokeKind.DOWN));
        Files.writeString(CorrectionLog.beside(take), "torn", StandardOpenOption.APPEND);
        String log = Files.readString(CorrectionLog.beside(take));
        Path out = around.resolve("stray");
        Shell shell = Shell.run("analyse", take, "--show-names", "--cache", cache, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.err().contains("the take has no such player"), shell.err());
        assertTrue(shell.err().contains("outside what could be read"), shell.err());
        assertTrue(shell.err().contains("line 3 was cut off"), shell.err());
        assertEquals(log, Files.readString(CorrectionLog.beside(take)));
        assertEquals(Files.readString(before.resolve("beats.csv")), Files.readString(out.resolve("beats.csv")));
        assertNotEquals(
                Files.readString(before.resolve("results.json")), Files.readString(out.resolve("results.json")));
    }

    @Test
    void aLogThatIsNoneIsOneSentence() throws Exception {
        Files.createDirectory(CorrectionLog.beside(take));
        Shell shell = Shell.run("analyse", take, "--cache", cache, "--out", around.resolve("none"));
        assertEquals(3, shell.code());
        assertEquals(1, shell.errLines().size(), shell.err());
        assertFalse(Files.exists(around.resolve("none")));
    }
}
