package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;

class SteadyTempoTest extends BeatSourceContract {
    private static Part part(Bar... bars) {
        return new Part("p", List.of(bars), List.of());
    }

    @Override
    BeatSource sixBeats() {
        return new SteadyTempo(part(Bar.full("1", new Metre(4, 4)), Bar.full("2", new Metre(2, 4))), 120, 3);
    }

    @Test
    void aPickupComesFirst() throws InputException {
        Bar whole = new Bar("0", new Metre(4, 4), 4, 1);
        Bar half = new Bar("0", new Metre(4, 4), 4.5, 0.5);
        Bar next = Bar.full("1", new Metre(4, 4));
        List<Beat> beats = new SteadyTempo(part(whole, next), 60, 2).beats().beats();
        assertBeat("0", 4, 2, beats.get(0));
        assertBeat("1", 1, 3, beats.get(1));
        beats = new SteadyTempo(part(half, next), 60, 2).beats().beats();
        assertBeat("0", 4, 1.5, beats.get(0));
        assertBeat("1", 1, 2.5, beats.get(1));
    }

    /** A figure rounded to a unit errs by the unit over the square root of 12, its standard deviation if it errs evenly. */
    @Test
    void beatsAreAsSureAsTheFiguresAreTyped() throws InputException {
        Part part = part(Bar.full("1", new Metre(4, 4)));
        List<Beat> whole = new SteadyTempo(part, 60, 2).beats().beats();
        // a whole second at the start; after 3 s at 60 a minute 3/60 s for each beat a minute
        assertEquals(1 / Math.sqrt(12), whole.get(0).stderrS().orElseThrow(), 1e-12);
        assertEquals(Math.hypot(1, 0.05) / Math.sqrt(12), whole.get(3).stderrS().orElseThrow(), 1e-12);
        List<Beat> fine = new SteadyTempo(part, 62.5, 1.84).beats().beats();
        assertEquals(0.01 / Math.sqrt(12), fine.get(0).stderrS().orElseThrow(), 1e-12);
        // three beats of 0.96 s
        assertEquals(
                Math.hypot(0.01, 2.88 * 0.1 / 62.5) / Math.sqrt(12),
                fine.get(3).stderrS().orElseThrow(),
                1e-12);
        List<Beat> tens = new SteadyTempo(part, 120, 0).beats().beats();
        assertEquals(
                Math.hypot(1, 0.5 / 120) / Math.sqrt(12), tens.get(1).stderrS().orElseThrow(), 1e-12);
    }

    @Test
    void noteValuesKeepTheirLengthWhereTheMetreChanges() throws InputException {
        BeatMap map = new SteadyTempo(
                        part(
                                Bar.full("1", new Metre(1, 4)),
                                Bar.full("2", new Metre(3, 8)),
                                Bar.full("3", new Metre(1, 2))),
                        60,
                        0)
                .beats();
        assertEquals(
                List.of(0.0, 1.0, 1.5, 2.0, 2.5),
                map.beats().stream().map(Beat::timeS).toList());
    }

    @Test
    void onlySensibleTemposAreTaken() {
        Part part = part(Bar.full("1", new Metre(4, 4)));
        for (double bad : new double[] {0, -60, 9.9, 1001, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new SteadyTempo(part, bad, 0));
        }
        for (double bad : new double[] {Double.NaN, Double.NEGATIVE_INFINITY, 1e9}) {
            assertThrows(IllegalArgumentException.class, () -> new SteadyTempo(part, 60, bad));
        }
        Part tiny = part(Bar.full("1", new Metre(1, 4)));
        assertThrows(InputException.class, () -> new SteadyTempo(tiny, 60, 0).beats());
    }
}
