package tuttarco.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import tuttarco.pose.PoseModel;

/**
 * The program as a process of its own, so that it can be stopped from outside.
 *
 * @param folder where what it says is written to
 */
record Program(Process process, Path folder) {
    static final long PATIENCE_S = 120;

    /** So many arms in one seat keep it busy for seconds: looking for people takes long, following by flow alone does not. */
    static final int MANY_PLAYERS = PoseModel.installed().isPresent() ? 4 : 150;

    static Program start(Path folder, List<String> args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(args);
        Process process = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();
        return new Program(process, folder);
    }

    String out() {
        return read(folder.resolve("out.txt"));
    }

    String err() {
        return read(folder.resolve("err.txt"));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Waits until something is so; the program must not end before. */
    void await(BooleanSupplier so) throws InterruptedException {
        long untilNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (!so.getAsBoolean()) {
            if (!process.isAlive()) {
                throw new AssertionError("it ended before: " + err());
            }
            if (System.nanoTime() > untilNs) {
                throw new AssertionError("waited in vain: " + err());
            }
            Thread.sleep(20);
        }
    }
}
