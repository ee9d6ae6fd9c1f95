package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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
