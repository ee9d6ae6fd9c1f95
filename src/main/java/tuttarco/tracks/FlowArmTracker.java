package tuttarco.tracks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.util.ResizableDoubleArray;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.signal.Axis;
import tuttarco.video.Frame;

/**
 * Follows a bow arm by optical flow alone, with the direction of down and up taken from the declared instrument and
 * facing.
 *
 * <p>A handful of numbers a frame is kept. At the end the bow's axis is the principal axis of the arm's motion; which of
 * its two ways is down is told by two cues: the way a down-bow should lead in the picture, and where the arm is when the
 * bow has run out (a hand at the tip is farther along the down-bow than a hand at the frog).
 *
 * <p>Limits: a player who turns to profile, a box that misses the arm, or a neighbour's arm in the box can turn the sign
 * round; the sign's confidence drops where the two cues are weak or disagree.
 */
public final class FlowArmTracker implements ArmTracker {
    /** Frames darker than this, luma 0 to 255, show nothing that could be followed. */
    static final double DARK_LUMA = 8;

    /** A seat box lower than this, pixels, does not hold an arm that flow could follow. */
    private static final int SMALLEST_BOX_PX = 32;

    /** With fewer frames a second a stroke of a quarter second has less than three. */
    private static final double FEWEST_FRAMES_PER_S = 10;

    /** Height of a seat's arm region, shoulder widths; measured on a real seat drawn round an upper body: 2.4. */
    private static final double SHOULDER_WIDTHS_HIGH = 2.5;

    private final Player player;
    private final Optional<DownBow> downBow;
    private final CellFlow flow;
    private final MovingArm arm;
    private final ResizableDoubleArray timesS = new ResizableDoubleArray();
    private final ResizableDoubleArray vx = new ResizableDoubleArray();
    private final ResizableDoubleArray vy = new ResizableDoubleArray();
    private final ResizableDoubleArray placeX = new ResizableDoubleArray();
    private final ResizableDoubleArray placeY = new ResizableDoubleArray();
    private final List<Boolean> dark = new ArrayList<>();

    public FlowArmTracker(Player player) {
        this.player = player;
        downBow = player.facing().map(facing -> DownBow.of(player.instrument(), facing));
        SeatBox region = ArmRegion.of(player);
        flow = new CellFlow(region, shoulderWidthPx(region));
        arm = new MovingArm(downBow);
    }

    @Override
    public void accept(Frame frame) {
        Optional<CellFlow.Motion> moved = flow.advance(frame);
        if (moved.isPresent()) {
            CellFlow.Motion motion = moved.get();
            ArmMotion bow = arm.in(motion);
            // what moved between two frames belongs to the time between them
            timesS.addElement((motion.fromS() + motion.toS()) / 2);
            vx.addElement(bow.vx());
            vy.addElement(bow.vy());
            placeX.addElement(bow.placeX());
            placeY.addElement(bow.placeY());
            dark.add(flow.luma() < DARK_LUMA);
        }
    }

    @Override
    public void recall(Frame frame) {
        flow.recall(frame);
    }

    @Override
    public void note(Memo memo) throws IOException {
        flow.note(memo);
        memo.series(timesS);
        memo.series(vx);
        memo.series(vy);
        memo.series(placeX);
        memo.series(placeY);
        memo.list(Boolean.class, dark);
    }

    @Override
    public ArmTrack finish(double endS) {
        double[] t = timesS.getElements();
        Optional<ArmSample.Reason> hopeless = hopeless(t);
        if (t.length == 0 || hopeless.isPresent()) {
            List<ArmSample> lost = new ArrayList<>();
            for (double timeS : t) {
                lost.add(new ArmSample.Lost(timeS, hopeless.orElseThrow()));
            }
            return new ArmTrack(player, 0, endS, lost);
        }
        double[] sx = HandFollower.SMOOTHING.smooth(t, vx.getElements());
        double[] sy = HandFollower.SMOOTHING.smooth(t, vy.getElements());
        Axis axis = Axis.principal(sx, sy);
        BowSign sign = downBow.map(
                        way -> BowSign.judge(way, axis, t, sx, sy, placeX.getElements(), placeY.getElements()))
                .orElse(new BowSign(axis, 0.5));
        Axis down = sign.down();
        List<ArmSample> samples = new ArrayList<>(t.length);
        Axis[] downs = new Axis[t.length];
        Arrays.fill(downs, down);
        double[] noise = SideMotion.noise(downs, t, sx, sy);
        for (int i = 0; i < t.length; i++) {
            samples.add(
                    dark.get(i)
                            ? new ArmSample.Lost(t[i], ArmSample.Reason.TOO_DARK)
                            : new ArmSample.ByFlow(
                                    t[i],
                                    down.along(sx[i], sy[i]),
                                    noise[i],
                                    sign.confidence(),
                                    gesture(i, down, sx, sy)));
        }
        return new ArmTrack(player, 0, endS, samples);
    }

    private Gesture gesture(int i, Axis down, double[] sx, double[] sy) {
        double trembling = Math.hypot(vx.getElement(i) - sx[i], vy.getElement(i) - sy[i]);
        return new Gesture(down.across(sx[i], sy[i]), trembling);
    }

    private Optional<ArmSample.Reason> hopeless(double[] t) {
        return player.seat().heightPx() < SMALLEST_BOX_PX ? Optional.of(ArmSample.Reason.TOO_SMALL) : tooSlow(t);
    }

    /** Whether samples at these times follow each other too slowly to tell strokes. */
    static Optional<ArmSample.Reason> tooSlow(double[] timesS) {
        int n = timesS.length;
        boolean slow = n > 1 && (n - 1) / (timesS[n - 1] - timesS[0]) < FEWEST_FRAMES_PER_S;
        return slow ? Optional.of(ArmSample.Reason.TOO_FEW_FRAMES) : Optional.empty();
    }

    @Override
    public void close() {
        flow.close();
    }

    /** About how wide the shoulders of a player are who was not seen otherwise than by the seat, pixels. */
    static double shoulderWidthPx(SeatBox seat) {
        return seat.heightPx() / SHOULDER_WIDTHS_HIGH;
    }
}
