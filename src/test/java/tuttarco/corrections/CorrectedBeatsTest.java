package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;

class CorrectedBeatsTest {
    /** Bar 1 is played twice, with a stop between. */
    private static final BeatMap TOLD = new BeatMap(
            List.of(
                    new Beat("1", 1, 0),
                    new Beat("1", 2, 1),
                    new Beat("2", 1, 2),
                    new Beat("1", 1, 10),
                    new Beat("1", 2, 11),
                    new Beat("2", 1, 12)),
            List.of(new Run(0, 2), new Run(3, 5)));

    private static CorrectedBeats moved(Correction... corrections) {
        return CorrectedBeats.of(Optional.of(TOLD), Logged.all(corrections));
    }

    private static void assertOnlyMoved(int index, double toS, CorrectedBeats corrected) {
        BeatMap beats = corrected.beats().orElseThrow();
        assertEquals(List.of(), corrected.notes());
        assertEquals(TOLD.runs(), beats.runs());
        for (int i = 0; i < TOLD.beats().size(); i++) {
            Beat told = TOLD.beats().get(i);
            Beat set = new Beat(told.bar(), told.beat(), toS, OptionalDouble.of(Beat.TAPPED_S), "by hand");
            assertEquals(i == index ? set : told, beats.beats().get(i));
        }
    }

    @Test
    void theNearestPlayingOfTheBeatAloneIsMoved() {
        assertOnlyMoved(1, 1.25, moved(new Correction.BeatMoved("1", 2, 0.9, 1.25)));
        assertOnlyMoved(4, 10.5, moved(new Correction.BeatMoved("1", 2, 11.3, 10.5)));
        assertOnlyMoved(0, -0.5, moved(new Correction.BeatMoved("1", 1, 0, -0.5)));
        assertOnlyMoved(5, 14, moved(new Correction.BeatMoved("2", 1, 12, 14)));
    }

    @Test
    void itCanBeMovedAgain() {
        assertOnlyMoved(
                1, 1.5, moved(new Correction.BeatMoved("1", 2, 1, 1.75), new Correction.BeatMoved("1", 2, 1.75, 1.5)));
    }

    @Test
    void whatIsNotThereOrWouldPassItsNeighboursStays() {
        for (Correction stray : List.of(
                new Correction.BeatMoved("3", 1, 1, 1.5),
                new Correction.BeatMoved("1", 3, 1, 1.5),
                new Correction.BeatMoved("1", 2, 1, 2),
                new Correction.BeatMoved("1", 2, 1, 0),
                new Correction.BeatMoved("1", 1, 10, 1.5))) {
            CorrectedBeats corrected = moved(stray);
            assertEquals(Optional.of(TOLD), corrected.beats(), stray.toString());
            assertEquals(1, corrected.notes().size());
        }
        assertEquals(
                List.of(
                        "A correction is left out, but not lost (bar 3 beat 1 moved from 1.00 to 1.50 s): there is no such"
                                + " beat, or others lie between its time and the new one."),
                moved(new Correction.BeatMoved("3", 1, 1, 1.5)).notes());
    }

    @Test
    void withoutBeatsThereIsNothingToMove() {
        CorrectedBeats corrected =
                CorrectedBeats.of(Optional.empty(), Logged.all(new Correction.BeatMoved("1", 1, 0, 1)));
        assertEquals(Optional.empty(), corrected.beats());
        assertEquals(1, corrected.notes().size());
    }
}
