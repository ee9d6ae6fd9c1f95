package tuttarco.pose;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;

/**
 * A person in a picture. Left and right are the person's own.
 *
 * @param landmarks the model's 33 points of the body, in its order
 * @param centre middle of the hips, as the model sees it for choosing the next crop
 * @param rim a point on the circle about the centre that holds the whole person
 * @param person probability that the crop shows a person
 */
public record Pose(List<Landmark> landmarks, Landmark centre, Landmark rim, double person) {
    /** Points of the body: head 0 to 10, arms and hands to 22, legs from 23 on. */
    public static final int LANDMARKS = 33;

    /** The first landmarks, of the head. */
    private static final int FACE = 11;

    /** The first landmarks, from head to hips. */
    static final int UPPER_BODY = 25;

    /** Shoulders nearer than this are one person's, radii; half the width of the shoulders of a seated player. */
    private static final double SAME = 0.22;

    /** Of two people one behind the other, less of head and trunk is seen at the same place, as a share of the smaller. */
    private static final double COVERED = 0.5;

    /** What the model makes of a hand with an instrument is smaller than this against the person (measured: 0.5 to 0.6). */
    private static final double MUCH_SMALLER = 0.7;

    /** So near to the wrist lies what a hand holds, radii: a shoulder width. */
    private static final double HELD = 0.4;

    public Pose {
        if (landmarks.size() != LANDMARKS) {
            throw new IllegalArgumentException("a pose has " + LANDMARKS + " landmarks, not " + landmarks.size());
        }
        if (!(person >= 0 && person <= 1)) {
            throw new IllegalArgumentException("a probability lies in 0 to 1: " + person);
        }
        landmarks = List.copyOf(landmarks);
    }

    /** Eyes, ears, nose and mouth. */
    public List<Landmark> face() {
        return landmarks.subList(0, FACE);
    }

    public Landmark nose() {
        return landmarks.get(0);
    }

    public Landmark leftEar() {
        return landmarks.get(7);
    }

    public Landmark rightEar() {
        return landmarks.get(8);
    }

    public Landmark leftShoulder() {
        return landmarks.get(11);
    }

    public Landmark rightShoulder() {
        return landmarks.get(12);
    }

    public Landmark leftElbow() {
        return landmarks.get(13);
    }

    public Landmark rightElbow() {
        return landmarks.get(14);
    }

    public Landmark leftWrist() {
        return landmarks.get(15);
    }

    public Landmark rightWrist() {
        return landmarks.get(16);
    }

    public Landmark leftIndex() {
        return landmarks.get(19);
    }

    public Landmark rightIndex() {
        return landmarks.get(20);
    }

    public Landmark leftHip() {
        return landmarks.get(23);
    }

    public Landmark rightHip() {
        return landmarks.get(24);
    }

    public Landmark leftKnee() {
        return landmarks.get(25);
    }

    public Landmark rightKnee() {
        return landmarks.get(26);
    }

    /** Whether the nose is above both shoulders. */
    public boolean upright() {
        return nose().yPx() < Math.min(leftShoulder().yPx(), rightShoulder().yPx());
    }

    /** Middle of the shoulders, pixels from the picture's left edge. */
    public double shouldersXPx() {
        return (leftShoulder().xPx() + rightShoulder().xPx()) / 2;
    }

    /** Middle of the shoulders, pixels from the picture's top edge. */
    public double shouldersYPx() {
        return (leftShoulder().yPx() + rightShoulder().yPx()) / 2;
    }

    /** How large the person is, from the hips to the rim, whichever way he or she turns; pixels. */
    public double radiusPx() {
        return centre.distancePx(rim);
    }

    /** Whether the model took one person for both. */
    public boolean sameAs(Pose other) {
        return shouldersApartPx(other) < SAME * Math.max(radiusPx(), other.radiusPx())
                || trunk().overlap(other.trunk()) > COVERED;
    }

    /** Whether this is no person but a hand of the other, with what it holds: much smaller, and where the hand is. */
    public boolean handOf(Pose other) {
        if (radiusPx() > MUCH_SMALLER * other.radiusPx()) {
            return false;
        }
        double reachPx = HELD * other.radiusPx();
        return Stream.of(other.leftWrist(), other.rightWrist())
                .anyMatch(hand -> Math.hypot(shouldersXPx() - hand.xPx(), shouldersYPx() - hand.yPx()) < reachPx);
    }

    private double shouldersApartPx(Pose other) {
        return Math.hypot(shouldersXPx() - other.shouldersXPx(), shouldersYPx() - other.shouldersYPx());
    }

    private Trunk trunk() {
        List<Landmark> points =
                List.of(nose(), leftEar(), rightEar(), leftShoulder(), rightShoulder(), leftHip(), rightHip());
        DoubleSummaryStatistics x = points.stream().mapToDouble(Landmark::xPx).summaryStatistics();
        DoubleSummaryStatistics y = points.stream().mapToDouble(Landmark::yPx).summaryStatistics();
        return new Trunk(x.getMin(), y.getMin(), x.getMax(), y.getMax());
    }

    /** Head and trunk's bounds, pixels. */
    private record Trunk(double leftPx, double topPx, double rightPx, double bottomPx) {
        double area() {
            return (rightPx - leftPx) * (bottomPx - topPx);
        }

        /** Share of the smaller one that both have in common. */
        double overlap(Trunk other) {
            double widthPx = Math.min(rightPx, other.rightPx) - Math.max(leftPx, other.leftPx);
            double heightPx = Math.min(bottomPx, other.bottomPx) - Math.max(topPx, other.topPx);
            return widthPx <= 0 || heightPx <= 0 ? 0 : widthPx * heightPx / Math.min(area(), other.area());
        }
    }

    /** Distance of the shoulders as seen, pixels; short where the player turns. */
    public double shoulderWidthPx() {
        return leftShoulder().distancePx(rightShoulder());
    }
}
