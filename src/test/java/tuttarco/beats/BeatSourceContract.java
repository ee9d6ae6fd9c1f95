package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
        assertEquals(new Beat("1", 1, 3), beats.get(0));
        assertEquals(new Beat("1", 4, 4.5), beats.get(3));
        assertEquals(new Beat("2", 2, 5.5), beats.get(5));
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
