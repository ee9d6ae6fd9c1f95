package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.beats.TappedBeats.Every;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;

class TappedBeatsTest extends BeatSourceContract {
    private static final Part PART = new Part(
            "p",
            List.of(
                    new Bar("0", new Metre(4, 4), 4, 1),
                    Bar.full("1", new Metre(4, 4)),
                    Bar.full("2", new Metre(2, 4))),
            List.of());

    @Override
    BeatSource sixBeats() {
        return new TappedBeats(PART, 1, Every.BEAT, List.of(3.25, 3.75, 4.25, 4.75, 5.25, 5.75, 6.25, 9.0), 0.25);
    }

    @Test
    void beatsBetweenTheTapsOfBarsLieEvenlyAndAreLessSure() throws InputException {
        List<Beat> beats = new TappedBeats(PART, 1, Every.BAR, List.of(10.0, 14.0), 0)
                .beats()
                .beats();
        assertEquals(
                List.of(10.0, 11.0, 12.0, 13.0, 14.0),
                beats.stream().map(Beat::timeS).toList());
        assertEquals(Beat.TAPPED_S, beats.get(0).stderrS().orElseThrow());
        // half way, two taps' errors halved, and a quarter of 4 s uneven by 0.1 either way
        assertEquals(
                Math.sqrt(0.025 * 0.025 / 2 + 0.02 * 4 * 4 / 16),
                beats.get(2).stderrS().orElseThrow(),
                1e-12);
    }

    @Test
    void aPickupIsTappedLikeABar() throws InputException {
        List<Beat> beats = new TappedBeats(PART, 0, Every.BAR, List.of(1.0, 2.0, 6.0), 0)
                .beats()
                .beats();
        assertBeat("0", 4, 1, beats.get(0));
        assertBeat("1", 1, 2, beats.get(1));
        assertBeat("2", 1, 6, beats.get(5));
    }

    @Test
    void whatTheNextTapMeansIsKnown() {
        assertEquals(Optional.of("bar 0 beat 4"), TappedBeats.meant(PART, 0, Every.BEAT, 0));
        assertEquals(Optional.of("bar 1 beat 2"), TappedBeats.meant(PART, 0, Every.BEAT, 2));
        assertEquals(Optional.of("bar 2 beat 1"), TappedBeats.meant(PART, 0, Every.BAR, 2));
        assertEquals(Optional.empty(), TappedBeats.meant(PART, 0, Every.BAR, 3));
    }

    @Test
    void oneTapIsNoBeats() {
        TappedBeats one = new TappedBeats(PART, 1, Every.BEAT, List.of(3.0), 0);
        assertEquals(
                "From bar 1 on fewer than two beats were tapped; tap at least two.",
                assertThrows(InputException.class, one::beats).getMessage());
    }
}
