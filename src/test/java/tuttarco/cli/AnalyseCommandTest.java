package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.report.ResultsJson;
import tuttarco.season.PlayerOnRecord;
import tuttarco.season.SeasonLog;
import tuttarco.season.TakeOnRecord;

/** The two command lines scripts rely on, and the files and columns they promise. */
class AnalyseCommandTest {
    private static final Set<String> PROMISED = Set.of(
            "report.html",
            "charts",
            "sheets",
            "strokes.csv",
            "bows.csv",
            "beats.csv",
            "captions.vtt",
            "chapters.vtt",
            "divergences.csv",
            "lags.csv",
            "metrics.csv",
            "results.json");
    private static final String STROKES = "player,start_s,end_s,direction,confidence";

    @TempDir
    static Path given;

    @TempDir
    Path folder;

    private static Path take;

    @BeforeAll
    static void writeTake() throws Exception {
        take = TinyTake.write(given);
    }

    private static Set<String> names(Path dir) throws IOException {
        try (Stream<Path> list = Files.list(dir)) {
            return list.map(p -> p.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static void assertResultsAsTheSchemaSays(Path out) throws IOException {
        try (InputStream schema = ResultsJson.class.getResourceAsStream("results.schema.json")) {
            assertEquals(
                    Set.of(),
                    JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                            .getSchema(schema)
                            .validate(new ObjectMapper()
                                    .readTree(out.resolve("results.json").toFile())));
        }
    }

    private static void assertLine(String player, String direction, String line) {
        assertTrue(line.startsWith(player) && line.contains(direction), line);
    }

    private static String header(Path csv) throws IOException {
        return Files.readAllLines(csv).get(0);
    }

    @Test
    void everyPromisedFileIsWrittenAndTheUserIsToldWhere() throws IOException {
        Path out = folder.resolve("new/out");
        Shell shell = Shell.run("analyse", take, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertEquals(PROMISED, names(out));
        assertResultsAsTheSchemaSays(out);
        assertEquals(Set.of("out"), names(out.getParent()));
        assertFalse(names(out.resolve("charts")).isEmpty());
        assertEquals(STROKES, header(out.resolve("strokes.csv")));
        assertEquals(
                "player,bar,beat,time_s,marked,played,confidence,verdict,leader_verdict",
                header(out.resolve("beats.csv")));
        assertEquals(
                "first_bar,first_beat,last_bar,last_beat,players,against,confidence,first_time_s,last_time_s,"
                        + "standing,back_bar,back_beat,back_time_s,way_back",
                header(out.resolve("divergences.csv")));
        assertEquals(1 + 2 * 6, Files.readAllLines(out.resolve("beats.csv")).size(), "two players of six beats");
        assertTrue(shell.out().contains(out.resolve("report.html").toString()), shell.out());
    }

    /** The clip is not followed again, and still the report is another. */
    @Test
    void otherBeatsAreComparedWithTheArmsAsFollowedBefore() throws Exception {
        Path cache = folder.resolve("cache");
        Shell first = Shell.run("analyse", take, "--cache", cache, "--out", folder.resolve("first"));
        assertEquals(0, first.code(), first.err());
        assertFalse(first.err().contains("earlier run"), first.err());

        Files.writeString(
                given.resolve("quick.csv"), "bar,beat,time_s\n1,1,0\n1,2,0.4\n1,3,0.8\n2,1,1.2\n2,2,1.6\n2,3,2\n");
        Path other = Files.writeString(
                given.resolve("other.take.json"),
                TinyTake.JSON.replace("beats.csv", "quick.csv").replace("unified", "free"));
        Shell second = Shell.run("analyse", other, "--cache", cache, "--out", folder.resolve("second"));
        assertEquals(0, second.code(), second.err());
        assertTrue(second.err().contains("The arms were followed in an earlier run."), second.err());
        assertResultsAsTheSchemaSays(folder.resolve("second"));
        assertEquals(
                Files.readString(folder.resolve("first/strokes.csv")),
                Files.readString(folder.resolve("second/strokes.csv")));
        assertNotEquals(
                Files.readString(folder.resolve("first/beats.csv")),
                Files.readString(folder.resolve("second/beats.csv")));
    }

    /** Both bow down and up in turn; today's pencil marks want the second bar the other way. */
    @Test
    void bowTextOverThePartDecidesWhatWasAgreed() throws IOException {
        Path out = folder.resolve("out");
        Files.writeString(given.resolve("today.bowing.txt"), "2: d u d\n");
        String over = TinyTake.JSON.replace(
                "\"part.bowing.txt\"", "{\"file\": \"part.bowing.txt\", \"over\": \"today.bowing.txt\"}");
        Path other = Files.writeString(given.resolve("over.take.json"), over);
        Shell shell = Shell.run("analyse", other, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        List<String> beats = Files.readAllLines(out.resolve("beats.csv")).stream()
                .filter(line -> line.startsWith("Desk 1 inside"))
                .map(line -> line.split(",", -1))
                .map(cells -> cells[1] + " " + cells[2] + " " + cells[4] + " " + cells[7])
                .toList();
        assertEquals(
                List.of(
                        "1 1 down with",
                        "1 2 up with",
                        "1 3 down with",
                        "2 1 down against",
                        "2 2 up against",
                        "2 3 down against"),
                beats);
        assertTrue(Files.readString(out.resolve("results.json")).contains("\"over\" : "));

        Files.writeString(given.resolve("today.bowing.txt"), "3: d u d\n");
        Shell refused = Shell.run("analyse", other, "--out", folder.resolve("none"));
        assertEquals(3, refused.code());
        assertEquals(1, refused.errLines().size(), refused.err());
        assertTrue(
                refused.err().contains("today.bowing.txt: line 1, column 1: bar 3 is not in the part"), refused.err());
    }

    @Test
    void aTakeIsAddedToItsSeason() throws Exception {
        Path season = folder.resolve("season");
        Path dated = Files.writeString(
                given.resolve("dated.take.json"),
                TinyTake.JSON.replace("\"bowing\"", "\"day\": \"2026-11-25\", \"bowing\""));
        for (int i = 0; i < 2; i++) {
            Shell shell = Shell.run("analyse", dated, "--out", folder.resolve("out"), "--season", season);
            assertEquals(0, shell.code(), shell.err());
        }
        assertEquals(2, Files.readAllLines(season.resolve("season.jsonl")).size());
        List<TakeOnRecord> takes = SeasonLog.read(season).takes();
        assertEquals(1, takes.size());
        TakeOnRecord take = takes.get(0);
        assertEquals(Optional.of(LocalDate.of(2026, 11, 25)), take.day());
        assertEquals(
                List.of("Ida", "Jon"),
                take.players().stream().map(PlayerOnRecord::label).toList());
        assertEquals(6, take.beats().size());

        Path file = Files.writeString(folder.resolve("file"), "mine");
        Shell refused = Shell.run("analyse", dated, "--out", folder.resolve("none"), "--season", file);
        assertEquals(5, refused.code(), refused.err());
        assertFalse(Files.exists(folder.resolve("none")), "told before anything is read");
    }

    @Test
    void withoutACacheNothingIsKept() throws IOException {
        assertEquals(
                0,
                Shell.run("analyse", take, "--no-cache", "--out", folder.resolve("out"))
                        .code());
        Shell second = Shell.run("analyse", take, "--no-cache", "--out", folder.resolve("out"));
        assertFalse(second.err().contains("earlier run"), second.err());
        assertEquals(Set.of("out"), names(folder));
    }

    @Test
    void quietSaysNothing() {
        assertEquals(new Shell(0, "", ""), Shell.run("analyse", take, "--quiet", "--out", folder.resolve("out")));
    }

    @Test
    void aSecondRunReplacesItsFilesAndLeavesOthersAlone() throws IOException {
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(out.resolve("beats.csv"), "old");
        Files.writeString(out.resolve("notes.txt"), "mine");
        assertEquals(0, Shell.run("analyse", take, "--out", out).code());
        assertTrue(header(out.resolve("beats.csv")).startsWith("player,"));
        assertEquals("mine", Files.readString(out.resolve("notes.txt")));
        Set<String> all = new TreeSet<>(PROMISED);
        all.add("notes.txt");
        assertEquals(all, names(out));
    }

    /** The second player leaves: the chart goes, what somebody wrote or changed there stays. */
    @Test
    void whatAnEarlierRunLeftIsTakenAway() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(0, Shell.run("analyse", take, "--out", out).code());
        Path charts = out.resolve("charts");
        assertTrue(names(charts).containsAll(Set.of("bow-01.svg", "bow-02.png", "bow-02.svg")), "two players");
        Files.writeString(charts.resolve("bow-02.svg"), "annotated");
        Files.writeString(charts.resolve("bow-03.svg"), "mine");
        Path alone = Files.writeString(
                given.resolve("alone.take.json"),
                TinyTake.JSON.replaceFirst("(?s),\\s*\\{\"label\": \"Jon\".*?}.*?}", ""));
        Shell shell = Shell.run("analyse", alone, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertTrue(
                shell.err()
                        .contains("2 files lie there from before and may name players or show faces: "
                                + "charts/bow-02.svg and charts/bow-03.svg. "),
                shell.err());
        assertEquals(PROMISED, names(out));
        assertTrue(names(charts).contains("bow-01.svg"));
        assertFalse(names(charts).contains("bow-02.png"));
        assertEquals("annotated", Files.readString(charts.resolve("bow-02.svg")));
        assertEquals("mine", Files.readString(charts.resolve("bow-03.svg")));
    }

    @Test
    void theSameTakeGivesTheSameBytes() throws IOException {
        Path one = folder.resolve("one");
        Path other = folder.resolve("other");
        assertEquals(0, Shell.run("analyse", take, "--out", one).code());
        assertEquals(0, Shell.run("analyse", take, "--out", other).code());
        for (String name :
                List.of("strokes.csv", "bows.csv", "beats.csv", "divergences.csv", "results.json", "report.html")) {
            assertEquals(-1, Files.mismatch(one.resolve(name), other.resolve(name)), name);
        }
    }

    @Test
    void aFileInTheWayIsLeftAsItIs() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        for (Path out : List.of(file, file.resolve("below"))) {
            Shell shell = Shell.run("analyse", take, "--out", out);
            assertEquals(5, shell.code());
            assertEquals("", shell.out());
            assertEquals(1, shell.errLines().size(), shell.err());
            assertTrue(shell.err().contains(file.toString()), shell.err());
        }
        assertEquals("mine", Files.readString(file));
        assertEquals(Set.of("out"), names(folder));
    }

    @Test
    void anInterruptedRunSaysSoWhereverItWas() {
        Path out = folder.resolve("out");
        Thread.currentThread().interrupt();
        Shell shell = Shell.run("analyse", take, "--quiet", "--out", out);
        assertFalse(Thread.interrupted(), "the interruption is taken note of");
        assertEquals(130, shell.code());
        assertEquals(List.of("Interrupted; nothing was written."), shell.errLines());
        assertFalse(Files.exists(out));
    }

    /** Without part and beats the leader's six strokes are counted; bars are left empty. */
    @Test
    void withoutPartAndBeatsTheLeadersStrokesAreCounted() throws IOException {
        String json = TinyTake.JSON.replaceFirst("(?s),\\s*\"part\".*", "}");
        Path led = Files.writeString(given.resolve("led.take.json"), json);
        Path out = folder.resolve("out");
        Shell shell = Shell.run("analyse", led, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertEquals(PROMISED, names(out));
        assertResultsAsTheSchemaSays(out);
        List<String> lines = Files.readAllLines(out.resolve("beats.csv"));
        assertEquals(1 + 2 * 6, lines.size(), lines.toString());
        for (int i = 1; i <= 6; i++) {
            String direction = i % 2 == 1 ? ",none,down," : ",none,up,";
            assertLine("Desk 1 inside,," + i + ",", direction, lines.get(6 + i));
            assertTrue(lines.get(6 + i).endsWith(",rest,with"), lines.get(6 + i));
        }
        List<String> lags = Files.readAllLines(out.resolve("lags.csv"));
        assertEquals("player,bar,beat,time_s,lag_ms", lags.get(0));
        assertEquals(1 + 5, lags.size(), "both change five times, at the same moment");
        for (int i = 1; i <= 5; i++) {
            assertTrue(lags.get(i).matches("Desk 1 inside,," + (i + 1) + ",[0-9.]+,0"), lags.get(i));
        }
        assertTrue(Files.readString(out.resolve("report.html")).contains("2 players over 6 strokes of the leader"));
        Path unled = Files.writeString(given.resolve("unled.take.json"), json.replace(", \"leader\": true", ""));
        Shell refused = Shell.run("analyse", unled, "--out", folder.resolve("none"));
        assertEquals(3, refused.code());
        assertTrue(refused.err().contains("say who leads"), refused.err());
    }

    @Test
    void strokesAloneAreReadWithoutAPart() throws IOException {
        Path out = folder.resolve("out");
        Shell shell = Shell.run(
                "strokes",
                given.resolve("clip.mkv"),
                "--player",
                "Ida:0,0,160,160:violin:camera",
                "--player",
                "Desk 1: \"inside\", left:160,0,160,160:violin:camera",
                "--out",
                out);
        assertEquals(0, shell.code(), shell.err());
        assertEquals(Set.of("strokes.csv", "bows.csv"), names(out));
        List<String> lines = Files.readAllLines(out.resolve("strokes.csv"));
        assertEquals(STROKES, lines.get(0));
        assertEquals(1 + 2 * 6, lines.size(), lines.toString());
        for (int i = 0; i < 6; i++) {
            String direction = i % 2 == 0 ? ",down," : ",up,";
            assertLine("Ida,", direction, lines.get(1 + i));
            assertLine("\"Desk 1: \"\"inside\"\", left\",", direction, lines.get(7 + i));
        }
        assertTrue(shell.out().contains(out.resolve("strokes.csv").toString()), shell.out());
    }
}
