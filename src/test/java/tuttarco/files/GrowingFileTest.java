package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GrowingFileTest {
    @TempDir
    private Path root;

    @Test
    void hasItsNameOnceKept() throws Exception {
        Path file = root.resolve("a/b.mp4");
        try (GrowingFile growing = GrowingFile.besides(file)) {
            Files.writeString(growing.path(), "whole");
            assertTrue(Files.notExists(file));
            growing.keep();
        }
        assertEquals("whole", Files.readString(file));
        assertEquals(List.of("a", "a/b.mp4"), Trees.below(root));
    }

    @Test
    void leavesNothingUnlessKept() throws Exception {
        try (GrowingFile growing = GrowingFile.besides(root.resolve("a/b.mp4"))) {
            Files.writeString(growing.path(), "half");
        }
        assertEquals(List.of(), Trees.below(root));
    }

    @Test
    void refusesAFolder() {
        OutputException e = assertThrows(OutputException.class, () -> GrowingFile.besides(root));
        assertTrue(e.getMessage().endsWith("it is a folder, name a file instead."), e.getMessage());
    }
}
