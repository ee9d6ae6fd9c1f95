package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C, as the terminal sends it to a program of its own: 130, and everything is as it was before. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class InterruptionTest {
    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void nameTheFiles() throws IOException {
        out = Files.createDirectory(folder.resolve("outputs")).resolve("out");
    }

    private void interruptOnce(Predicate<Program> busy, List<String> args) throws Exception {
        Program program = Program.start(folder, args);
        Process process = program.process();
        try {
            program.await(() -> busy.test(program));
            Process kill = new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start();
            assertEquals(0, kill.waitFor());
            assertTrue(process.waitFor(Program.PATIENCE_S, TimeUnit.SECONDS), "it did not stop");
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertEquals(130, process.exitValue(), program::err);
        assertEquals(List.of(), list(out.getParent()));
        assertEquals("", program.out());
        assertFalse(program.err().contains("Exception"), program::err);
        assertEquals(
                1,
                program.err().lines().filter(l -> l.startsWith("Interrupted")).count(),
                program::err);
    }

    private static List<Path> list(Path dir) {
        try (Stream<Path> list = Files.list(dir)) {
            return list.toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A shell that starts a program in the background may make it deaf to Ctrl-C; bit 1 of SigIgn is SIGINT, proc(5). */
    static void assumeCtrlCIsHeard() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (Files.exists(status)) {
            String ignored = Files.readAllLines(status).stream()
                    .filter(l -> l.startsWith("SigIgn:"))
                    .findFirst()
                    .orElse("SigIgn: 0")
                    .replaceAll(".*\\s", "");
            assumeFalse((Long.parseUnsignedLong(ignored, 16) & 0b10) != 0, "this build runs deaf to Ctrl-C");
        }
    }

    @Test
    void readingStopsAndLeavesNothing() throws Exception {
        assumeCtrlCIsHeard();
        Path clip = folder.resolve("clip.mkv");
        TinyTake.writeClip(clip, 300, 15);
        List<String> args = new ArrayList<>(List.of("strokes", clip.toString(), "--out", out.toString()));
        for (int i = 0; i < Program.MANY_PLAYERS; i++) {
            args.addAll(List.of("--player", "Player " + i + ":0,0,160,160:violin:camera"));
        }
        interruptOnce(program -> program.err().contains("Reading bow arms"), args);
    }

    @Test
    void whatIsHalfWrittenIsTakenAway() throws Exception {
        assumeCtrlCIsHeard();
        Predicate<Program> drawing = program -> list(out.getParent()).stream()
                .anyMatch(staging -> Files.exists(staging) && !list(staging).isEmpty());
        interruptOnce(drawing, List.of("demo", "--out", out.toString()));
    }
}
