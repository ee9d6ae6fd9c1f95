package tuttarco.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.analysis.TiledSection;
import tuttarco.seats.Player;
import tuttarco.video.Clip;

/**
 * Wall time, processor time and peak memory of {@code strokes} on twelve real-pixel players in 1920x1080, beside decoding
 * alone, each in a process of its own: {@code mvn test -Pbenchmark -Dtuttarco.clips=DIR}. Nothing is asserted about speed.
 */
@Tag("benchmark")
class StrokesBenchmark {
    private static final int RUNS = 3;

    /** Decodes a clip and does nothing with it. */
    static final class Decoding {
        public static void main(String[] args) throws Exception {
            int frames = 0;
            try (Clip clip = Clip.open(Path.of(args[0]))) {
                while (clip.next().isPresent()) {
                    frames++;
                }
            }
            System.exit(frames > 0 ? 0 : 1);
        }
    }

    private record Cost(double wallS, double cpuS, double peakMiB) {}

    @TempDir
    Path folder;

    @Test
    void twelvePlayersBesideDecodingAlone() throws Exception {
        String clips = System.getProperty("tuttarco.clips", "");
        assumeTrue(!clips.isBlank(), "the benchmark needs -Dtuttarco.clips=DIR");
        Path violin = Path.of(clips).resolve("violin-room.mp4");
        for (int copies : new int[] {1, 3}) {
            Path tiled = folder.resolve("tiled-" + copies + ".mp4");
            TiledSection section = TiledSection.write(violin, tiled, copies);
            List<String> strokes = new ArrayList<>(List.of(
                    "tuttarco.cli.Main",
                    "strokes",
                    tiled.toString(),
                    "--quiet",
                    "--no-cache",
                    "--out",
                    folder.resolve("out") + ""));
            for (Player p : section.players()) {
                strokes.addAll(List.of("--player", p.label() + ":" + p.seat() + ":violin:camera"));
            }
            Cost decoding = median(List.of(Decoding.class.getName(), tiled.toString()));
            Cost reading = median(strokes);
            System.out.printf(
                    Locale.ROOT,
                    "%d s, decoding: %s%n%d s, strokes: %s%nratio: wall %.2f, cpu %.2f%n",
                    8 * copies,
                    decoding,
                    8 * copies,
                    reading,
                    reading.wallS / decoding.wallS,
                    reading.cpuS / decoding.cpuS);
            assertTrue(Files.exists(folder.resolve("out").resolve("strokes.csv")));
        }
    }

    private static Cost median(List<String> command) throws Exception {
        List<Cost> costs = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            costs.add(run(command));
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

    private static Cost run(List<String> command) throws Exception {
        List<String> java = new ArrayList<>(List.of(
                "java",
                "-Xmx512m",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))));
        java.addAll(command);
        long startNs = System.nanoTime();
        Process process = new ProcessBuilder(java).inheritIO().start();
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
        } catch (java.io.IOException e) {
            return 0;
        }
    }
}
