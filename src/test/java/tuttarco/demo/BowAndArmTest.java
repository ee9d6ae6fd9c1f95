package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class BowAndArmTest {
    private static final Travel DOWN = new Travel(1, 3, StrokeKind.DOWN, 0.2, 0.8, false);

    @Test
    void aStrokeIsStillAtBothEndsAndHalfWayInTheMiddle() {
        assertEquals(0.2, DOWN.place(1), 1e-12);
        assertEquals(0.5, DOWN.place(2), 1e-12);
        assertEquals(0.8, DOWN.place(3), 1e-12);
        assertEquals(0, DOWN.speed(1), 1e-12);
        assertEquals(0, DOWN.speed(3), 1e-12);
        // level speed of a trapezoid with rise r = 0.08 of its length: distance / (length (1 - r))
        assertEquals(0.6 / (2 * 0.92), DOWN.speed(2), 1e-12);
    }

    @Test
    void speedIsTheSlopeOfPlace() {
        double h = 1e-5;
        for (double t = 1.01; t < 2.99; t += 0.013) {
            assertEquals((DOWN.place(t + h) - DOWN.place(t - h)) / (2 * h), DOWN.speed(t), 1e-6);
        }
    }

    @Test
    void theArmKeepsItsLengths() {
        Limb limb = Limb.reaching(new Vec(0.2, 0, 1), new Vec(0.3, 0.4, 0.9), new Vec(1, 0, -1));
        assertEquals(Limb.UPPER_M, limb.elbow().minus(limb.shoulder()).length(), 1e-12);
        assertEquals(Limb.FORE_M, limb.wrist().minus(limb.elbow()).length(), 1e-12);
        Limb far = Limb.reaching(new Vec(0, 0, 0), new Vec(3, 0, 0), new Vec(0, 0, -1));
        assertEquals(Limb.reachM(), far.wrist().length(), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(Instrument.class)
    void theHandLeavesTheStringsOnADownBowAtEveryFacing(Instrument instrument) {
        Posture posture = Posture.of(instrument);
        assertTrue(posture.farthestM() > 0.35, "the arm reaches most of a bow: " + posture.farthestM());
        assertEquals(8, Facing.values().length);
        for (Facing facing : Facing.values()) {
            Scene scene = SceneFixture.of(List.of(new Cast(instrument, facing)));
            Performer p = Layout.of(scene).performers().get(0);
            double frogM = fromStrings(p, 0);
            double middleM = fromStrings(p, 0.5);
            double tipM = fromStrings(p, 1);
            assertTrue(frogM < middleM && middleM < tipM, frogM + " " + middleM + " " + tipM);
        }
    }

    @Test
    void truthCoversTheClipWithoutGaps() {
        Scene scene = SceneFixture.of(List.of(
                new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Turned(2, 3), new Deviation.Lags(80)),
                new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Free())));
        Layout layout = Layout.of(scene);
        Sight sight = new Sight(scene, layout);
        assertEquals(2, layout.performers().size());
        for (Performer performer : layout.performers()) {
            List<Stroke> strokes = Truth.of(performer, sight);
            assertTrue(strokes.size() >= 4);
            assertEquals(0, strokes.get(0).startS(), 1e-12);
            assertEquals(scene.durationS(), strokes.get(strokes.size() - 1).endS(), 1e-9);
            for (int i = 1; i < strokes.size(); i++) {
                assertEquals(strokes.get(i - 1).endS(), strokes.get(i).startS(), 1e-9);
            }
        }
    }

    @Test
    void aTurnedPlayerGoesTheOtherWayInThoseBarsOnly() {
        Scene scene = SceneFixture.of(List.of(
                new Cast(Instrument.VIOLIN, Facing.CAMERA),
                new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Turned(2, 2))));
        Layout layout = Layout.of(scene);
        BowMotion with = layout.performers().get(0).motion();
        BowMotion turned = layout.performers().get(1).motion();
        double barS = 4 * 60 / scene.tempoBpm();
        double middleOfBeatS = 30 / scene.tempoBpm();
        double firstBarS = Scene.LEAD_IN_S + middleOfBeatS;
        assertEquals(with.at(firstBarS).kind(), turned.at(firstBarS).kind());
        assertEquals(StrokeKind.DOWN, with.at(firstBarS + barS).kind());
        assertEquals(StrokeKind.UP, turned.at(firstBarS + barS).kind());
        assertEquals(
                with.at(firstBarS + 2 * barS).kind(),
                turned.at(firstBarS + 2 * barS).kind());
    }

    private static double fromStrings(Performer p, double bow) {
        Figure f = p.figure(bow, 0, 0);
        return p.axes(0)
                .room(f.grip())
                .minus(p.axes(0).room(f.posture().contact().plus(f.sway())))
                .length();
    }
}
