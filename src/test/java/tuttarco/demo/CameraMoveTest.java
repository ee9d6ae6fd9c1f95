package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class CameraMoveTest {
    private static final Scene STILL = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA)));
    private static final double END_S = STILL.durationS();

    /** The fixture's picture has 160 x 120 pixels. A point a quarter of the width from the middle goes twice as far out. */
    @Test
    void aDriftGoesEvenlyFromTheFirstFramingToTheLast() {
        Hands hands = moving(new CameraMove.Drifts(new Framing(1, 0.1, -0.2)));
        assertAt(120, 60, hands, 120, 60, 0);
        assertAt(80 + 1.5 * 40 + 8, 60 - 12, hands, 120, 60, END_S / 2);
        assertAt(80 + 2 * 40 + 16, 60 - 24, hands, 120, 60, END_S);
    }

    @Test
    void aCutLeavesTheFirstHalfAsItIsAndFramesTheSecondAnew() {
        Hands hands = moving(new CameraMove.Cuts(new Framing(0.5, 0.1, 0), List.of(0.5), 0));
        assertAt(120, 90, hands, 120, 90, 0);
        assertEquals(0, hands.otherView(END_S / 2 - 0.001), 1e-12);
        assertEquals(1, hands.otherView(END_S / 2 + 0.001), 1e-12);
        Point2D moved = hands.elsewhere(END_S).transform(new Point2D.Double(120, 90), null);
        assertEquals(80 + 1.5 * 40 + 16, moved.getX(), 1e-9);
        assertEquals(60 + 1.5 * 30, moved.getY(), 1e-9);
    }

    @Test
    void aDissolveMixesTheOtherViewInEvenlyAndOutAgain() {
        CameraMove move = new CameraMove.Cuts(new Framing(0.5, 0.1, 0), List.of(0.3, 0.7), 0.1);
        double[] shares = {0, 0.25, 0.275, 0.3, 0.35, 0.5, 0.65, 0.675, 0.75, 1};
        double[] other = {0, 0, 0.25, 0.5, 1, 1, 1, 0.75, 0, 0};
        for (int i = 0; i < shares.length; i++) {
            assertEquals(other[i], move.otherView(shares[i]), 1e-9, "at " + shares[i]);
        }
    }

    /** As far as the truth's looks tell. */
    @Test
    void inTheOtherViewNobodyIsSeen() {
        Scene scene = STILL.with(
                STILL.conditions().moved(new CameraMove.Cuts(new Framing(0.5, 0.1, 0), List.of(0.4, 0.6), 0)));
        Layout layout = Layout.of(scene);
        List<Stroke> unseen = Truth.of(layout.performers().get(0), new Sight(scene, layout)).stream()
                .filter(s -> s.kind() == StrokeKind.UNSEEN)
                .toList();
        assertEquals(1, unseen.size(), unseen.toString());
        assertEquals(0.4 * END_S, unseen.get(0).startS(), 1 / Sight.LOOKS_PER_S);
        assertEquals(0.6 * END_S, unseen.get(0).endS(), 1 / Sight.LOOKS_PER_S);
    }

    @Test
    void inAnotherTakeTheBowIsElsewhereAndGoesTheOtherWay() {
        Scene scene = SceneFixture.listed("jump-cut").scene();
        Layout layout = Layout.of(scene);
        List<Travel> travels = layout.performers().get(0).motion().travels();
        List<Travel> leaps = IntStream.range(1, travels.size())
                .filter(i -> travels.get(i).from() != travels.get(i - 1).to())
                .mapToObj(travels::get)
                .toList();
        assertEquals(1, leaps.size());
        double cutS = leaps.get(0).startS();
        List<Stroke> truth = Truth.of(layout.performers().get(0), new Sight(scene, layout));
        Stroke before = truth.stream()
                .filter(s -> Math.abs(s.endS() - cutS) < 1e-9)
                .findFirst()
                .orElseThrow();
        Stroke after = truth.stream()
                .filter(s -> Math.abs(s.startS() - cutS) < 1e-9)
                .findFirst()
                .orElseThrow();
        assertEquals(StrokeKind.UP, before.kind(), "as marked");
        assertEquals(StrokeKind.UP, after.kind(), "a down-bow is marked");
    }

    /** Where the camera has moved away from the middle, the room must still fill the picture. */
    @Test
    void thereIsRoomForAllThatTheCameraEverShows() {
        assertEquals(8, moving(CameraMove.NONE).farthestPx());
        assertEquals(
                8 + 48, moving(new CameraMove.Drifts(new Framing(0, 0.3, 0.1))).farthestPx());
        assertEquals(
                8 + 36,
                moving(new CameraMove.Cuts(new Framing(0, 0.1, -0.3), List.of(0.5), 0))
                        .farthestPx());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pan", "zoom-pan"})
    void thePlayersDriftByAboutOneAndAHalfShoulderWidths(String name) {
        Scene scene = SceneFixture.listed(name).scene();
        Layout layout = Layout.of(scene);
        assertEquals(2, layout.performers().size());
        for (Performer performer : layout.performers()) {
            Camera.Spot chest = layout.camera().see(performer.floor().plus(new Vec(0, 0, 1)));
            Point2D first = new Point2D.Double(chest.xPx(), chest.yPx());
            Point2D last = new Hands(scene).at(scene.durationS()).transform(first, null);
            double widths = first.distance(last) / (2 * Posture.HALF_SHOULDERS_M * chest.pxPerM());
            assertTrue(widths > 1 && widths < 2.2, performer.label() + " drifts by " + widths);
        }
    }

    private static Hands moving(CameraMove move) {
        return new Hands(STILL.with(Conditions.EASY.moved(move)));
    }

    private static void assertAt(double xPx, double yPx, Hands hands, double fromXPx, double fromYPx, double timeS) {
        Point2D at = hands.at(timeS).transform(new Point2D.Double(fromXPx, fromYPx), null);
        assertEquals(xPx, at.getX(), 1e-9);
        assertEquals(yPx, at.getY(), 1e-9);
    }
}
