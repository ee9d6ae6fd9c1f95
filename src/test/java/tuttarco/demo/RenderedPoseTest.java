package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.pose.PackedModel;
import tuttarco.pose.PersonFinder;
import tuttarco.pose.Pose;
import tuttarco.pose.PoseNet;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/** The pose model on rendered players, whose joints are known: the source of truth is our own renderer. */
class RenderedPoseTest {
    /** Any moment within the music, seconds. */
    private static final double AT_S = 3;

    /** How far the right wrist may be from where it was drawn, shoulder widths; measured: 0.06 and 0.09. */
    private static final double WRIST = 0.2;

    @ParameterizedTest
    @ValueSource(strings = {"plain-violin", "plain-cello"})
    void theWristOfAPlayerInASeatIsFoundWhereItWasDrawn(String name) {
        Scene scene = SceneFixture.listed(name).scene();
        Layout layout = Layout.of(scene);
        try (PoseNet net = PackedModel.orSkip().net();
                Mat grey = grey(scene, layout)) {
            Pose pose = new PersonFinder(net)
                    .in(new Frame(0, AT_S, grey), layout.seats().get(0))
                    .orElseThrow();

            Performer performer = layout.performers().get(0);
            Limb arm = performer.figure(AT_S).right();
            Camera.Spot wrist = layout.camera().see(performer.axes(AT_S).room(arm.wrist()));
            Limb other = performer.figure(AT_S).left();
            double shouldersPx =
                    wrist.pxPerM() * arm.shoulder().minus(other.shoulder()).length();
            double offPx = Math.hypot(
                    pose.rightWrist().xPx() - wrist.xPx(), pose.rightWrist().yPx() - wrist.yPx());
            assertTrue(offPx < WRIST * shouldersPx, offPx + " px off, shoulders " + shouldersPx + " px apart");
            assertTrue(pose.person() > 0.9, "a person: " + pose.person());
            assertTrue(pose.upright());
        }
    }

    @Test
    void nobodyIsFoundInAnEmptyCorner() {
        Scene scene = SceneFixture.listed("plain-violin").scene();
        Layout layout = Layout.of(scene);
        try (PoseNet net = PackedModel.orSkip().net();
                Mat grey = grey(scene, layout)) {
            assertEquals(
                    Optional.empty(), new PersonFinder(net).in(new Frame(0, AT_S, grey), new SeatBox(2, 2, 60, 80)));
        }
    }

    private static Mat grey(Scene scene, Layout layout) {
        return GreyPicture.of(new FramePainter(scene, layout).frame(AT_S));
    }
}
