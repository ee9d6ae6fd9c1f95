package tuttarco.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.files.OutputException;
import tuttarco.take.Bowing;

class SeasonLogTest {
    private static final TakeOnRecord MANIFOLD = SeasonFixture.manifold("Serenade");

    /** A take without anything that may be missing. */
    private static final TakeOnRecord BARE = new TakeOnRecord(
            "cd".repeat(32),
            "Led",
            Optional.empty(),
            Bowing.UNIFIED,
            true,
            OptionalDouble.empty(),
            List.of(new BeatOnRecord("", 1, true, 0.5, Optional.empty())),
            List.of(),
            List.of());

    @TempDir
    Path folder;

    private Path log() {
        return folder.resolve(SeasonLog.NAME);
    }

    @Test
    void whatIsLoggedIsReadAgainAsItWas() throws Exception {
        SeasonLog.append(folder, MANIFOLD);
        SeasonLog.append(folder, BARE);
        SeasonLog season = SeasonLog.read(folder);
        assertEquals(List.of(MANIFOLD, BARE), season.takes());
        assertEquals(List.of(), season.notes());
        assertEquals(2, Files.readAllLines(log()).size(), "one line a take");
    }

    @Test
    void theFolderIsMade() throws Exception {
        Path below = folder.resolve("strings/spring");
        SeasonLog.append(below, BARE);
        assertEquals(List.of(BARE), SeasonLog.read(below).takes());
    }

    @Test
    void ofOneRecordingTheLaterLineCountsInTheFirstOnesPlace() throws Exception {
        SeasonLog.append(folder, MANIFOLD);
        SeasonLog.append(folder, BARE);
        String before = Files.readString(log());
        TakeOnRecord again = SeasonFixture.manifold("Serenade, with better seats");
        SeasonLog.append(folder, again);
        assertEquals(List.of(again, BARE), SeasonLog.read(folder).takes());
        assertTrue(Files.readString(log()).startsWith(before), "nothing is taken away");
    }

    /** The program or the machine died while a line was written, at any of its bytes; then another take is logged. */
    @Test
    void aTornLineIsSaidAndHarmsNoOther() throws Exception {
        SeasonLog.append(folder, BARE);
        int whole = (int) Files.size(log());
        SeasonLog.append(folder, MANIFOLD);
        byte[] bytes = Files.readAllBytes(log());
        TakeOnRecord next = SeasonFixture.take(1, Optional.empty(), SeasonFixture.bars(1, 1), List.of());
        int torn = 0;
        for (int length = whole; length <= bytes.length; length++) {
            Files.write(log(), Arrays.copyOf(bytes, length));
            boolean nothing = length == whole;
            boolean all = length >= bytes.length - 1;
            SeasonLog cut = SeasonLog.read(folder);
            assertEquals(all ? List.of(BARE, MANIFOLD) : List.of(BARE), cut.takes(), length + " bytes");
            List<String> said = nothing || all
                    ? List.of()
                    : List.of(
                            "season.jsonl: line 2 was cut off or is damaged and is left out; analyse that take again.");
            assertEquals(said, cut.notes(), length + " bytes");
            SeasonLog.append(folder, next);
            SeasonLog after = SeasonLog.read(folder);
            assertEquals(all ? List.of(BARE, MANIFOLD, next) : List.of(BARE, next), after.takes(), length + " bytes");
            assertEquals(said, after.notes(), length + " bytes");
            torn += said.size();
        }
        assertEquals(bytes.length - whole - 2, torn);
    }

    @Test
    void blankLinesSayNothing() throws Exception {
        SeasonLog.append(folder, BARE);
        Files.writeString(log(), "\n \r\n" + Files.readString(log()).stripTrailing() + "\r\n\n");
        assertEquals(new SeasonLog(List.of(BARE), List.of()), SeasonLog.read(folder));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "version":1,          | "version":2,                  | this line has version 2; this program reads version 1
            "version":1,          | "version":"1",                | version: this is not a whole number
            "version":1,          |                               | there is no 'version'
            "version":1,          | "version":1,"mood":"good",    | there is no field 'mood' here
            "abababab             | "ABABABAB                     | video: this is not a SHA-256
            "Serenade"            | "Sere\\u0007nade"             | title: a text has at most 200 characters and no control
            "Serenade"            | 7                             | title: this is not a text
            "2026-11-25"          | "2026-11-31"                  | day: '2026-11-31' is no day of the calendar
            "free"                | "loose"                       | bowing: 'loose' is not known
            "marked":false        | "marked":0                    | marked: this is neither true nor false
            "unity":0.1           | "unity":1e999                 | unity: this is not a number that can be used
            "unity":0.1           | "unity":null                  | unity: this is not a number that can be used
            [1,2,3,4]             | [1,2,3]                       | bars[0].times_s: this has 4 entries, not 3
            [1,2,3,4]             | [1,2,3,true]                  | bars[0].beats[3]: this is not a whole number
            [1,2,3,4]             | {"1":2}                       | bars[0].beats: this is not a list
            9.25                  | "9.25"                        | bars[1].times_s[0]: this is not a number
            "dudu"                | "dudx"                        | bars[0].marked: one of the letters means nothing; write the letters . d u
            "Desk 2 inside"       | ""                            | players[1].label: this is not a text
            "dddddd"              | "ddddd"                       | players[1].played: this has not one letter for each of 6 beats
            "dddddd"              | ["d"]                         | players[1].played: this has not one letter for each of 6 beats
            "wa?-rw"              | "wa?-rd"                      | players[1].verdicts: one of the letters means nothing; write the letters - ? a r w
            "lag_beats":[0,5]     | "lag_beats":[0,6]             | players[1].lag_beats[1]: there is no beat 6 among 6
            "lag_beats":[0,5]     | "lag_beats":[0,-1]            | players[1].lag_beats[1]: there is no beat -1
            "lag_beats":[0,5]     | "lag_beats":[0,5,5]           | players[1].lags_ms: this has 2 entries, not 3
            "first_beat":0        | "first_beat":99               | evenness[0].first_beat: there is no beat 99
            """)
    void whatNoTakeCanBeIsNamedWithItsLineAndPlace(String part, String instead, String expected) throws Exception {
        String line = new String(TakeLine.of(MANIFOLD), StandardCharsets.UTF_8);
        assertTrue(line.contains(part), part + " in " + line);
        String message = refusal(line.replaceFirst(
                java.util.regex.Pattern.quote(part),
                java.util.regex.Matcher.quoteReplacement(instead == null ? "" : instead)));
        assertTrue(message.startsWith("season.jsonl: line 2: " + expected), message);
        assertFalse(message.contains("\n"), message);
    }

    @Test
    void twoPlayersOfOneLabelAreRefused() throws Exception {
        PlayerOnRecord twin = SeasonFixture.player("Twin", 4, i -> false, 0);
        String line = new String(
                TakeLine.of(SeasonFixture.take(1, Optional.empty(), SeasonFixture.bars(1, 1), List.of(twin, twin))),
                StandardCharsets.UTF_8);
        assertTrue(refusal(line).startsWith("season.jsonl: line 2: players: two players have the same label"));
    }

    /** What is no JSON, or is too deep or too twofold to be read as such, is like a line that was cut off. */
    @Test
    void whatIsNoJsonIsLeftOutAndSaid() throws Exception {
        for (String line : List.of(
                "{\"version\":1,\"unity\":NaN}",
                "{\"version\":1,\"title\":\"a\u0007b\"}",
                "{\"version\":1,\"version\":1}",
                "{} {}",
                "[".repeat(100_000),
                "\u0000\u0000\u0000",
                "hello")) {
            write(line);
            SeasonLog season = SeasonLog.read(folder);
            assertEquals(List.of(BARE), season.takes(), line);
            assertEquals(1, season.notes().size(), line);
            assertTrue(season.notes().get(0).startsWith("season.jsonl: line 2 was cut off or is damaged"), line);
        }
    }

    @Test
    void anotherThingThanATakeIsRefused() throws Exception {
        for (String line : List.of("[]", "7", "null", "\"take\"")) {
            assertTrue(refusal(line).startsWith("season.jsonl: line 2: this is not a take on record"), line);
        }
    }

    @Test
    void aHugeLineIsRefusedBeforeItFillsTheMemory() throws Exception {
        String message = refusal("{\"title\":\"" + "x".repeat(17 << 20) + "\"}");
        assertTrue(message.startsWith("season.jsonl: line 2 is longer than 16384 KiB"), message);
    }

    @Test
    void damagedLinesAreReadLeftOutOrRefused() {
        Mutations.onlyInputExceptions(TakeLine.of(MANIFOLD), 400, damaged -> {
            Files.write(log(), damaged);
            SeasonLog.read(folder);
        });
    }

    @Test
    void whereNoLogIsTheWayToOneIsSaid() throws Exception {
        InputException e = assertThrows(InputException.class, () -> SeasonLog.read(folder));
        assertTrue(e.getMessage().startsWith("there is no season.jsonl in " + folder), e.getMessage());
        Files.createDirectory(log());
        assertThrows(InputException.class, () -> SeasonLog.read(folder));
        assertThrows(OutputException.class, () -> SeasonLog.append(folder, BARE));
    }

    private void write(String line) throws IOException {
        Files.writeString(log(), new String(TakeLine.of(BARE), StandardCharsets.UTF_8) + "\n" + line + "\n");
    }

    private String refusal(String line) throws IOException {
        write(line);
        return assertThrows(InputException.class, () -> SeasonLog.read(folder)).getMessage();
    }
}
