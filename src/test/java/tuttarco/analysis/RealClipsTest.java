package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bow.Instrument;
import tuttarco.pose.PackedModel;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * Real players, with the truth of their strokes judged by eye, in a folder named by {@code -Dtuttarco.clips=DIR}. The
 * clips are not part of the project.
 */
class RealClipsTest {
    private static Path clips;

    @BeforeAll
    static void findClips() {
        clips = RealClips.orSkip();
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
}
