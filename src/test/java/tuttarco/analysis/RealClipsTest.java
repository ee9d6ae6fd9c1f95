package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
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
        String folder = System.getProperty("tuttarco.clips", "");
        boolean given = !folder.isBlank() && Files.isDirectory(Path.of(folder));
        if (!given) {
            System.out.println("Skipped: the real clips are checked only with -Dtuttarco.clips=DIR");
        }
        assumeTrue(given, "the real clips are checked only with -Dtuttarco.clips=DIR");
        clips = Path.of(folder);
    }

    private static Score score(String name, Instrument instrument, SeatBox seat) throws Exception {
        Player player = new Player("player", 1, Place.OUTSIDE, instrument, seat, Facing.CAMERA, false);
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
}
