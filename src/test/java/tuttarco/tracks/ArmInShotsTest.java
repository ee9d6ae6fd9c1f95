package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;
import tuttarco.video.Shot;
import tuttarco.video.Shot.View;

class ArmInShotsTest {
    private static final Player PLAYER =
            ArmTrackerContract.player(Instrument.VIOLIN, Facing.CAMERA, new SeatBox(0, 0, 100, 100));

    private final List<Told> made = new ArrayList<>();

    /** Says what it was told: a sample a frame but the first, whose velocity is the number of frames so far. */
    private static final class Told implements ArmTracker {
        private final Hand hand;
        private final List<ArmSample> samples = new ArrayList<>();
        private int frames;
        private int settled;
        private int closed;
        private double endS;

        Told(Hand hand) {
            this.hand = hand;
        }

        @Override
        public void accept(Frame frame) {
            if (frames++ > 0) {
                samples.add(new ArmSample.ByFlow(frame.timeS(), frames, 0.1, 1));
            }
        }

        @Override
        public void recall(Frame frame) {
            throw new IllegalStateException("nothing is resumed here");
        }

        @Override
        public void note(Memo memo) {
            throw new IllegalStateException("nothing is noted here");
        }

        @Override
        public void settle() {
            settled++;
        }

        @Override
        public ArmTrack finish(double toS) {
            endS = toS;
            return new ArmTrack(PLAYER, 0, toS, samples, Optional.of(new Body(hand, 40)));
        }

        @Override
        public void close() {
            closed++;
        }
    }

    private ArmTracker tracker() {
        return new ArmInShots(PLAYER, shot -> {
            made.add(new Told(made.isEmpty() ? Hand.LEFT : Hand.RIGHT));
            return made.get(made.size() - 1);
        });
    }

    private static void show(ArmTracker tracker, Shot shot, int... frames) {
        try (Mat grey = new Mat()) {
            for (int i : frames) {
                tracker.accept(new Frame(i, i, grey, shot));
            }
        }
    }

    @Test
    void eachShotOfTheFirstViewIsFollowedAnewAndNoOther() {
        Shot other = new Shot(3, View.OTHER);
        Shot mixed = new Shot(5, View.DISSOLVE);
        Shot back = new Shot(6, View.FIRST);
        ArmTrack track;
        try (ArmTracker tracker = tracker()) {
            show(tracker, Shot.FIRST, 0, 1, 2);
            show(tracker, other, 3, 4);
            show(tracker, mixed, 5);
            show(tracker, back, 6, 7, 8, 9);
            tracker.settle();
            track = tracker.finish(10);
        }
        assertEquals(2, made.size());
        assertEquals(List.of(3.0, 10.0), made.stream().map(m -> m.endS).toList());
        assertEquals(List.of(1, 1), made.stream().map(m -> m.settled).toList());
        assertEquals(List.of(1, 1), made.stream().map(m -> m.closed).toList());
        assertEquals(List.of(Shot.FIRST, other, mixed, back), track.shots());
        assertEquals(10, track.endS(), 1e-12);
        assertEquals(
                List.of(
                        new ArmSample.ByFlow(1, 2, 0.1, 1),
                        new ArmSample.ByFlow(2, 3, 0.1, 1),
                        new ArmSample.Lost(3, ArmSample.Reason.OTHER_VIEW),
                        new ArmSample.Lost(4, ArmSample.Reason.OTHER_VIEW),
                        new ArmSample.Lost(5, ArmSample.Reason.OTHER_VIEW),
                        new ArmSample.ByFlow(7, 2, 0.1, 1),
                        new ArmSample.ByFlow(8, 3, 0.1, 1),
                        new ArmSample.ByFlow(9, 4, 0.1, 1)),
                track.samples());
        assertEquals(Optional.of(Hand.RIGHT), track.bowHand(), "as the longer shot shows");
    }

    @Test
    void aShotOfOneFrameIsLost() {
        Shot flash = new Shot(2, View.FIRST);
        try (ArmTracker tracker = tracker()) {
            show(tracker, Shot.FIRST, 0, 1);
            show(tracker, flash, 2);
            assertEquals(
                    List.of(new ArmSample.ByFlow(1, 2, 0.1, 1), new ArmSample.Lost(2, ArmSample.Reason.TOO_FEW_FRAMES)),
                    tracker.finish(3).samples());
        }
    }

    @Test
    void cutsLieBetweenSamples() {
        ArmTrack track =
                new ArmTrack(PLAYER, 0, 9, List.of(), Optional.empty(), List.of(Shot.FIRST, new Shot(4, View.FIRST)));
        assertEquals(Optional.of(4.0), track.cutBetween(3, 5));
        assertEquals(Optional.of(4.0), track.cutBetween(3.9, 4));
        assertEquals(Optional.empty(), track.cutBetween(4, 5));
        assertEquals(Optional.empty(), track.cutBetween(-1, 1), "a clip's start is no cut");
    }
}
