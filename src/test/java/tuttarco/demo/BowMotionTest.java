package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.strokes.StrokeKind;

class BowMotionTest {
    private static final BowMotion MOTION = new BowMotion(List.of(
            new Travel(0, 1, StrokeKind.DOWN, 0.2, 0.6, false),
            new Travel(1, 2, StrokeKind.UP, 0.6, 0.2, false),
            new Travel(2, 3, StrokeKind.DOWN, 0.2, 0.4, false)));

    private static void assertTravel(double from, double to, Travel travel) {
        assertEquals(from, travel.from(), 1e-12);
        assertEquals(to, travel.to(), 1e-12);
    }

    @Test
    void halfTheBowIsTakenFromAPlaceOn() {
        List<Travel> drawn = MOTION.drawn(0.5, 0.1, 0, 2).travels();
        assertEquals(3, drawn.size());
        assertTravel(0.2, 0.4, drawn.get(0));
        assertTravel(0.4, 0.2, drawn.get(1));
        assertTravel(0.2, 0.4, drawn.get(2));
    }

    @Test
    void outsideTheTimesAllStaysAsItWas() {
        List<Travel> drawn = MOTION.drawn(1, 0.3, 0, 1).travels();
        assertTravel(0.5, 0.9, drawn.get(0));
        assertTravel(0.9, 0.2, drawn.get(1));
        assertTravel(0.2, 0.4, drawn.get(2));
    }

    @Test
    void refusesWhatNoBowDoes() {
        assertThrows(IllegalArgumentException.class, () -> MOTION.drawn(1, 0.5, 0, 1), "beyond the tip");
        assertThrows(IllegalArgumentException.class, () -> MOTION.drawn(1, 0.3, 2, 2), "the last stroke turns round");
    }
}
