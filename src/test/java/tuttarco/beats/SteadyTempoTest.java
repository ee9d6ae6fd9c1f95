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
        assertEquals(List.of(new Beat("0", 4, 2), new Beat("1", 1, 3)), beats.subList(0, 2));
        beats = new SteadyTempo(part(half, next), 60, 2).beats().beats();
        assertEquals(List.of(new Beat("0", 4, 1.5), new Beat("1", 1, 2.5)), beats.subList(0, 2));
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
