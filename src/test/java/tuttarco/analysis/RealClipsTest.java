package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.Instrument;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparing;
import tuttarco.compare.Lag;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.stats.Quantiles;

/**
 * Real players, with the truth of their strokes judged by eye, in a folder named by {@code -Dtuttarco.clips=DIR}. The
 * clips are not part of the project.
 */
class RealClipsTest {
    private static Path clips;

    @BeforeAll
    static void findClips() {
        String folder = System.getProperty("tuttarco.clips", "");
        boolean given = !folder.isBlank() && Files.isDirectory(Path.of(folder));
        if (!given) {
            System.out.println("Skipped: the real clips are checked only with -Dtuttarco.clips=DIR");
        }
        assumeTrue(given, "the real clips are checked only with -Dtuttarco.clips=DIR");
        clips = Path.of(folder);
    }

    private static Score score(String name, Instrument instrument, SeatBox seat) throws Exception {
        Player player = new Player("player", 1, Place.OUTSIDE, instrument, seat, Optional.of(Facing.CAMERA), false);
        SectionReading reading =
                SectionReader.standard().read(clips.resolve(name + ".mp4"), List.of(player), (t, l) -> {});
        assertEquals(1, reading.readings().size());
        Score score = Score.of(
                reading.readings().get(0).strokes(), TruthSpan.read(clips.resolve(name + ".truth.csv"), "player"));
        System.out.println(name + ": " + score);
        assertTrue(score.steps() > 100, "steps with truth: " + score.steps());
        return score;
    }

    @Test
    void theViolinistsStrokesAreRead() throws Exception {
        Score score = score("violin-room", Instrument.VIOLIN, new SeatBox(30, 45, 390, 265));
        assertTrue(score.agreement() >= 0.94, score.toString());
        assertTrue(score.recall() >= 0.8, score.toString());
        assertTrue(score.precision() >= 0.8, score.toString());
    }

    @Test
    void theCellistsStrokesAreRead() throws Exception {
        Score score = score("cello-stage", Instrument.CELLO, new SeatBox(100, 70, 780, 650));
        assertTrue(score.agreement() >= 0.86, score.toString());
    }

    /**
     * A section on real pixels: one violinist twelve times over, each with a delay that is known. Every player's lag to
     * the leader comes back.
     */
    @Test
    void twelveCopiesOfTheViolinistComeBackWithTheirDelays(@TempDir Path folder) throws Exception {
        Path tiled = folder.resolve("tiled.mp4");
        TiledSection section = TiledSection.write(clips.resolve("violin-room.mp4"), tiled);
        SectionReading reading = SectionReader.standard().read(tiled, section.players(), (t, l) -> {});
        BeatMap anyBeats = new BeatMap(List.of(new Beat("1", 1, 0), new Beat("1", 2, 1)));
        List<Lag> lags = Comparing.compare(reading.readings(), anyBeats, List.of(), CompareSettings.DEFAULT)
                .lags();
        assertEquals(11, lags.size());
        List<Double> errorsMs = new ArrayList<>();
        for (Lag lag : lags) {
            double trueMs = section.delayMs(lag.player());
            double readMs = lag.medianMs().orElseThrow();
            System.out.printf(
                    Locale.ROOT,
                    "%s: delay %.0f ms, read %.0f ms%n",
                    lag.player().label(),
                    trueMs,
                    readMs);
            errorsMs.add(Math.abs(readMs - trueMs));
        }
        double medianMs = Quantiles.median(errorsMs);
        System.out.printf(Locale.ROOT, "lags of twelve tiles: median error %.0f ms%n", medianMs);
        assertTrue(medianMs <= 20, "median error " + medianMs + " ms");
    }
}
