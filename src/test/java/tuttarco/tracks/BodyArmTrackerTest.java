package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.bow.Instrument;
import tuttarco.demo.RenderedPlayer;
import tuttarco.pose.PackedModel;
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

    private static Optional<ArmTrackers> trackers = Optional.empty();

    @BeforeAll
    static void load() {
        trackers = Optional.of(ArmTrackers.byBody(PackedModel.orSkip()));
    }

    @AfterAll
    static void unload() {
        trackers.ifPresent(ArmTrackers::close);
    }

    @Override
    ArmTracker tracker(Player player) {
        return trackers.orElseThrow().of(player);
    }

    private ArmTrack track(Player player, List<Frame> frames, double endS) {
        try (ArmTracker tracker = tracker(player)) {
            frames.forEach(tracker::accept);
            return tracker.finish(endS);
        }
    }

    private static void assertRight(RenderedPlayer rendered, ArmTrack track) {
        assertEquals(rendered.frames().size() - 1, track.samples().size());
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
        try (RenderedPlayer rendered = RenderedPlayer.of(instrument)) {
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

    @Test
    void aSeatDrawnOutOfPlaceGivesTheSameDirections() {
        try (RenderedPlayer rendered = RenderedPlayer.of(Instrument.VIOLIN)) {
            Player player = rendered.player();
            ArmTrack inPlace = track(player, rendered.frames(), rendered.endS());
            Mat picture = rendered.frames().get(0).grey();
            for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                SeatBox moved = moved(player.seat(), 0.15 * way[0], 0.15 * way[1], picture.cols(), picture.rows());
                ArmTrack track = track(withSeat(player, moved), rendered.frames(), rendered.endS());
                assertRight(rendered, track);
                assertEquals(inPlace.samples().size(), track.samples().size());
                for (int i = 0; i < track.samples().size(); i++) {
                    ArmSample.Seen was = (ArmSample.Seen) inPlace.samples().get(i);
                    ArmSample.Seen is = (ArmSample.Seen) track.samples().get(i);
                    if (Math.abs(rendered.downSpeed(is.timeS())) > CLEARLY_BOWING) {
                        assertTrue(was.velocity() * is.velocity() > 0, moved + ": " + was + " became " + is);
                    }
                }
            }
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

    @Test
    void aClipOfOneFrameShowsAPlayerButNoMotion() {
        try (RenderedPlayer rendered = RenderedPlayer.of(Instrument.VIOLIN)) {
            assertEquals(
                    List.of(),
                    track(rendered.player(), rendered.frames().subList(0, 1), 0.04)
                            .samples());
        }
    }

    @ParameterizedTest
    @CsvSource({"6, TOO_FEW_FRAMES"})
    void aPlayerOnTooFewFramesIsLost(int every, ArmSample.Reason reason) {
        try (RenderedPlayer rendered = RenderedPlayer.of(Instrument.VIOLIN)) {
            List<Frame> few = rendered.frames().stream()
                    .filter(frame -> frame.index() % every == 0)
                    .toList();
            ArmTrack track = track(rendered.player(), few, rendered.endS());
            assertEquals(few.size() - 1, track.samples().size());
            for (ArmSample sample : track.samples()) {
                assertEquals(
                        reason, assertInstanceOf(ArmSample.Lost.class, sample).reason());
            }
        }
    }
}
