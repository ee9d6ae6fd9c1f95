package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LineFileTest {
    private static final int LINES = 60;

    @TempDir
    Path folder;

    /** Writes long lines of its own sign, as a program of its own. */
    static final class Writer {
        public static void main(String[] args) throws Exception {
            write(Path.of(args[0]), args[1]);
        }
    }

    private static void write(Path file, String sign) throws OutputException {
        for (int i = 0; i < LINES; i++) {
            LineFile.append(file, (sign + i + " " + sign.repeat(20_000)).getBytes(StandardCharsets.UTF_8));
        }
    }

    private static List<String> lines(Path file) throws InputException {
        List<String> lines = new ArrayList<>();
        LineFile.read(file, 1 << 20, (number, line) -> {
            lines.add(new String(line, StandardCharsets.UTF_8));
            assertEquals(lines.size(), number);
        });
        return lines;
    }

    private static void assertAllThere(List<String> lines, List<String> signs) {
        assertEquals(signs.size() * LINES, lines.size());
        for (String sign : signs) {
            List<String> own = lines.stream().filter(l -> l.startsWith(sign)).toList();
            assertEquals(LINES, own.size(), sign);
            for (int i = 0; i < LINES; i++) {
                assertEquals(sign + i + " " + sign.repeat(20_000), own.get(i));
            }
        }
    }

    @Test
    void programsThatWriteAtTheSameTimeDontMix() throws Exception {
        Path file = folder.resolve("log");
        List<String> signs = List.of("a", "b", "c");
        List<Process> programs = new ArrayList<>();
        for (String sign : signs) {
            programs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Writer.class.getName(),
                            file.toString(),
                            sign)
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve(sign).toFile())
                    .start());
        }
        for (Process program : programs) {
            assertTrue(program.waitFor(120, TimeUnit.SECONDS));
            assertEquals(0, program.exitValue(), () -> "see " + folder);
        }
        assertAllThere(lines(file), signs);
    }

    @Test
    void threadsThatWriteAtTheSameTimeDontMix() throws Exception {
        Path file = folder.resolve("log");
        List<String> signs = List.of("a", "b", "c");
        List<Thread> threads = signs.stream()
                .map(sign -> new Thread(() -> {
                    try {
                        write(file, sign);
                    } catch (OutputException e) {
                        throw new IllegalStateException(e);
                    }
                }))
                .toList();
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        assertAllThere(lines(file), signs);
    }

    @Test
    void aLineIsNotGluedToOneThatWasCutOff() throws Exception {
        Path file = Files.writeString(folder.resolve("log"), "whole\ntor");
        LineFile.append(file, "next".getBytes(StandardCharsets.UTF_8));
        assertEquals("whole\ntor\nnext\n", Files.readString(file));
        assertEquals(List.of("whole", "tor", "next"), lines(file));
    }

    @Test
    void anEmptyFileHasNoLines() throws Exception {
        assertEquals(List.of(), lines(Files.createFile(folder.resolve("log"))));
    }
}
