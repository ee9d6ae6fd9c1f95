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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.Instrument;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparing;
import tuttarco.compare.Lag;
import tuttarco.pose.PackedModel;
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
        PackedModel.orSkip();
        Player player = new Player("player", 1, Place.OUTSIDE, instrument, seat, Optional.empty(), false);
        SectionReading reading =
                SectionReader.standard().read(clips.resolve(name + ".mp4"), List.of(player), (t, l) -> {});
        assertEquals(1, reading.readings().size());
        Score score = Score.of(
                reading.readings().get(0).strokes(), TruthSpan.read(clips.resolve(name + ".truth.csv"), "player"));
        System.out.println(name + " " + seat + ": " + score);
        assertTrue(score.steps() > 100, "steps with truth: " + score.steps());
        return score;
    }

    /** The truth by eye holds to about a frame, which standard errors don't contain: the bound is a loose one. */
    @Test
    void theViolinistsChangesLieWithinTheirErrors() throws Exception {
        PackedModel.orSkip();
        Player player = new Player("player", 1, Place.OUTSIDE, Instrument.VIOLIN, VIOLINIST, Optional.empty(), false);
        SectionReading reading =
                SectionReader.standard().read(clips.resolve("violin-room.mp4"), List.of(player), (t, l) -> {});
        BowScore score = new BowScore();
        score.addChanges(reading.bows().get(0), TruthSpan.read(clips.resolve("violin-room.truth.csv"), "player"));
        System.out.println("violin-room, changes and their standard errors: " + score.row());
        assertTrue(score.changes() >= 8, score.row());
        assertTrue(score.within(2) >= 0.7, score.row());
    }

    private static final SeatBox VIOLINIST = new SeatBox(30, 45, 390, 265);
    private static final SeatBox CELLIST = new SeatBox(100, 70, 780, 650);

    @Test
    void theViolinistsStrokesAreRead() throws Exception {
        Score score = score("violin-room", Instrument.VIOLIN, VIOLINIST);
        assertTrue(score.agreement() >= 0.98, score.toString());
        assertTrue(score.coverage() >= 0.95, score.toString());
        assertTrue(score.recall() >= 0.9, score.toString());
        assertTrue(score.precision() >= 0.9, score.toString());
        assertTrue(score.errorMs() <= 33, score.toString());
    }

    @Test
    void theCellistsStrokesAreRead() throws Exception {
        Score score = score("cello-stage", Instrument.CELLO, CELLIST);
        assertTrue(score.agreement() >= 0.94, score.toString());
    }

    /** The reading does not hang on how well the seat was drawn: moved by 15 % each way, and smaller and larger. */
    @ParameterizedTest
    @CsvSource({"0.15,0.15,1", "-0.15,-0.15,1", "0.15,-0.15,1", "-0.15,0.15,1", "0,0,0.8", "0,0,1.3"})
    void aSeatDrawnAmissIsReadAsWell(double right, double down, double scale) throws Exception {
        Score violin = score("violin-room", Instrument.VIOLIN, amiss(VIOLINIST, right, down, scale, 480, 360));
        assertTrue(violin.agreement() >= 0.95, violin.toString());
        Score cello = score("cello-stage", Instrument.CELLO, amiss(CELLIST, right, down, scale, 1280, 720));
        assertTrue(cello.agreement() >= 0.85, cello.toString());
    }

    private static SeatBox amiss(
            SeatBox seat, double right, double down, double scale, int pictureWidthPx, int pictureHeightPx) {
        double middleX = seat.xPx() + (0.5 + right) * seat.widthPx();
        double middleY = seat.yPx() + (0.5 + down) * seat.heightPx();
        int x0 = (int) Math.max(0, middleX - scale * seat.widthPx() / 2);
        int y0 = (int) Math.max(0, middleY - scale * seat.heightPx() / 2);
        int x1 = (int) Math.min(pictureWidthPx, middleX + scale * seat.widthPx() / 2);
        int y1 = (int) Math.min(pictureHeightPx, middleY + scale * seat.heightPx() / 2);
        return new SeatBox(x0, y0, x1 - x0, y1 - y0);
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
        assertTrue(medianMs <= 10, "median error " + medianMs + " ms");
    }
}
