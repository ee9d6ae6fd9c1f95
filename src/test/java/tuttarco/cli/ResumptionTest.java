package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A program that was killed, or stopped by Ctrl-C, goes on where it was, and reads what it would have read. */
class ResumptionTest {
    @TempDir
    static Path given;

    @TempDir
    Path folder;

    private static Path clip;
    private static byte[] undisturbed;

    @BeforeAll
    static void readUndisturbed() throws Exception {
        clip = given.resolve("clip.mkv");
        TinyTake.writeClip(clip, 150, 15);
        Path out = given.resolve("out");
        List<String> args = new ArrayList<>(strokes(out));
        args.add("--no-cache");
        Shell shell = Shell.run(args.toArray());
        assertEquals(0, shell.code(), shell.err());
        undisturbed = Files.readAllBytes(out.resolve("strokes.csv"));
        assertTrue(undisturbed.length > 500 * Program.MANY_PLAYERS, "strokes to compare: " + undisturbed.length);
    }

    private static List<String> strokes(Path out) {
        List<String> args = new ArrayList<>(List.of("strokes", clip.toString(), "--out", out.toString()));
        for (int i = 0; i < Program.MANY_PLAYERS; i++) {
            args.addAll(List.of("--player", "Player " + i + ":0,0,160,160:violin:camera"));
        }
        return args;
    }

    private Path cache() {
        return folder.resolve("cache");
    }

    private Path out() {
        return folder.resolve("out");
    }

    private Program start() throws IOException {
        List<String> args = new ArrayList<>(strokes(out()));
        args.addAll(List.of("--cache", cache().toString()));
        return Program.start(folder, args);
    }

    private boolean somethingIsKept() {
        if (!Files.exists(cache())) {
            return false;
        }
        try (Stream<Path> files = Files.list(cache())) {
            return files.anyMatch(file -> file.toString().endsWith(".entry"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private void assertGoesOn() throws Exception {
        assertFalse(Files.exists(out()), "the program was stopped before it wrote anything");
        Program again = start();
        assertTrue(again.process().waitFor(Program.PATIENCE_S, TimeUnit.SECONDS), again::err);
        assertEquals(0, again.process().exitValue(), again::err);
        assertTrue(again.err().contains("An earlier run was stopped; reading goes on at "), again::err);
        assertEquals(new String(undisturbed), Files.readString(out().resolve("strokes.csv")));

        Program third = start();
        assertTrue(third.process().waitFor(Program.PATIENCE_S, TimeUnit.SECONDS), third::err);
        assertTrue(third.err().contains("The arms were followed in an earlier run."), third::err);
        assertEquals(new String(undisturbed), Files.readString(out().resolve("strokes.csv")));
    }

    @Test
    void aProgramThatWasKilledGoesOn() throws Exception {
        Program program = start();
        try {
            program.await(this::somethingIsKept);
        } finally {
            program.process().destroyForcibly().waitFor();
        }
        assertGoesOn();
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aProgramStoppedByCtrlCGoesOn() throws Exception {
        InterruptionTest.assumeCtrlCIsHeard();
        Program program = start();
        try {
            program.await(() -> program.err().contains("Reading bow arms"));
            Process kill = new ProcessBuilder(
                            "kill", "-INT", Long.toString(program.process().pid()))
                    .start();
            assertEquals(0, kill.waitFor());
            assertTrue(program.process().waitFor(Program.PATIENCE_S, TimeUnit.SECONDS), program::err);
        } finally {
            program.process().destroyForcibly().waitFor();
        }
        assertEquals(130, program.process().exitValue(), program::err);
        assertTrue(somethingIsKept(), program::err);
        assertGoesOn();
    }
}
