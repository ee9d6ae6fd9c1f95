package tuttarco.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    private Path root;

    @Test
    void writesAndReplaces() throws IOException, OutputException {
        Path file = root.resolve("a/b/c.csv");
        WholeFile.write(file, "first".getBytes(UTF_8));
        assertEquals("first", Files.readString(file));
        WholeFile.write(file, "second".getBytes(UTF_8));
        assertEquals("second", Files.readString(file));
        assertEquals(List.of("a", "a/b", "a/b/c.csv"), Trees.below(root));
    }

    @Test
    void refusesAFolder() {
        OutputException e = assertThrows(OutputException.class, () -> WholeFile.write(root, new byte[0]));
        assertTrue(e.getMessage().endsWith("it is a folder, name a file instead."), e.getMessage());
    }

    @Test
    void refusesAFileAsParent() throws IOException {
        Path parent = Files.writeString(root.resolve("plain"), "kept");
        OutputException e = assertThrows(
                OutputException.class, () -> WholeFile.write(parent.resolve("deep/er.csv"), new byte[] {1}));
        assertTrue(e.getMessage().startsWith("Can't write "), e.getMessage());
        assertEquals("kept", Files.readString(parent));
        assertEquals(List.of("plain"), Trees.below(root));
    }
}
