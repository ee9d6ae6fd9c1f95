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
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C, as the terminal sends it to a program of its own: 130, and everything is as it was before. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class InterruptionTest {
    private static final long PATIENCE_S = 60;

    /** So many arms in one seat that most of the work is still ahead when the first progress is told. */
    private static final int PLAYERS = 40;

    @TempDir
    Path folder;

    private Path out;
    private Path err;

    @BeforeEach
    void nameTheFiles() throws IOException {
        out = Files.createDirectory(folder.resolve("outputs")).resolve("out");
        err = folder.resolve("err.txt");
    }

    private Process start(List<String> args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(args);
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(err.toFile())
                .start();
    }

    private void interruptOnce(BooleanSupplier busy, Process program) throws Exception {
        try {
            long untilNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
            while (!busy.getAsBoolean()) {
                assertTrue(program.isAlive(), () -> "it ended before it was interrupted: " + read(err));
                assertTrue(System.nanoTime() < untilNs, "it did not begin");
                Thread.sleep(20);
            }
            Process kill = new ProcessBuilder("kill", "-INT", Long.toString(program.pid())).start();
            assertEquals(0, kill.waitFor());
            assertTrue(program.waitFor(PATIENCE_S, TimeUnit.SECONDS), "it did not stop");
        } finally {
            program.destroyForcibly().waitFor();
        }
        assertEquals(130, program.exitValue(), () -> read(err));
        assertEquals(List.of(), list(out.getParent()));
        assertEquals("", read(folder.resolve("out.txt")));
        assertFalse(read(err).contains("Exception"), () -> read(err));
        assertEquals(
                1, read(err).lines().filter(l -> l.startsWith("Interrupted")).count(), () -> read(err));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Path> list(Path dir) {
        try (Stream<Path> list = Files.list(dir)) {
            return list.toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A shell that starts a program in the background may make it deaf to Ctrl-C; bit 1 of SigIgn is SIGINT, proc(5). */
    private static void assumeCtrlCIsHeard() throws IOException {
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
        for (int i = 0; i < PLAYERS; i++) {
            args.addAll(List.of("--player", "Player " + i + ":0,0,160,160:violin:camera"));
        }
        interruptOnce(() -> read(err).contains("Reading bow arms"), start(args));
    }

    @Test
    void whatIsHalfWrittenIsTakenAway() throws Exception {
        assumeCtrlCIsHeard();
        BooleanSupplier drawing = () -> list(out.getParent()).stream()
                .anyMatch(staging -> Files.exists(staging) && !list(staging).isEmpty());
        interruptOnce(drawing, start(List.of("demo", "--out", out.toString())));
    }
}
