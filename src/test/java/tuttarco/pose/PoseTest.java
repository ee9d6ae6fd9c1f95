package tuttarco.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PoseTest {
    /** Every landmark's x is its number in the model's list. */
    private static final List<Landmark> NUMBERED = IntStream.range(0, Pose.LANDMARKS)
            .mapToObj(i -> new Landmark(i, 0, 1, 1))
            .toList();

    private static final Landmark SPOT = new Landmark(0, 0, 1, 1);

    private static final Pose POSE = new Pose(NUMBERED, SPOT, SPOT, 1);

    /** The order of the landmarks: model card of BlazePose GHUM 3D, figure of the topology. */
    @Test
    void namesPointToTheModelsNumbers() {
        assertEquals(0, POSE.nose().xPx());
        assertEquals(7, POSE.leftEar().xPx());
        assertEquals(8, POSE.rightEar().xPx());
        assertEquals(11, POSE.leftShoulder().xPx());
        assertEquals(12, POSE.rightShoulder().xPx());
        assertEquals(13, POSE.leftElbow().xPx());
        assertEquals(14, POSE.rightElbow().xPx());
        assertEquals(15, POSE.leftWrist().xPx());
        assertEquals(16, POSE.rightWrist().xPx());
        assertEquals(19, POSE.leftIndex().xPx());
        assertEquals(20, POSE.rightIndex().xPx());
        assertEquals(23, POSE.leftHip().xPx());
        assertEquals(24, POSE.rightHip().xPx());
    }

    @Test
    void theShouldersAreAsFarApartAsTheyAreSeen() {
        assertEquals(1, POSE.shoulderWidthPx());
        assertEquals(5, new Landmark(1, 2, 1, 1).distancePx(new Landmark(4, 6, 1, 1)));
    }

    @Test
    void aBodyIsUprightWhoseNoseIsAboveBothShoulders() {
        assertTrue(withNoseAndShoulders(10, 20, 11).upright());
        assertFalse(withNoseAndShoulders(10, 20, 9).upright());
        assertFalse(withNoseAndShoulders(10, 9, 20).upright());
    }

    private static Pose withNoseAndShoulders(double noseYPx, double leftYPx, double rightYPx) {
        List<Landmark> body = new ArrayList<>(NUMBERED);
        body.set(0, new Landmark(0, noseYPx, 1, 1));
        body.set(11, new Landmark(0, leftYPx, 1, 1));
        body.set(12, new Landmark(0, rightYPx, 1, 1));
        return new Pose(body, SPOT, SPOT, 1);
    }

    @Test
    void aPoseIsWhole() {
        assertThrows(IllegalArgumentException.class, () -> new Pose(NUMBERED.subList(0, 32), SPOT, SPOT, 1));
        assertThrows(IllegalArgumentException.class, () -> new Pose(NUMBERED, SPOT, SPOT, 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Pose(NUMBERED, SPOT, SPOT, Double.NaN));
    }
}
