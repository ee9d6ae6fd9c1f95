package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.season.SeasonFixture;
import tuttarco.season.SeasonLog;
import tuttarco.season.TakeOnRecord;

class SeasonCommandTest {
    @TempDir
    Path folder;

    private void log() throws Exception {
        for (TakeOnRecord take : SeasonFixture.improving()) {
            SeasonLog.append(folder, take);
        }
    }

    @Test
    void aSeasonIsShownBesideItsLog() throws Exception {
        log();
        Shell shell = Shell.run("season", folder);
        assertEquals(0, shell.code(), shell.err());
        assertEquals("The season lies at " + folder.resolve("season.html") + System.lineSeparator(), shell.out());
        assertEquals("", shell.err());
        assertTrue(Files.exists(folder.resolve("season.csv")));
        assertTrue(Files.exists(folder.resolve("season-bowings.csv")));
        assertTrue(Files.exists(folder.resolve("charts/season-share.png")));
        assertEquals(7, Files.readAllLines(folder.resolve("season.jsonl")).size(), "the log is left as it was");
    }

    @Test
    void anotherFolderMayBeNamedAndWhatIsLeftOutIsSaid() throws Exception {
        log();
        Files.writeString(folder.resolve("season.jsonl"), "{\"version\":1,\"vid", StandardOpenOption.APPEND);
        Path out = folder.resolve("out");
        Shell shell = Shell.run("season", folder, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertEquals(1, shell.errLines().size());
        assertTrue(shell.err().startsWith("season.jsonl: line 8 was cut off"), shell.err());
        assertTrue(Files.exists(out.resolve("season.html")));
        assertFalse(Files.exists(folder.resolve("season.html")));
    }

    /** The log is the leader's own and keeps what it holds. */
    @Test
    void playersAreCalledByTheirLabelsOnlyIfToldTo() throws Exception {
        log();
        Path log = folder.resolve("season.jsonl");
        String named = Files.readString(log).replace("\"Desk ", "\"Quilla ");
        Files.writeString(log, named);
        Path out = folder.resolve("out");
        assertEquals(0, Shell.run("season", folder, "--out", out).code());
        assertEquals(Set.of(), saying("Quilla", out));
        Set<String> pages = Set.of("season.html", "season.csv", "season-share.svg");
        assertTrue(saying("Desk 3 inside", out).containsAll(pages));
        assertEquals(
                0, Shell.run("season", folder, "--out", out, "--show-names").code());
        assertTrue(saying("Quilla 3 inside", out).containsAll(pages));
        assertEquals(named, Files.readString(log));
    }

    private static Set<String> saying(String words, Path out) throws IOException {
        try (Stream<Path> walk = Files.walk(out)) {
            Set<String> saying = new TreeSet<>();
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                if (Files.readString(file, StandardCharsets.ISO_8859_1).contains(words)) {
                    saying.add(file.getFileName().toString());
                }
            }
            return saying;
        }
    }

    @Test
    void whatIsNoLogIsRefusedInOneSentence() throws IOException {
        Shell none = Shell.run("season", folder);
        assertEquals(3, none.code());
        assertEquals(1, none.errLines().size(), none.err());
        Files.writeString(folder.resolve("season.jsonl"), "{\"version\":2}\n");
        Shell newer = Shell.run("season", folder);
        assertEquals(3, newer.code());
        assertEquals(1, newer.errLines().size(), newer.err());
        assertTrue(newer.err().startsWith("season.jsonl: line 1: this line has version 2"), newer.err());
        assertFalse(Files.exists(folder.resolve("season.html")));
    }
}
