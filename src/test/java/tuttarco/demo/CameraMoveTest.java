package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;

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
        assertAt(120, 90, hands, 120, 90, END_S / 2 - 0.001);
        assertAt(80 + 1.5 * 40 + 16, 60 + 1.5 * 30, hands, 120, 90, END_S / 2 + 0.001);
        assertAt(80 + 1.5 * 40 + 16, 60 + 1.5 * 30, hands, 120, 90, END_S);
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
