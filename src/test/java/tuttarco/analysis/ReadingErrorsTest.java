package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.demo.SceneCatalogue;
import tuttarco.demo.SceneCatalogue.Expected;
import tuttarco.demo.SceneCatalogue.Listed;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/**
 * Measures how readings go wrong: in which stretches, how long and how sure of themselves. Prints the lines of {@code
 * src/test/resources/tuttarco/compare/reading-errors.csv}, which simulated readings are made from.
 */
@Tag("campaign")
class ReadingErrorsTest {
    private static final double STEPS_PER_S = 30;
    private static final double NEAR_CHANGE_S = 0.05;

    @TempDir
    Path folder;

    @Test
    void linesForTheSimulation() throws Exception {
        int players = 0;
        for (Listed scene : SceneCatalogue.all()) {
            if (scene.expected() != Expected.NO_STROKES) {
                Take take = TakeFile.read(scene.render(folder));
                List<Reading> readings = SectionReader.standard()
                        .read(take.video(), take.players(), (t, l) -> {})
                        .readings();
                for (Reading reading : readings) {
                    Path truth = folder.resolve(scene.name() + ".truth.csv");
                    lines(
                                    scene.name(),
                                    reading,
                                    TruthSpan.read(truth, reading.player().label()))
                            .forEach(System.out::println);
                    players++;
                }
            }
        }
        assertTrue(players >= 50, "players: " + players);
    }

    /** Confidences that differ by less are told as one. */
    private static final double SAME_CONFIDENCE = 0.02;

    /** What was read in a stretch of truly bowed time, the times of rests cut out. */
    private record Stretch(String what, double seconds, double confidence) {
        boolean like(Stretch next) {
            return what.equals(next.what) && Math.abs(confidence - next.confidence) < SAME_CONFIDENCE;
        }

        Stretch and(Stretch next) {
            double both = seconds + next.seconds;
            return new Stretch(what, both, (confidence * seconds + next.confidence * next.seconds) / both);
        }
    }

    /** {@code source,change_error_ms,what,seconds,confidence}; the steps near a true change go with what was before. */
    static List<String> lines(String scene, Reading reading, List<TruthSpan> truth) {
        List<Stretch> stretches = new ArrayList<>();
        double endS = truth.get(truth.size() - 1).endS();
        for (int i = 0; i < (int) (endS * STEPS_PER_S); i++) {
            double timeS = (i + 0.5) / STEPS_PER_S;
            Optional<TruthSpan> bowed = truth.stream()
                    .filter(s -> s.startS() <= timeS && timeS < s.endS() && s.bowed())
                    .findFirst();
            Optional<Stroke> read = reading.at(timeS);
            if (bowed.isPresent() && read.isPresent()) {
                boolean near = timeS - bowed.get().startS() < NEAR_CHANGE_S
                        || bowed.get().endS() - timeS < NEAR_CHANGE_S;
                add(stretches, what(bowed.get(), read.get()), near, read.get().confidence());
            }
        }
        double errorMs = Score.of(reading.strokes(), truth).errorMs();
        return stretches.stream()
                .map(s -> String.format(
                        Locale.ROOT,
                        "%s/%s,%.1f,%s,%.2f,%.3f",
                        scene,
                        reading.player().label(),
                        errorMs,
                        s.what(),
                        s.seconds(),
                        s.confidence()))
                .toList();
    }

    private static void add(List<Stretch> stretches, String what, boolean near, double confidence) {
        Stretch step = new Stretch(what, 1 / STEPS_PER_S, confidence);
        int last = stretches.size() - 1;
        if (last >= 0 && (near || stretches.get(last).like(step))) {
            stretches.set(last, stretches.get(last).and(step));
        } else if (!near) {
            stretches.add(step);
        }
    }

    private static String what(TruthSpan bowed, Stroke read) {
        if (read.kind().direction().isEmpty()) {
            return read.kind().word();
        }
        return read.kind() == bowed.kind() ? "right" : "wrong";
    }
}
