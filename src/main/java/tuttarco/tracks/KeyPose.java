package tuttarco.tracks;

import java.util.List;
import org.apache.commons.math3.stat.StatUtils;
import tuttarco.bow.Instrument;
import tuttarco.pose.Landmark;
import tuttarco.pose.Pose;

/** What the pose model saw of a player at one time. All places are pixels of the picture. */
record KeyPose(double timeS, Pose pose) {
    /**
     * Shoulder width over the length of the trunk of an upright adult (from memory, rounded down), for those who show
     * their side.
     */
    private static final double SHOULDERS_PER_TRUNK = 0.55;

    /** How far the strings of what stands on the floor are before the player, share of the way from hips to knees. */
    private static final double AHEAD = 0.5;

    /** How far they are above the hips, share of the way to the shoulders; both chosen on rendered players. */
    private static final double ABOVE = 0.25;

    /** How far the nose is before the shoulders, shoulder widths (measured on rendered players in profile: 0.4 to 0.54). */
    private static final double NOSE_AHEAD = 0.5;

    /** Scatter of a hand's place, shoulder widths (measured on rendered players: 0.12 to 0.15). */
    static final double SCATTER = 0.15;

    /** A hand nearer than this to the strings tells little by its direction, shoulder widths. */
    private static final double NEAR = 0.5;

    /** A direction, in the picture if nothing else is said; about one long at most. */
    record Way(double x, double y) {
        /** Cosine of the angle between both; nought if one has no length. */
        double cosine(Way other) {
            double lengths = Math.hypot(x, y) * Math.hypot(other.x, other.y);
            return lengths == 0 ? 0 : (x * other.x + y * other.y) / lengths;
        }
    }

    record Place(double xPx, double yPx) {
        static Place of(Landmark landmark) {
            return new Place(landmark.xPx(), landmark.yPx());
        }

        Place plus(double dxPx, double dyPx) {
            return new Place(xPx + dxPx, yPx + dyPx);
        }

        double distancePx(Place other) {
            return Math.hypot(xPx - other.xPx, yPx - other.yPx);
        }

        static Place middle(Place a, Place b) {
            return new Place((a.xPx + b.xPx) / 2, (a.yPx + b.yPx) / 2);
        }
    }

    Place hand(Hand hand) {
        return Place.of(wrist(hand));
    }

    /** Probability that nothing hides a hand, by the model's own word. */
    double visibility(Hand hand) {
        return wrist(hand).visibility();
    }

    /** Probability that a hand is in the picture, hidden or not, by the model's own word. */
    double presence(Hand hand) {
        return wrist(hand).presence();
    }

    private Landmark wrist(Hand hand) {
        return hand == Hand.LEFT ? pose.leftWrist() : pose.rightWrist();
    }

    Place nose() {
        return Place.of(pose.nose());
    }

    Place shoulders() {
        return Place.middle(Place.of(pose.leftShoulder()), Place.of(pose.rightShoulder()));
    }

    private Place hips() {
        return Place.middle(Place.of(pose.leftHip()), Place.of(pose.rightHip()));
    }

    /**
     * About where bow and strings meet: half way from between the shoulders to the hand that fingers for what is held
     * there, before the belly for what stands on the floor (common practice, no source), which in the picture is to the
     * side of the hips where the player does not face the camera.
     */
    Place strings(Instrument instrument, Hand bowHand) {
        return instrument.onShoulder() ? Place.middle(shoulders(), hand(bowHand.other())) : belly();
    }

    private Place belly() {
        Place hips = hips();
        Place shoulders = shoulders();
        Place knees = Place.middle(Place.of(pose.leftKnee()), Place.of(pose.rightKnee()));
        return hips.plus(
                AHEAD * (knees.xPx() - hips.xPx()) + ABOVE * (shoulders.xPx() - hips.xPx()),
                ABOVE * (shoulders.yPx() - hips.yPx()));
    }

    /**
     * Where the chest points as seen from above, x to the picture's right and y to the camera, about one long: the
     * shoulders tell what of it leads to the camera, the nose before them what leads aside.
     */
    Way facing() {
        double unitPx = shoulderWidthPx();
        return new Way(
                (pose.nose().xPx() - shoulders().xPx()) / (NOSE_AHEAD * unitPx),
                (pose.leftShoulder().xPx() - pose.rightShoulder().xPx()) / unitPx);
    }

    static Way meanFacing(List<KeyPose> poses) {
        List<Way> ways = poses.stream().map(KeyPose::facing).toList();
        return new Way(
                ways.stream().mapToDouble(Way::x).average().orElse(0),
                ways.stream().mapToDouble(Way::y).average().orElse(0));
    }

    /** Of several poses of one player. */
    static double medianShoulderWidthPx(List<KeyPose> poses) {
        return StatUtils.percentile(
                poses.stream().mapToDouble(KeyPose::shoulderWidthPx).toArray(), 50);
    }

    /** Width of the shoulders if they were seen from the front, pixels; an estimate where the player shows a side. */
    double shoulderWidthPx() {
        return Math.max(
                pose.shoulderWidthPx(), SHOULDERS_PER_TRUNK * shoulders().distancePx(hips()));
    }

    double handsApartPx() {
        return hand(Hand.LEFT).distancePx(hand(Hand.RIGHT));
    }

    /**
     * The way from the strings to a hand, shoulder widths; made no longer than one, so that its length tells how clear
     * its direction is.
     */
    Way fromStrings(Instrument instrument, Hand hand) {
        Place strings = strings(instrument, hand);
        Place at = hand(hand);
        double unitPx = Math.max(NEAR * shoulderWidthPx(), at.distancePx(strings));
        return new Way((at.xPx() - strings.xPx()) / unitPx, (at.yPx() - strings.yPx()) / unitPx);
    }

    /** Values at the poses, straight lines between them, level outside. */
    static double[] between(List<KeyPose> poses, double[] values, double[] timesS) {
        double[] at = new double[timesS.length];
        int k = 0;
        for (int i = 0; i < at.length; i++) {
            while (k + 1 < values.length && poses.get(k + 1).timeS() <= timesS[i]) {
                k++;
            }
            double fromS = poses.get(k).timeS();
            double share = k + 1 == values.length || timesS[i] <= fromS
                    ? 0
                    : (timesS[i] - fromS) / (poses.get(k + 1).timeS() - fromS);
            at[i] = share == 0 ? values[k] : (1 - share) * values[k] + share * values[k + 1];
        }
        return at;
    }
}
