package tuttarco.faces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** At which of a clip's frames, 20 a second, faces are looked for. */
class LooksTest {
    private static final double FRAME_S = 0.05;

    private static List<Double> lookedS(Looks looks, int people, double untilS) {
        List<Double> times = new ArrayList<>();
        OptionalDouble last = OptionalDouble.empty();
        for (int i = 0; i / 20.0 < untilS; i++) {
            double frameS = i / 20.0;
            if (looks.due(frameS, FRAME_S, last, people)) {
                last = OptionalDouble.of(frameS);
                times.add(frameS);
            }
        }
        return times;
    }

    /** Eight people a second: one is looked at every 0.4 s, twelve and more every 1.5 s. */
    @Test
    void theMorePeopleThereAreTheSeldomerEachIsLookedAt() {
        assertEquals(List.of(0.0, 0.4), lookedS(Looks.steady(), 1, 0.7));
        assertEquals(List.of(0.0, 1.5, 3.0, 4.5), lookedS(Looks.steady(), 12, 6));
        assertEquals(
                lookedS(Looks.steady(), 12, 60).size(),
                lookedS(Looks.steady(), 60, 60).size());
    }

    @Test
    void atTheTimesAskedForTheFramesShownThenAreLookedAt() {
        assertEquals(List.of(1.0, 2.0), lookedS(Looks.at(List.of(2.01, 1.02)), 12, 6));
    }

    /** What one arm lets be seen for a moment in a video is seen in none of a few stills. */
    @Test
    void onlyOfAVideoFacesWithoutABodyAreLookedForBetweenToo() {
        assertFalse(Looks.at(List.of(0.6)).between());
        assertTrue(Looks.steady().between());
    }
}
