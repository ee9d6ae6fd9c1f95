package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;

/** A bar that is marked to begin with the stroke the last one ended with, and to end with the one the next begins with. */
class AsItComesTest {
    private static final Tempo TEMPO =
            new Tempo(Passage.of("study", "d3 u1 | u1 d1 u1 d1 | d2 u2 | u4"), 120, 1, List.of());

    /** Strokes, with a comma wherever the bow is lifted to go the same way again. */
    private static String played(Deviation... deviations) {
        return new NotePlanner(1)
                .plan(TEMPO, List.of(deviations)).stream()
                        .map(n -> (n.direction() == BowDirection.DOWN ? "d" : "u") + (n.retaken() ? "," : ""))
                        .collect(Collectors.joining());
    }

    @Test
    void asMarkedTheBowIsLifted() {
        assertEquals("du,udud,du,u", played());
    }

    @Test
    void asItComesItIsLiftedNowhereInThoseBars() {
        assertEquals("dudududu,u", played(new Deviation.AsItComes(2, 2)));
    }
}
