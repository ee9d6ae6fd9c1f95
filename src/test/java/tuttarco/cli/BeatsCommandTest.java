package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BeatsCommandTest {
    private static final int INPUT = 3;

    @TempDir
    Path folder;

    private Path take(String beats) throws IOException {
        Path file = TinyTake.writeTexts(folder);
        Files.write(folder.resolve("clip.mkv"), new byte[0]);
        assertTrue(TinyTake.JSON.contains("{\"file\": \"beats.csv\"}"));
        return Files.writeString(file, TinyTake.JSON.replace("{\"file\": \"beats.csv\"}", beats));
    }

    @Test
    void aListIsCorrectedByItsAnchors() throws IOException {
        Path take = take("{\"file\": \"beats.csv\", \"anchors\": [{\"bar\": 2, \"beat\": 2, \"time_s\": 2.25}]}");
        Path out = folder.resolve("out.csv");
        Shell shell = Shell.run("beats", take, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        List<String> lines = Files.readAllLines(out);
        assertEquals(7, lines.size());
        assertTrue(lines.get(1).startsWith("1,1,0.25,"), lines.get(1));
        assertEquals("2,2,2.25,0.028868,anchor", lines.get(5));
        assertTrue(lines.get(6).startsWith("2,3,2.75,"), lines.get(6));
    }

    @Test
    void anAnchorThatCannotBeIsSaidAndNothingWritten() throws IOException {
        Path take = take("{\"tempo_bpm\": 120, \"start_s\": 0, \"anchors\": [{\"bar\": 17, \"time_s\": 42.3}]}");
        Path out = folder.resolve("out.csv");
        Shell shell = Shell.run("beats", take, "--out", out);
        assertEquals(INPUT, shell.code());
        assertTrue(shell.err().contains("the anchor names bar 17 beat 1, which is not among"), shell.err());
        assertFalse(Files.exists(out));
    }

    private void refuses(Path take, String sentence) {
        Path out = folder.resolve("out.csv");
        Shell shell = Shell.run("beats", take, "--out", out);
        assertEquals(INPUT, shell.code(), shell.err());
        assertTrue(shell.err().contains(sentence), shell.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void takesThatNameEachOtherAreRefused() throws IOException {
        Path take = take("{\"take\": \"second.take.json\"}");
        String json = Files.readString(take);
        Files.writeString(folder.resolve("second.take.json"), json.replace("second.take.json", "third.take.json"));
        Files.writeString(
                folder.resolve("third.take.json"),
                json.replace(
                        "\"take\": \"second.take.json\"",
                        "\"take\": \"tiny.take.json\", \"anchors\": [{\"bar\": 1, \"time_s\": 0}]"));
        refuses(
                take,
                "third.take.json takes its beats from tiny.take.json, which in the end takes them from there again; give"
                        + " one of the takes its beats in another way.");
        refuses(take("{\"take\": \"tiny.take.json\"}"), "tiny.take.json takes its beats from tiny.take.json, which");
    }

    @Test
    void aTakeWithoutBeatsHasNoneToCarryOver() throws IOException {
        Path take = take("{\"take\": \"second.take.json\"}");
        String without = TinyTake.JSON.replaceFirst(",\\s*\"part\": (?s:.*)}\n}", "\n}");
        assertFalse(without.contains("beats"), without);
        Files.writeString(folder.resolve("second.take.json"), without);
        refuses(
                take,
                "tiny.take.json takes its beats from second.take.json, which does not say where they lie; add beats there,"
                        + " or the part to hear them by.");
    }

    @Test
    void anotherTakeThatIsNoneIsNamed() throws IOException {
        Path take = take("{\"take\": \"beats.csv\"}");
        refuses(take, "beats.csv: line 1");
    }
}
