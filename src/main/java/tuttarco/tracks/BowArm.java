package tuttarco.tracks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tuttarco.seats.Player;
import tuttarco.signal.Axis;
import tuttarco.signal.LocalAxis;

/**
 * What the bow did, from how both hands moved and what the poses showed: which hand bows, along which axis, and which
 * way is down.
 *
 * @param hand the bow hand; the player's own left one where the picture is mirrored or the player left-handed
 */
record BowArm(KeyPose.Hand hand, List<ArmSample> samples) {
    /** The bow's axis turns with the player; slower than this, seconds, and not with single strokes. */
    private static final LocalAxis AXIS = new LocalAxis(1.5);

    /** How much likelier a bow in the right hand is before anything was seen, natural logarithm. */
    private static final double RIGHT_HANDED = 0.2;

    /** One hand's motion along its own axis, whichever way is down. */
    private record Motion(double[] timesS, double[] vx, double[] vy, Axis[] axes) {
        static Motion of(HandFollower follower) {
            double[] timesS = follower.timesS();
            double[] vx = follower.smoothX();
            double[] vy = follower.smoothY();
            return new Motion(timesS, vx, vy, AXIS.along(timesS, vx, vy));
        }

        double[] along() {
            double[] along = new double[timesS.length];
            for (int i = 0; i < along.length; i++) {
                along[i] = axes[i].along(vx[i], vy[i]);
            }
            return along;
        }

        double energy() {
            double sum = 0;
            for (double v : along()) {
                sum += v * v;
            }
            return sum;
        }
    }

    static BowArm of(Player player, Map<KeyPose.Hand, HandFollower> hands, List<KeyPose> poses) {
        Motion right = Motion.of(hands.get(KeyPose.Hand.RIGHT));
        Motion left = Motion.of(hands.get(KeyPose.Hand.LEFT));
        boolean rightBows = right.energy() * Math.exp(RIGHT_HANDED) >= left.energy();
        KeyPose.Hand hand = rightBows ? KeyPose.Hand.RIGHT : KeyPose.Hand.LEFT;
        Motion bow = rightBows ? right : left;
        double[] along = bow.along();
        BodySign sign = BodySign.judge(player, hand, poses, bow.timesS(), bow.axes(), along);
        double[] noise = SideMotion.noise(bow.axes(), bow.timesS(), bow.vx(), bow.vy());
        double[] reach = sign.reach();
        List<ArmSample> samples = new ArrayList<>(along.length);
        for (int i = 0; i < along.length; i++) {
            double down = sign.downProbability()[i];
            double velocity = down >= 0.5 ? along[i] : -along[i];
            samples.add(new ArmSample.ByBody(bow.timesS()[i], velocity, noise[i], Math.max(down, 1 - down), reach[i]));
        }
        return new BowArm(hand, samples);
    }
}
