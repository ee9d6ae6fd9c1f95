package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BowingCommandTest {
    @TempDir
    Path folder;

    private Path part;
    private Path out;

    @BeforeEach
    void writePart() throws IOException {
        part = Files.writeString(folder.resolve("part.bowing.txt"), "metre 2/4\n1: d d\n2: . .\n");
        out = folder.resolve("out.bowing.txt");
    }

    @Test
    void aPartBecomesTextToEditAndAwkwardPlacesAreSaid() throws IOException {
        Shell shell = Shell.run("bowing", part, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        String first = shell.out().lines().findFirst().orElseThrow();
        assertTrue(first.startsWith("Bar 1 beat 2: two down-bows are marked in a row"), first);
        assertEquals("part part\nmetre 2/4\n# " + first + "\n1: d d\n2: . .\n", Files.readString(out));
    }

    @Test
    void everyDirectionMayBeWritten() throws IOException {
        assertEquals(
                0, Shell.run("bowing", part, "--every", "--quiet", "--out", out).code());
        assertTrue(Files.readString(out).endsWith("1: d d\n2: u d\n"));
    }

    @Test
    void thePracticeMayBeChosenAndBarsWrittenOver() throws IOException {
        Path over = Files.writeString(folder.resolve("over.bowing.txt"), "1: . .\n");
        Shell shell =
                Shell.run("bowing", part, "--over", over, "--practice", "viols", "--every", "--quiet", "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertEquals("", shell.out());
        assertTrue(Files.readString(out).endsWith("\n1: u d\n2: u d\n"));
    }

    @Test
    void whatIsNoPartIsRefusedAndNothingWritten() throws IOException {
        Shell shell = Shell.run("bowing", folder.resolve("none.bowing.txt"), "--out", out);
        assertEquals(3, shell.code());
        assertTrue(Files.notExists(out));
    }
}
