package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ConductorTest {
    private static final Scene SCENE = SceneFixture.listed("conductor").scene();
    private static final Conductor CONDUCTOR = Conductor.of(SCENE);
    private static final double BEAT_S = 60 / SCENE.tempoBpm();

    @Test
    void theHandIsLowOnEveryBeatHighestBeforeTheFirstAndFarthestOutOnTheThird() {
        double[] between = new double[4];
        for (int beat = 0; beat < 4; beat++) {
            Vec on = CONDUCTOR.hand(Scene.LEAD_IN_S + beat * BEAT_S);
            between[beat] =
                    CONDUCTOR.hand(Scene.LEAD_IN_S + (beat + 0.5) * BEAT_S).z();
            Vec next = CONDUCTOR.hand(Scene.LEAD_IN_S + (beat + 1) * BEAT_S);
            assertTrue(between[beat] > Math.max(on.z(), next.z()), "after beat " + (beat + 1));
        }
        assertTrue(between[3] > Math.max(between[0], Math.max(between[1], between[2])));
        assertTrue(x(2) > x(0) && x(0) > x(1), "out " + x(2) + ", down " + x(0) + ", in " + x(1));
    }

    @Test
    void everyBarIsBeatenAlike() {
        for (double timeS = 0; timeS < 3; timeS += 0.1) {
            Vec one = CONDUCTOR.hand(timeS);
            Vec other = CONDUCTOR.hand(timeS + 4 * BEAT_S);
            assertEquals(0, one.minus(other).length(), 1e-9);
        }
    }

    /** At some time a third of the bow arm of each of the two in the middle is behind the conductor's; never the others'. */
    @Test
    void theArmsCrossTheBowArmsOfTheTwoInTheMiddle() {
        Layout layout = Layout.of(SCENE);
        Sight sight = new Sight(SCENE, layout);
        Sight without = new Sight(SCENE.with(Conditions.EASY), layout);
        assertEquals(4, layout.performers().size());
        for (Performer performer : layout.performers()) {
            boolean middle = performer.index() == 1 || performer.index() == 2;
            double most = 0;
            for (int look = 0; look < SCENE.durationS() * Sight.LOOKS_PER_S; look++) {
                most = Math.max(most, without.share(performer, look) - sight.share(performer, look));
            }
            assertTrue(middle ? most > 1 / 3.0 : most == 0, performer.label() + ": " + most);
        }
    }

    private static double x(int beat) {
        return CONDUCTOR.hand(Scene.LEAD_IN_S + beat * BEAT_S).x();
    }
}
