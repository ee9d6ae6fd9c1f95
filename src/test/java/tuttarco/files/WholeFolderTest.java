package tuttarco.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFolderTest {
    @TempDir
    private Path root;

    private static FolderContents report(String text) {
        return folder -> {
            Files.writeString(folder.resolve("report.html"), text);
            Files.writeString(Files.createDirectories(folder.resolve("charts")).resolve("section.svg"), text);
        };
    }

    @Test
    void makesTheFolderAndItsParents() throws Exception {
        WholeFolder.write(root.resolve("x/y/out"), report("new"));
        assertEquals(
                List.of("x", "x/y", "x/y/out", "x/y/out/charts", "x/y/out/charts/section.svg", "x/y/out/report.html"),
                Trees.below(root));
    }

    @Test
    void replacesItsOwnFilesAndLeavesForeignOnes() throws Exception {
        Path out = Files.createDirectory(root.resolve("out"));
        Files.writeString(out.resolve("report.html"), "old");
        Files.writeString(out.resolve("shopping.txt"), "rosin");
        WholeFolder.write(out, report("new"));
        assertEquals(List.of("charts", "charts/section.svg", "report.html", "shopping.txt"), Trees.below(out));
        assertEquals("new", Files.readString(out.resolve("report.html")));
        assertEquals("rosin", Files.readString(out.resolve("shopping.txt")));
    }

    private Path withLeftovers() throws IOException {
        Path out = Files.createDirectories(root.resolve("out/charts")).getParent();
        Files.writeString(out.resolve("report.html"), "old");
        Files.writeString(out.resolve("charts/left.svg"), "old");
        return out;
    }

    @Test
    void takesAwayWhatAnEarlierRunLeft() throws Exception {
        Path out = withLeftovers();
        OwnFiles earlier = OwnFiles.in(out);
        Files.writeString(out.resolve("shopping.txt"), "rosin");
        WholeFolder.write(out, earlier, report("new"));
        assertEquals(List.of("charts", "charts/section.svg", "report.html", "shopping.txt"), Trees.below(out));
    }

    @Test
    void aFailureAfterLeftoversWereTakenAwayPutsThemBack() throws IOException {
        Path out = withLeftovers();
        OwnFiles earlier = OwnFiles.in(out);
        Files.createDirectory(out.resolve("z.csv"));
        assertThrows(
                OutputException.class,
                () -> WholeFolder.write(
                        out, earlier, folder -> Files.writeString(folder.resolve("z.csv"), "a folder is in the way")));
        assertEquals(List.of("charts", "charts/left.svg", "report.html", "z.csv"), Trees.below(out));
        assertEquals("old", Files.readString(out.resolve("charts/left.svg")));
    }

    @Test
    void anEndInBetweenLeavesWhatWasThere() throws Exception {
        Path out = withLeftovers();
        Process child = started(out);
        String said = new String(child.getInputStream().readAllBytes(), UTF_8);
        assertEquals(130, child.waitFor(), said);
        assertEquals(List.of("charts", "charts/left.svg", "report.html"), Trees.below(out));
        assertEquals("old", Files.readString(out.resolve("report.html")));
    }

    @Test
    void aFailureWhileWritingLeavesNothingBehind() throws IOException {
        IOException full = new IOException("no room");
        OutputException e = assertThrows(
                OutputException.class,
                () -> WholeFolder.write(root.resolve("x/out"), folder -> {
                    report("half").writeTo(folder);
                    throw full;
                }));
        assertSame(full, e.getCause());
        assertTrue(e.getMessage().endsWith("out: no room."), e.getMessage());
        assertEquals(List.of(), Trees.below(root));
    }

    @Test
    void aCrashWhileWritingLeavesNothingBehind() throws IOException {
        Path out = Files.createDirectory(root.resolve("out"));
        Files.writeString(out.resolve("report.html"), "old");
        assertThrows(
                ArithmeticException.class,
                () -> WholeFolder.write(out, folder -> {
                    report("half").writeTo(folder);
                    throw new ArithmeticException();
                }));
        assertEquals(List.of("report.html"), Trees.below(out));
        assertEquals("old", Files.readString(out.resolve("report.html")));
    }

    @Test
    void aFailureHalfwayPutsEverythingBack() throws IOException {
        Path out = Files.createDirectory(root.resolve("out"));
        Files.writeString(out.resolve("a.csv"), "old");
        Files.createDirectory(out.resolve("z.csv"));
        OutputException e = assertThrows(
                OutputException.class,
                () -> WholeFolder.write(out, folder -> {
                    Files.writeString(folder.resolve("a.csv"), "new");
                    Files.writeString(
                            Files.createDirectories(folder.resolve("b/c")).resolve("d.csv"), "new");
                    Files.writeString(folder.resolve("z.csv"), "new");
                }));
        assertTrue(e.getMessage().contains("is a folder where a file is needed"), e.getMessage());
        assertEquals(List.of("a.csv", "z.csv"), Trees.below(out));
        assertEquals("old", Files.readString(out.resolve("a.csv")));
    }

    @Test
    void refusesAFileBeforeAnythingIsWritten() throws IOException {
        Path file = Files.writeString(root.resolve("out"), "kept");
        OutputException e = assertThrows(
                OutputException.class,
                () -> WholeFolder.write(file, folder -> {
                    throw new AssertionError("must not be asked");
                }));
        assertTrue(e.getMessage().endsWith("it is a file, name a folder instead."), e.getMessage());
        assertEquals("kept", Files.readString(file));
    }

    @Test
    void refusesAFileAsParent() throws IOException {
        Path file = Files.writeString(root.resolve("plain"), "kept");
        assertThrows(OutputException.class, () -> WholeFolder.write(file.resolve("x/out"), report("new")));
        assertEquals(List.of("plain"), Trees.below(root));
        assertEquals("kept", Files.readString(file));
    }

    @Test
    void theEndOfTheProgramRemovesWhatIsUnfinished() throws Exception {
        Process child = started(root.resolve("x/out"));
        String said = new String(child.getInputStream().readAllBytes(), UTF_8);
        assertEquals(130, child.waitFor(), said);
        assertEquals(List.of(), Trees.below(root));
    }

    private static Process started(Path out) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Interrupted.class.getName(),
                        out.toString())
                .redirectErrorStream(true)
                .start();
    }

    /** A program that ends while it writes, as after a signal. */
    static final class Interrupted {
        public static void main(String[] args) throws Exception {
            Path out = Path.of(args[0]);
            OwnFiles earlier = Files.exists(out) ? OwnFiles.in(out) : OwnFiles.NONE;
            WholeFolder.write(out, earlier, folder -> {
                report("half").writeTo(folder);
                System.exit(130);
            });
        }
    }
}
