package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.bow.Instrument;
import tuttarco.demo.RenderedPlayer;
import tuttarco.pose.PackedModel;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/**
 * In the contract's pictures there is nobody: flow alone is read. A rendered player's body is seen, and with it which way
 * is down, though no facing is declared; the source of truth is our own renderer.
 */
class BodyArmTrackerTest extends ArmTrackerContract {
    /** Slower than this, usable bows a second, a stroke begins or ends. */
    private static final double CLEARLY_BOWING = 0.5;

    /** Share of the clear samples that must have the right sign. */
    private static final double RIGHT = 0.97;

    /** A motion is missed where a new part of the picture is looked at; a player who stays seldom makes it necessary. */
    private static final int MOST_REGIONS = 5;

    private static Optional<PoseNets> nets = Optional.empty();

    @BeforeAll
    static void load() {
        nets = Optional.of(new PoseNets(PackedModel.orSkip()));
    }

    @AfterAll
    static void unload() {
        nets.ifPresent(PoseNets::close);
    }

    /** Each alone in a section of its own: no test learns from another. */
    @Override
    ArmTracker tracker(Player player) {
        return new BodyArmTracker(player, nets.orElseThrow(), new SectionWay(), new PosePace());
    }

    /** Each second somebody is looked for, which takes long. */
    @Override
    double lengthS() {
        return 2;
    }

    private ArmTrack track(Player player, List<Frame> frames, double endS) {
        try (ArmTracker tracker = tracker(player)) {
            frames.forEach(tracker::accept);
            return tracker.finish(endS);
        }
    }

    private static void assertRight(RenderedPlayer rendered, ArmTrack track) {
        int motions = rendered.frames().size() - 1;
        int read = track.samples().size();
        assertTrue(read >= motions - MOST_REGIONS && read <= motions, read + " samples of " + motions + " motions");
        int judged = 0;
        int right = 0;
        for (ArmSample sample : track.samples()) {
            ArmSample.ByBody seen = assertInstanceOf(ArmSample.ByBody.class, sample);
            double downSpeed = rendered.downSpeed(seen.timeS());
            if (Math.abs(downSpeed) > CLEARLY_BOWING) {
                judged++;
                right += seen.velocity() * downSpeed > 0 ? 1 : 0;
                assertTrue(seen.sign() > 0.9, seen.toString());
            }
        }
        assertTrue(judged > 40, "samples to judge: " + judged);
        assertTrue(right >= RIGHT * judged, right + " of " + judged + " right");
    }

    private static Player withSeat(Player player, SeatBox seat) {
        return new Player(
                player.label(),
                player.desk(),
                player.place(),
                player.instrument(),
                seat,
                player.facing(),
                player.leader());
    }

    @ParameterizedTest
    @EnumSource(
            value = Instrument.class,
            names = {"VIOLIN", "CELLO"})
    void downIsSeenWithoutAFacingInThePlainPictureAndInItsMirror(Instrument instrument) {
        try (RenderedPlayer rendered = RenderedPlayer.plain(instrument)) {
            ArmTrack plain = track(rendered.player(), rendered.frames(), rendered.endS());
            assertRight(rendered, plain);
            assertEquals(Optional.of(Hand.RIGHT), plain.bowHand());

            List<Frame> mirrored = rendered.mirrored();
            SeatBox seat = rendered.player().seat();
            int widthPx = mirrored.get(0).grey().cols();
            SeatBox mirroredSeat =
                    new SeatBox(widthPx - seat.xPx() - seat.widthPx(), seat.yPx(), seat.widthPx(), seat.heightPx());
            ArmTrack flipped = track(withSeat(rendered.player(), mirroredSeat), mirrored, rendered.endS());
            mirrored.forEach(frame -> frame.grey().close());
            assertRight(rendered, flipped);
            assertEquals(Optional.of(Hand.LEFT), flipped.bowHand());
        }
    }

    @ParameterizedTest
    @CsvSource({"0.15, 0.15", "-0.15, -0.15"})
    void aSeatDrawnOutOfPlaceGivesTheSameDirections(double right, double down) {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN)) {
            Player player = rendered.player();
            Mat picture = rendered.frames().get(0).grey();
            SeatBox seat = moved(player.seat(), right, down, picture.cols(), picture.rows());
            assertNotEquals(player.seat(), seat);
            assertRight(rendered, track(withSeat(player, seat), rendered.frames(), rendered.endS()));
        }
    }

    /** Moved by shares of its sides, and cut off at the picture's edges. */
    private static SeatBox moved(SeatBox seat, double right, double down, int widthPx, int heightPx) {
        int x = (int) Math.round(seat.xPx() + right * seat.widthPx());
        int y = (int) Math.round(seat.yPx() + down * seat.heightPx());
        int left = Math.max(0, x);
        int top = Math.max(0, y);
        return new SeatBox(
                left, top, Math.min(widthPx, x + seat.widthPx()) - left, Math.min(heightPx, y + seat.heightPx()) - top);
    }

    /** The first memo is of nobody seen yet, the others of a body that is followed. */
    @Test
    void anotherTrackerGoesOnWithABodyThatIsFollowed() {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN)) {
            int n = rendered.frames().size();
            rendered.frames().subList(10, 14).forEach(BodyArmTrackerTest::darken);
            assertGoesOn(rendered.player(), rendered.frames(), List.of(0, 1, 2, 3, 20, n / 2, n - 1, n));
        }
    }

    /** The player comes when the second search was in vain; the third is due two seconds after it, not one. */
    @Test
    void anotherTrackerGoesOnLookingForSomebody() {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN)) {
            rendered.frames().stream().filter(frame -> frame.timeS() < 1.5).forEach(BodyArmTrackerTest::darken);
            assertGoesOn(rendered.player(), rendered.frames(), List.of(10));
        }
    }

    private static void darken(Frame frame) {
        frame.grey().put(Scalar.BLACK);
    }

    /** Shifted by as much as makes a new region necessary, once at a time when poses are still taken often. */
    @Test
    void anotherTrackerGoesOnWithABodyThatMoved() {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN)) {
            List<Frame> frames = rendered.frames().stream()
                    .map(frame -> frame.index() < 20 ? frame : shifted(frame, 60))
                    .toList();
            assertGoesOn(rendered.player(), frames, List.of(19, 21, 30, 45));
            frames.subList(20, frames.size()).forEach(frame -> frame.grey().close());
        }
    }

    private static Frame shifted(Frame frame, int px) {
        Mat moved = new Mat();
        opencv_core.copyMakeBorder(frame.grey(), moved, 0, 0, px, 0, opencv_core.BORDER_REPLICATE);
        return new Frame(frame.index(), frame.timeS(), moved);
    }

    @Test
    void aClipOfOneFrameShowsAPlayerButNoMotion() {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN)) {
            assertEquals(
                    List.of(),
                    track(rendered.player(), rendered.frames().subList(0, 1), 0.04)
                            .samples());
        }
    }

    @Test
    void aPlayerIsLostWhenTheLightGoesOut() {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN);
                ArmTracker tracker = tracker(rendered.player());
                Mat black = Mat.zeros(400, 480, opencv_core.CV_8UC1).asMat()) {
            rendered.frames().subList(0, 50).forEach(tracker::accept);
            for (Frame frame : rendered.frames().subList(50, 80)) {
                tracker.accept(new Frame(frame.index(), frame.timeS(), black));
            }
            List<ArmSample> samples = tracker.finish(3.2).samples();
            assertEquals(79, samples.size());
            // the 50th motion is the first that ends in the dark
            for (int i = 0; i < 79; i++) {
                assertEquals(
                        i >= 49,
                        samples.get(i) instanceof ArmSample.Lost,
                        samples.get(i).toString());
            }
            assertEquals(ArmSample.Reason.TOO_DARK, ((ArmSample.Lost) samples.get(78)).reason());
        }
    }

    @Test
    void aPlayerOnTooFewFramesIsLost() {
        try (RenderedPlayer rendered = RenderedPlayer.brief(Instrument.VIOLIN)) {
            // 25 frames a second become five
            List<Frame> few = rendered.frames().stream()
                    .filter(frame -> frame.index() % 5 == 0)
                    .toList();
            ArmTrack track = track(rendered.player(), few, rendered.endS());
            assertEquals(few.size() - 1, track.samples().size());
            for (ArmSample sample : track.samples()) {
                assertEquals(
                        ArmSample.Reason.TOO_FEW_FRAMES,
                        assertInstanceOf(ArmSample.Lost.class, sample).reason());
            }
        }
    }
}
