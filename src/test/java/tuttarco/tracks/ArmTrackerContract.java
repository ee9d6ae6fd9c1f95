package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/**
 * What every arm tracker does. The seat is a textured ground on which a textured disc, the bow hand, swings along the
 * down-bow's way; where it is at any time is known in closed form.
 */
abstract class ArmTrackerContract {
    private static final int SIDE_PX = 200;
    private static final double SWING_PX = 30;
    private static final double PERIOD_S = 1.6;

    abstract ArmTracker tracker(Player player);

    /** Length of the clips, seconds; shorter for trackers that take long. */
    double lengthS() {
        return 6;
    }

    static Player player(Instrument instrument, Facing facing, SeatBox seat) {
        return new Player("player", 1, Place.OUTSIDE, instrument, seat, Optional.of(facing), false);
    }

    /** The hand's way from the frog as a share of the swing: 0.5 - 0.5 cos; down while the sine is positive. */
    private static double run(double timeS) {
        return 0.5 - 0.5 * Math.cos(2 * Math.PI * timeS / PERIOD_S);
    }

    private ArmTrack swing(Player player, double framesPerS, double noise) {
        int frames = (int) (lengthS() * framesPerS);
        try (ArmTracker tracker = tracker(player)) {
            swing(player, frames, framesPerS, noise, tracker::accept);
            return tracker.finish(frames / framesPerS);
        }
    }

    /** Shows frames of a swinging hand; each is valid until the next. */
    private static void swing(Player player, int frames, double framesPerS, double noise, Consumer<Frame> to) {
        DownBow down = DownBow.of(player.instrument(), player.facing().orElseThrow());
        Random random = new Random(7);
        int[][] ground = texture(random);
        int[][] hand = texture(random);
        try (Mat grey = new Mat(SIDE_PX, SIDE_PX, opencv_core.CV_8UC1)) {
            for (int i = 0; i < frames; i++) {
                double timeS = i / framesPerS;
                double x = SIDE_PX * (0.5 + 0.1 * down.x()) + 2 * SWING_PX * down.x() * run(timeS);
                double y = SIDE_PX * 0.5 + 2 * SWING_PX * down.y() * run(timeS);
                paint(grey, ground, hand, x, y, noise, random);
                to.accept(new Frame(i, timeS, grey));
            }
        }
    }

    private static int[][] texture(Random random) {
        int[][] coarse = new int[SIDE_PX / 5 + 2][SIDE_PX / 5 + 2];
        for (int[] row : coarse) {
            for (int x = 0; x < row.length; x++) {
                row[x] = 60 + random.nextInt(140);
            }
        }
        return coarse;
    }

    private static double shade(int[][] texture, double x, double y) {
        double u = Math.floorMod((int) Math.floor(x), SIDE_PX) / 5.0 + (x - Math.floor(x)) / 5;
        double v = Math.floorMod((int) Math.floor(y), SIDE_PX) / 5.0 + (y - Math.floor(y)) / 5;
        int ui = (int) u;
        int vi = (int) v;
        double fu = u - ui;
        double fv = v - vi;
        return (1 - fv) * ((1 - fu) * texture[vi][ui] + fu * texture[vi][ui + 1])
                + fv * ((1 - fu) * texture[vi + 1][ui] + fu * texture[vi + 1][ui + 1]);
    }

    private static void paint(
            Mat grey, int[][] ground, int[][] hand, double cx, double cy, double noise, Random random) {
        try (UByteIndexer at = grey.createIndexer()) {
            for (int y = 0; y < SIDE_PX; y++) {
                for (int x = 0; x < SIDE_PX; x++) {
                    boolean inHand = Math.hypot(x - cx, y - cy) < 18;
                    double value = inHand ? shade(hand, x - cx + 100, y - cy + 100) : shade(ground, x, y);
                    at.put(y, x, (int) Math.max(0, Math.min(255, value + noise * random.nextGaussian())));
                }
            }
        }
    }

    private static final SeatBox ALL = new SeatBox(0, 0, SIDE_PX, SIDE_PX);

    /** Share of samples with the right sign, away from the turns. */
    private double rightShare(ArmTrack track) {
        int right = 0;
        int judged = 0;
        for (ArmSample sample : track.samples()) {
            double sine = Math.sin(2 * Math.PI * sample.timeS() / PERIOD_S);
            if (Math.abs(sine) > 0.3) {
                judged++;
                right += ((ArmSample.Seen) sample).velocity() * sine > 0 ? 1 : 0;
            }
        }
        assertTrue(judged > 20 * lengthS(), "samples to judge: " + judged);
        return (double) right / judged;
    }

    @ParameterizedTest
    @EnumSource(
            value = Facing.class,
            names = {"CAMERA", "CAMERA_LEFT", "AWAY", "AWAY_RIGHT"})
    void aHandThatLeavesTheStringsIsADownBow(Facing facing) {
        for (Instrument instrument : List.of(Instrument.VIOLIN, Instrument.CELLO)) {
            ArmTrack track = swing(player(instrument, facing, ALL), 30, 2);
            assertEquals(1, rightShare(track), 0.02, instrument + " " + facing);
            for (ArmSample sample : track.samples()) {
                assertTrue(((ArmSample.Seen) sample).sign() > 0.8, sample.toString());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {24, 25, 50, 60})
    void turnsLieWhereTheHandTurnsAtAnyFrameRate(double framesPerS) {
        ArmTrack track = swing(player(Instrument.VIOLIN, Facing.CAMERA, ALL), framesPerS, 2);
        List<Double> turnsS = new ArrayList<>();
        for (int i = 1; i < track.samples().size(); i++) {
            ArmSample.Seen a = (ArmSample.Seen) track.samples().get(i - 1);
            ArmSample.Seen b = (ArmSample.Seen) track.samples().get(i);
            if (a.velocity() * b.velocity() < 0 && a.timeS() > 0.2) {
                turnsS.add(a.timeS() + (b.timeS() - a.timeS()) * a.velocity() / (a.velocity() - b.velocity()));
            }
        }
        assertEquals((int) (lengthS() / (PERIOD_S / 2)), turnsS.size(), "turns at " + turnsS);
        for (int k = 0; k < turnsS.size(); k++) {
            assertEquals((k + 1) * PERIOD_S / 2, turnsS.get(k), 0.012, "turn " + k);
        }
    }

    @Test
    void samplesAreInTimeOrder() {
        ArmTrack track = swing(player(Instrument.VIOLIN, Facing.CAMERA, ALL), 30, 0);
        assertEquals(30 * lengthS() - 1, track.samples().size(), "one sample between each two frames, at 30 a second");
        for (int i = 1; i < track.samples().size(); i++) {
            assertTrue(
                    track.samples().get(i).timeS() > track.samples().get(i - 1).timeS());
        }
        assertEquals(lengthS(), track.endS(), 1e-9);
    }

    @Test
    void aBlackPictureShowsNoArm() {
        try (ArmTracker tracker = tracker(player(Instrument.VIOLIN, Facing.CAMERA, ALL));
                Mat black = Mat.zeros(SIDE_PX, SIDE_PX, opencv_core.CV_8UC1).asMat()) {
            for (int i = 0; i < 30; i++) {
                tracker.accept(new Frame(i, i / 30.0, black));
            }
            ArmTrack track = tracker.finish(1);
            assertEquals(29, track.samples().size());
            for (ArmSample sample : track.samples()) {
                assertEquals(
                        ArmSample.Reason.TOO_DARK,
                        assertInstanceOf(ArmSample.Lost.class, sample).reason());
            }
        }
    }

    @Test
    void aTinySeatShowsNoArm() {
        ArmTrack track = swing(player(Instrument.VIOLIN, Facing.CAMERA, new SeatBox(0, 0, 20, 20)), 30, 0);
        assertEquals(30 * lengthS() - 1, track.samples().size());
        assertEquals(
                ArmSample.Reason.TOO_SMALL,
                assertInstanceOf(ArmSample.Lost.class, track.samples().get(0)).reason());
    }

    @Test
    void tooFewFramesShowNoArm() {
        ArmTrack track = swing(player(Instrument.VIOLIN, Facing.CAMERA, ALL), 8, 0);
        assertEquals(8 * lengthS() - 1, track.samples().size());
        for (ArmSample sample : track.samples()) {
            assertEquals(
                    ArmSample.Reason.TOO_FEW_FRAMES,
                    assertInstanceOf(ArmSample.Lost.class, sample).reason());
        }
    }

    private static byte[] noted(ArmTracker tracker) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            tracker.note(new WrittenMemo(bytes));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return bytes.toByteArray();
    }

    /**
     * Another tracker that goes on from what was noted after any of the frames comes to the same track, number by number,
     * and notes the same at the end.
     *
     * @param after how many frames were seen before what was seen was noted
     */
    void assertGoesOn(Player player, List<Frame> frames, List<Integer> after) {
        double endS = frames.get(frames.size() - 1).timeS();
        List<byte[]> notes = new ArrayList<>();
        ArmTrack whole;
        try (ArmTracker tracker = tracker(player)) {
            notes.add(noted(tracker));
            for (Frame frame : frames) {
                tracker.accept(frame);
                notes.add(noted(tracker));
            }
            whole = tracker.finish(endS);
        }
        assertTrue(whole.samples().size() > frames.size() / 3, whole.toString());
        for (int k : after) {
            try (ArmTracker tracker = tracker(player)) {
                tracker.note(new ReadMemo(new ByteArrayInputStream(notes.get(k))));
                frames.subList(0, k).forEach(tracker::recall);
                frames.subList(k, frames.size()).forEach(tracker::accept);
                assertArrayEquals(notes.get(frames.size()), noted(tracker), "after " + k);
                assertEquals(whole, tracker.finish(endS), "after " + k);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        }
    }

    /** At 50 frames a second some are passed over: the memo then lies between two that are used. A few are dark. */
    @ParameterizedTest
    @ValueSource(doubles = {25, 50})
    void anotherTrackerGoesOnFromAnyFrame(double framesPerS) {
        Player player = player(Instrument.VIOLIN, Facing.CAMERA, ALL);
        List<Frame> frames = new ArrayList<>();
        Consumer<Frame> keep =
                f -> frames.add(new Frame(f.index(), f.timeS(), f.grey().clone()));
        swing(player, 24, framesPerS, 2, keep);
        frames.subList(8, 12).forEach(frame -> frame.grey().put(Scalar.BLACK));
        assertGoesOn(player, frames, IntStream.rangeClosed(0, 24).boxed().toList());
        frames.forEach(frame -> frame.grey().close());
    }

    @Test
    void aMemoCutOffAnywhereIsRefused() {
        Player player = player(Instrument.VIOLIN, Facing.CAMERA, ALL);
        byte[] noted;
        try (ArmTracker tracker = tracker(player)) {
            swing(player, 6, 30, 2, tracker::accept);
            noted = noted(tracker);
        }
        for (int length = 0; length < noted.length; length++) {
            byte[] part = Arrays.copyOf(noted, length);
            try (ArmTracker tracker = tracker(player)) {
                assertThrows(IOException.class, () -> tracker.note(new ReadMemo(new ByteArrayInputStream(part))));
            }
        }
    }

    @Test
    void aClipWithoutFramesGivesAnEmptyTrack() {
        try (ArmTracker tracker = tracker(player(Instrument.VIOLIN, Facing.CAMERA, ALL))) {
            assertEquals(List.of(), tracker.finish(0).samples());
        }
    }
}
