package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

class MirroringTest {
    private static final Scene SCENE = SceneFixture.of(List.of(
            new Cast(Instrument.VIOLIN, Facing.CAMERA_RIGHT), new Cast(Instrument.VIOLIN, Facing.CAMERA_RIGHT)));
    private static final Scene FLIPPED = SCENE.with(SCENE.picture().flipped());

    @Test
    void aMirroredPictureIsThePictureWithItsRowsReversed() {
        BufferedImage image = new FramePainter(SCENE, Layout.of(SCENE)).frame(2);
        BufferedImage flipped = new FramePainter(FLIPPED, Layout.of(FLIPPED)).frame(2);
        int width = image.getWidth();
        for (int y = 0; y < image.getHeight(); y++) {
            int[] row = image.getRGB(0, y, width, 1, null, 0, width);
            int[] reversed = new int[width];
            for (int x = 0; x < width; x++) {
                reversed[x] = row[width - 1 - x];
            }
            assertArrayEquals(reversed, flipped.getRGB(0, y, width, 1, null, 0, width));
        }
    }

    @ParameterizedTest
    @EnumSource(Facing.class)
    void aMirroredFacingHasTheOppositeAzimuth(Facing facing) {
        assertEquals((360 - facing.azimuthDeg()) % 360, facing.mirrored().azimuthDeg());
    }

    @Test
    void seatsAndFacingAreThoseSeenInThePictureAndTheTruthIsTheSame() {
        Layout layout = Layout.of(SCENE);
        Layout flipped = Layout.of(FLIPPED);
        assertEquals(2, flipped.players().size());
        for (int i = 0; i < 2; i++) {
            Player player = flipped.players().get(i);
            SeatBox seat = layout.seats().get(i);
            assertEquals(Optional.of(Facing.CAMERA_LEFT), player.facing());
            assertEquals(
                    new SeatBox(160 - seat.xPx() - seat.widthPx(), seat.yPx(), seat.widthPx(), seat.heightPx()),
                    player.seat());
        }
        assertEquals(Truth.lines(SCENE, layout), Truth.lines(FLIPPED, flipped));
    }

    /** On the camera's axis a left-handed player is the mirror image of a right-handed one, who does the same. */
    @Test
    void aLeftHandedPlayerIsTheMirrorImageOfARightHandedOne() {
        Layout right = Layout.of(alone(false));
        Layout left = Layout.of(alone(true));
        double farthestM = 0;
        for (double timeS = 0; timeS < 5; timeS += 0.25) {
            Camera.Spot one = grip(right, timeS);
            Camera.Spot other = grip(left, timeS);
            double oneAside = (one.xPx() - right.camera().centreXPx()) / one.pxPerM();
            double otherAside = (other.xPx() - left.camera().centreXPx()) / other.pxPerM();
            farthestM = Math.max(farthestM, Math.abs(oneAside));
            assertEquals(-oneAside, otherAside, 1e-9);
        }
        assertTrue(farthestM > 0.1, "farthest from the axis: " + farthestM);
        assertEquals(
                right.performers().get(0).motion(), left.performers().get(0).motion());
    }

    private static Scene alone(boolean leftHanded) {
        return SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA, leftHanded, List.of())));
    }

    private static Camera.Spot grip(Layout layout, double timeS) {
        Performer performer = layout.performers().get(0);
        return layout.camera()
                .see(performer.axes(timeS).room(performer.figure(timeS).grip()));
    }
}
