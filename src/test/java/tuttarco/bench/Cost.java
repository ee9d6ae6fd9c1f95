package tuttarco.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a run in a process of its own took. */
public record Cost(double wallS, double cpuS, double peakMiB) {
    /** The median of several runs, each figure by itself. */
    public static Cost median(int runs, String heap, List<String> command) throws Exception {
        List<Cost> costs = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            costs.add(of(heap, command));
        }
        return new Cost(
                middle(costs.stream().mapToDouble(Cost::wallS).toArray()),
                middle(costs.stream().mapToDouble(Cost::cpuS).toArray()),
                middle(costs.stream().mapToDouble(Cost::peakMiB).toArray()));
    }

    private static double middle(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }

    /**
     * Runs a main class with its arguments, on the classes of the tests.
     *
     * @param heap the most of it, as Java's {@code -Xmx} takes it
     */
    public static Cost of(String heap, List<String> command) throws Exception {
        List<String> java = new ArrayList<>(List.of(
                "java",
                "-Xmx" + heap,
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))));
        java.addAll(command);
        long startNs = System.nanoTime();
        // what it says is passed on when it is done: a test's own process must not write to the runner's output by
        // itself
        Path said = Files.createTempFile("said", ".txt");
        Process process = new ProcessBuilder(java)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        Path proc = Path.of("/proc", String.valueOf(process.pid()));
        double peakMiB = 0;
        double cpuS = 0;
        while (process.isAlive()) {
            peakMiB = Math.max(peakMiB, peakMiB(proc.resolve("status")));
            cpuS = process.info()
                    .totalCpuDuration()
                    .map(d -> d.toMillis() / 1000.0)
                    .orElse(cpuS);
            Thread.sleep(5);
        }
        System.out.print(Files.readString(said));
        Files.delete(said);
        assertEquals(0, process.exitValue());
        return new Cost((System.nanoTime() - startNs) / 1e9, cpuS, peakMiB);
    }

    private static double peakMiB(Path status) {
        try {
            return Files.readAllLines(status).stream()
                    .filter(l -> l.startsWith("VmHWM:"))
                    .mapToDouble(l -> Double.parseDouble(l.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            return 0;
        }
    }
}
