package tuttarco.tracks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.seats.Player;
import tuttarco.signal.Axis;
import tuttarco.signal.LocalAxis;

/**
 * What the bow did, from how both hands moved and what the poses showed: which hand bows, along which axis, and which
 * way is down.
 *
 * @param down the mean way of the down-bow in the picture; the surer, the longer, up to one
 * @param hand the bow hand; the player's own left one where the picture is mirrored or the player left-handed
 */
record BowArm(Hand hand, List<ArmSample> samples, KeyPose.Way down) {
    /** The bow's axis turns with the player; slower than this, seconds, and not with single strokes. */
    private static final LocalAxis AXIS = new LocalAxis(1.5);

    /** How much likelier a bow in the right hand is before anything was seen, natural logarithm. */
    private static final double RIGHT_HANDED = 0.2;

    /** Of players whose shoulders are narrower, pixels, poses show no arm: a measured child with 10 was at chance. */
    private static final double SMALLEST_SHOULDERS_PX = 8;

    /** However hidden the model says a hand is, some of what moves there is the hand's, share. */
    private static final double LEAST_SEEN = 0.2;

    /** A hand seen less likely than this is hidden; visible ones on real clips came to 0.38 at least, covered ones to 0.03. */
    private static final double HIDDEN = 0.15;

    /** A hand in the picture less likely than this is outside; those inside on real clips came to 0.43 at least. */
    private static final double OUTSIDE = 0.3;

    /** One hand's motion along its own axis, whichever way is down. */
    private record Motion(double[] timesS, double[] vx, double[] vy, double[] trembling, Axis[] axes) {
        static Motion of(HandFollower follower) {
            double[] timesS = follower.timesS();
            double[] vx = follower.smoothX();
            double[] vy = follower.smoothY();
            return new Motion(timesS, vx, vy, follower.trembling(vx, vy), AXIS.along(timesS, vx, vy));
        }

        double[] along() {
            double[] along = new double[timesS.length];
            for (int i = 0; i < along.length; i++) {
                along[i] = axes[i].along(vx[i], vy[i]);
            }
            return along;
        }

        Gesture gesture(int i) {
            return new Gesture(axes[i].across(vx[i], vy[i]), trembling[i]);
        }

        double energy() {
            double sum = 0;
            for (double v : along()) {
                sum += v * v;
            }
            return sum;
        }
    }

    /**
     * Reads what both hands did.
     *
     * @param neighbours the way of the down-bow on the others of the section
     * @param dark which of the motions were seen in the dark
     * @param crossed in which of them something moved before the player
     */
    static BowArm of(
            Player player,
            Map<Hand, HandFollower> hands,
            List<KeyPose> poses,
            KeyPose.Way neighbours,
            BitSet dark,
            BitSet crossed) {
        Motion right = Motion.of(hands.get(Hand.RIGHT));
        Motion left = Motion.of(hands.get(Hand.LEFT));
        boolean rightBows = right.energy() * Math.exp(RIGHT_HANDED) >= left.energy();
        Hand hand = rightBows ? Hand.RIGHT : Hand.LEFT;
        Motion bow = rightBows ? right : left;
        if (bow.timesS().length == 0) {
            return new BowArm(hand, List.of(), new KeyPose.Way(0, 0));
        }
        double[] along = bow.along();
        BodySign sign = BodySign.judge(player, hand, poses, neighbours, bow.timesS(), bow.axes(), along);
        return new BowArm(hand, samples(hand, bow, along, sign, poses, dark, crossed), sign.mean(bow.axes()));
    }

    private static List<ArmSample> samples(
            Hand hand, Motion bow, double[] along, BodySign sign, List<KeyPose> poses, BitSet dark, BitSet crossed) {
        double[] timesS = bow.timesS();
        Optional<ArmSample.Reason> hopeless = hopeless(poses, timesS);
        double[] noise = SideMotion.noise(bow.axes(), timesS, bow.vx(), bow.vy());
        double[] seen = KeyPose.between(
                poses, poses.stream().mapToDouble(p -> p.visibility(hand)).toArray(), timesS);
        double[] inside = KeyPose.between(
                poses, poses.stream().mapToDouble(p -> p.presence(hand)).toArray(), timesS);
        List<ArmSample> samples = new ArrayList<>(along.length);
        for (int i = 0; i < along.length; i++) {
            Optional<ArmSample.Reason> lost =
                    hopeless.isPresent() ? hopeless : lost(dark.get(i), inside[i], seen[i], crossed.get(i));
            if (lost.isPresent()) {
                samples.add(new ArmSample.Lost(timesS[i], lost.get()));
                continue;
            }
            double down = sign.downProbability()[i];
            double velocity = down >= 0.5 ? along[i] : -along[i];
            double sure = Math.max(down, 1 - down);
            samples.add(new ArmSample.ByBody(
                    timesS[i],
                    velocity,
                    noise[i] / Math.max(LEAST_SEEN, seen[i]),
                    sure,
                    sign.reach()[i],
                    bow.gesture(i)));
        }
        return samples;
    }

    private static Optional<ArmSample.Reason> lost(boolean dark, double inside, double seen, boolean crossed) {
        if (dark) {
            return Optional.of(ArmSample.Reason.TOO_DARK);
        }
        if (inside < OUTSIDE) {
            return Optional.of(ArmSample.Reason.OUT_OF_PICTURE);
        }
        return crossed || seen < HIDDEN ? Optional.of(ArmSample.Reason.HIDDEN) : Optional.empty();
    }

    private static Optional<ArmSample.Reason> hopeless(List<KeyPose> poses, double[] timesS) {
        return KeyPose.medianShoulderWidthPx(poses) < SMALLEST_SHOULDERS_PX
                ? Optional.of(ArmSample.Reason.TOO_SMALL)
                : FlowArmTracker.tooSlow(timesS);
    }
}
