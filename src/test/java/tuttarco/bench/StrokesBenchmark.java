package tuttarco.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
    private static final String HEAP = "512m";

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
            Cost decoding = Cost.median(RUNS, HEAP, List.of(Decoding.class.getName(), tiled.toString()));
            Cost reading = Cost.median(RUNS, HEAP, strokes);
            System.out.printf(
                    Locale.ROOT,
                    "%d s, decoding: %s%n%d s, strokes: %s%nratio: wall %.2f, cpu %.2f%n",
                    8 * copies,
                    decoding,
                    8 * copies,
                    reading,
                    reading.wallS() / decoding.wallS(),
                    reading.cpuS() / decoding.cpuS());
            assertTrue(Files.exists(folder.resolve("out").resolve("strokes.csv")));
        }
    }
}
