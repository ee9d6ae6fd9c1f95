package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputBytesTest {
    @TempDir
    Path folder;

    private String refusal(Path file, int most) {
        InputException e = assertThrows(InputException.class, () -> InputBytes.read(file, most));
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void aFileIsReadUpToItsBound() throws IOException, InputException {
        Path file = Files.write(folder.resolve("a.csv"), new byte[2048]);
        assertArrayEquals(new byte[2048], InputBytes.read(file, 2048));
        assertTrue(refusal(file, 1024).startsWith("a.csv is larger than 1 KiB"));
    }

    @Test
    void whatIsNoFileIsRefused() {
        assertTrue(refusal(folder, 10).contains("is a folder"));
        assertTrue(refusal(folder.resolve("no\nne\u001b[1m"), 10).startsWith("there is no file"));
    }
}
