package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What every source of beats does alike. */
abstract class BeatSourceContract {
    /** Four beats in bar 1 and two in bar 2, half a second each, from 3 s. */
    abstract BeatSource sixBeats() throws Exception;

    @Test
    void beatsHaveTheirBarsAndTimes() throws Exception {
        List<Beat> beats = sixBeats().beats().beats();
        assertEquals(6, beats.size());
        assertBeat("1", 1, 3, beats.get(0));
        assertBeat("1", 4, 4.5, beats.get(3));
        assertBeat("2", 2, 5.5, beats.get(5));
    }

    static void assertBeat(String bar, int number, double timeS, Beat beat) {
        assertEquals(bar, beat.bar());
        assertEquals(number, beat.beat());
        assertEquals(timeS, beat.timeS());
    }

    @Test
    void everyBeatHasAnErrorAndASource() throws Exception {
        for (Beat beat : sixBeats().beats().beats()) {
            assertTrue(beat.stderrS().orElseThrow() > 0, beat.toString());
            assertFalse(beat.source().isBlank());
        }
    }

    @Test
    void runsHoldAllBeats() throws Exception {
        assertEquals(List.of(new Run(0, 5)), sixBeats().beats().runs());
    }

    @Test
    void timesIncrease() throws Exception {
        List<Beat> beats = sixBeats().beats().beats();
        for (int i = 1; i < beats.size(); i++) {
            assertTrue(beats.get(i).timeS() > beats.get(i - 1).timeS());
        }
    }

    @Test
    void askingTwiceGivesTheSame() throws Exception {
        BeatSource source = sixBeats();
        assertEquals(source.beats(), source.beats());
    }
}
