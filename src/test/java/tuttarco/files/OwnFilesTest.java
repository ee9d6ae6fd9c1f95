package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OwnFilesTest {
    /** SHA-256 of the three letters abc (FIPS 180-4, example of the standard's appendix, from memory). */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    private Path root;

    private Path folder;

    @BeforeEach
    void writeFiles() throws IOException {
        folder = Files.createDirectories(root.resolve("out/charts")).getParent();
        Files.writeString(folder.resolve("charts/a.svg"), "abc");
        Files.writeString(folder.resolve("b.csv"), "abc");
        Files.writeString(root.resolve("outside.txt"), "abc");
    }

    @Test
    void notesWhatLiesInTheFolder() throws IOException {
        assertEquals(
                Map.of("charts/a.svg", ABC, "b.csv", ABC), OwnFiles.in(folder).sha256());
    }

    @Test
    void onlyWhatNobodyChangedIsStillOurs() throws IOException {
        OwnFiles noted = OwnFiles.in(folder);
        assertEquals(List.of(Path.of("b.csv"), Path.of("charts/a.svg")), noted.unchangedIn(folder));
        Files.writeString(folder.resolve("b.csv"), "abd");
        assertEquals(List.of(Path.of("charts/a.svg")), noted.unchangedIn(folder));
        Files.delete(folder.resolve("charts/a.svg"));
        assertEquals(List.of(), noted.unchangedIn(folder));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../outside.txt", "charts/../../outside.txt", "charts/../b.csv", "charts", "", ".", "\0"})
    void aNoteThatLeadsElsewhereIsNotFollowed(String name) throws IOException {
        assertEquals(List.of(), new OwnFiles(Map.of(name, ABC)).unchangedIn(folder));
    }

    @Test
    void anAbsolutePathIsNotFollowed() throws IOException {
        String outside = root.toRealPath().resolve("outside.txt").toString();
        assertEquals(List.of(), new OwnFiles(Map.of(outside, ABC)).unchangedIn(folder));
    }

    @Test
    void linksAreNotFollowed() throws IOException {
        Files.createSymbolicLink(folder.resolve("link.txt"), root.resolve("outside.txt"));
        Files.createSymbolicLink(folder.resolve("up"), root);
        OwnFiles noted = new OwnFiles(Map.of("link.txt", ABC, "up/outside.txt", ABC, "b.csv", ABC));
        assertEquals(List.of(Path.of("b.csv")), noted.unchangedIn(folder));
    }
}
