package tuttarco.faces;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import tuttarco.pose.FaceSpotter;
import tuttarco.pose.Landmark;
import tuttarco.pose.Pose;

/** Where a head is in a picture, widely: pixels of the upright picture. */
record FaceDisc(double xPx, double yPx, double radiusPx) {
    /** Shoulder width over the trunk's length, for those who show their side: as the arms are measured (from memory). */
    private static final double SHOULDERS_PER_TRUNK = 0.55;

    /** Of an adult's head, 23 cm high, the half over shoulders of 39 cm (from memory), and two thirds as much again. */
    private static final double RADIUS_PER_SHOULDERS = 0.5;

    /** How far above the middle of the face's points the head's is, radii: the points leave out forehead and hair (chosen). */
    private static final double UP = 0.15;

    /** How far past the outermost of the face's points, as a share of its distance: forehead, chin and hair. */
    private static final double PAST_POINTS = 1.6;

    /** How far past a spotted face's square, as a share of its half side: to its corners and the hair (chosen). */
    private static final double PAST_SQUARE = 1.3;

    /** So much of a disc is the face itself (see {@link #PAST_SQUARE}). */
    private static final double HARDLY = 0.6;

    static FaceDisc of(Pose pose) {
        List<Landmark> points = pose.face();
        DoubleSummaryStatistics across =
                points.stream().mapToDouble(Landmark::xPx).summaryStatistics();
        DoubleSummaryStatistics down =
                points.stream().mapToDouble(Landmark::yPx).summaryStatistics();
        double x = (across.getMin() + across.getMax()) / 2;
        double y = (down.getMin() + down.getMax()) / 2;
        double outermostPx = points.stream()
                .mapToDouble(p -> Math.hypot(p.xPx() - x, p.yPx() - y))
                .max()
                .orElseThrow();
        double trunkPx = Math.hypot(
                pose.shouldersXPx() - (pose.leftHip().xPx() + pose.rightHip().xPx()) / 2,
                pose.shouldersYPx() - (pose.leftHip().yPx() + pose.rightHip().yPx()) / 2);
        double shouldersPx = Math.max(pose.shoulderWidthPx(), SHOULDERS_PER_TRUNK * trunkPx);
        double radiusPx = Math.max(PAST_POINTS * outermostPx, RADIUS_PER_SHOULDERS * shouldersPx);
        return new FaceDisc(x, y - UP * radiusPx, radiusPx);
    }

    /** A face of which only brows to chin are known. */
    static FaceDisc of(FaceSpotter.Spotted face) {
        return new FaceDisc(face.centreXPx(), face.centreYPx(), PAST_SQUARE * face.sidePx() / 2);
    }

    FaceDisc wider(double times) {
        return new FaceDisc(xPx, yPx, times * radiusPx);
    }

    /** Whether hardly anything of the other sticks out. */
    boolean holds(FaceDisc other) {
        return Math.hypot(xPx - other.xPx, yPx - other.yPx) + HARDLY * other.radiusPx <= radiusPx;
    }

    /** Whether both are about the same head. */
    boolean same(FaceDisc other) {
        return Math.hypot(xPx - other.xPx, yPx - other.yPx) < Math.max(radiusPx, other.radiusPx) / 2;
    }
}
