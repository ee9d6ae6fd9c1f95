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

    /** Shoulders 100 px apart, trunk 200 px long below the middle of the shoulders, 250 px from hips to rim, all times a scale. */
    private static Pose body(double xPx, double yPx, double scale, double leftHandXPx, double leftHandYPx) {
        List<Landmark> body = new ArrayList<>();
        for (int i = 0; i < Pose.LANDMARKS; i++) {
            boolean left = i % 2 == 1;
            double dx = i < 11 ? 0 : left ? 50 : -50;
            double dy = i < 11 ? -50 : i < 23 ? 0 : 200;
            body.add(new Landmark(xPx + scale * dx, yPx + scale * dy, 1, 1));
        }
        body.set(15, new Landmark(leftHandXPx, leftHandYPx, 1, 1));
        Landmark hips = new Landmark(xPx, yPx + scale * 200, 1, 1);
        return new Pose(body, hips, new Landmark(xPx, yPx - scale * 50, 1, 1), 1);
    }

    @Test
    void aSizeIsMeasuredFromTheHipsToTheRim() {
        assertEquals(250, body(300, 200, 1, 0, 0).radiusPx(), 1e-9);
        assertEquals(300, body(300, 200, 1, 0, 0).shouldersXPx(), 1e-9);
        assertEquals(200, body(300, 200, 1, 0, 0).shouldersYPx(), 1e-9);
    }

    /** Half a shoulder width is 0.2 of the radius of 250 px, a little less than 0.22. */
    @Test
    void whoseShouldersHardlyDifferIsTheSamePerson() {
        Pose one = body(300, 200, 1, 0, 0);
        assertTrue(one.sameAs(body(350, 200, 1, 0, 0)));
        assertFalse(one.sameAs(body(360, 200, 1, 0, 0)), "60 of 100 px beside: 0.4 of the trunk in common");
        assertFalse(one.sameAs(body(300, 350, 1, 0, 0)), "in the row before: 0.4 of the trunk in common");
        assertTrue(one.sameAs(body(300, 300, 1, 0, 0)), "0.6 of the trunk in common");
    }

    @Test
    void aSmallPersonWhereAHandIsIsTheHand() {
        Pose player = body(300, 200, 1, 450, 180);
        assertTrue(body(460, 200, 0.6, 0, 0).handOf(player));
        assertFalse(body(460, 200, 0.8, 0, 0).handOf(player), "hardly smaller");
        assertFalse(body(600, 200, 0.6, 0, 0).handOf(player), "150 px from the hand, more than 0.4 of the radius");
    }

    @Test
    void aPoseIsWhole() {
        assertThrows(IllegalArgumentException.class, () -> new Pose(NUMBERED.subList(0, 32), SPOT, SPOT, 1));
        assertThrows(IllegalArgumentException.class, () -> new Pose(NUMBERED, SPOT, SPOT, 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Pose(NUMBERED, SPOT, SPOT, Double.NaN));
    }
}
