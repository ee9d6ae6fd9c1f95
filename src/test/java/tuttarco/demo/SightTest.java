package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class SightTest {
    private static final Scene OPEN = scene(Facing.CAMERA);
    /** Farther than any point of hand and forearm is from the line between elbow and grip, metres. */
    private static final double AROUND_M = 0.06;

    @Test
    void anArmThatNothingHidesIsSeenThroughout() {
        Layout layout = Layout.of(OPEN);
        assertEquals(0, unseenS(layout.performers().get(0), new Sight(OPEN, layout)), 1e-9);
    }

    /** From the player's left in profile, instrument and left arm are before the bow hand; from the right hardly anything is. */
    @Test
    void thePlayersOwnInstrumentAndOtherArmHide() {
        assertTrue(leastShare(scene(Facing.LEFT)) < 0.5, "facing left: " + leastShare(scene(Facing.LEFT)));
        assertTrue(leastShare(scene(Facing.RIGHT)) > 0.5, "facing right: " + leastShare(scene(Facing.RIGHT)));
    }

    /** Seen from behind the trunk hides the hand near the frog; it is not before the arm of who faces the camera. */
    @Test
    void thePlayersOwnBodyHides() {
        assertTrue(leastShare(scene(Facing.AWAY)) < Sight.LEAST_SHARE, "away: " + leastShare(scene(Facing.AWAY)));
        assertTrue(leastShare(OPEN) > 0.8, "camera: " + leastShare(OPEN));
    }

    /** A stand's desk, a rectangle of half a metre by a third, slid across the arm: what it covers is areas cut from areas. */
    @Test
    void aRectangleHidesWhatItCovers() {
        Scene scene = OPEN.with(Picture.of(480, 360)).with(Conditions.EASY.behind(Conditions.Obstacle.HIGH_STANDS));
        Layout layout = Layout.of(scene);
        Performer performer = layout.performers().get(0);
        Vec grip = performer.axes(0).room(performer.figure(0).grip());
        Area arm = new Area();
        FigurePainter.paintBowArm(performer, 0, new Brush(new Areas(arm), layout.camera()), layout.camera());
        int free = 0;
        int covered = 0;
        for (int i = -8; i <= 8; i++) {
            Vec foot = grip.plus(new Vec(0.1 * i, -0.5, -1));
            Layout behind = new Layout(layout.performers(), List.of(foot), layout.camera(), layout.players());
            Area left = new Area(arm);
            left.subtract(new Area(desk(foot, layout.camera())));
            double share = size(left) / size(arm);
            assertEquals(share, new Sight(scene, behind).share(performer, 0), 0.08, "desk " + 10 * i + " cm aside");
            free += share > 0.99 ? 1 : 0;
            covered += share < 0.4 ? 1 : 0;
        }
        assertTrue(free > 2 && covered > 1, free + " times free, " + covered + " times mostly covered");
    }

    /** The desk of a stand as it stands before a player who faces the camera. */
    private static Path2D desk(Vec foot, Camera camera) {
        Path2D path = new Path2D.Double();
        for (Vec corner : List.of(
                new Vec(0.25, 0.04, 0.86),
                new Vec(-0.25, 0.04, 0.86),
                new Vec(-0.25, -0.14, 1.16),
                new Vec(0.25, -0.14, 1.16))) {
            Camera.Spot spot = camera.see(foot.plus(corner));
            if (path.getCurrentPoint() == null) {
                path.moveTo(spot.xPx(), spot.yPx());
            } else {
                path.lineTo(spot.xPx(), spot.yPx());
            }
        }
        path.closePath();
        return path;
    }

    /** Gathers all surfaces. */
    private record Areas(Area all) implements Pen {
        @Override
        public void fill(Shape shape, Paint paint, OptionalInt bowArmOf) {
            all.add(new Area(shape));
        }

        @Override
        public void draw(Shape shape, java.awt.Stroke stroke, Paint paint) {}
    }

    /** Square pixels, by the polygon's trapezoids. */
    private static double size(Area area) {
        double sum = 0;
        double[] at = new double[6];
        Point2D start = new Point2D.Double();
        Point2D from = start;
        for (PathIterator i = area.getPathIterator(null, 0.01); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            Point2D to = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(at[0], at[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                start = to;
            } else {
                sum += (to.getX() - from.getX()) * (to.getY() + from.getY()) / 2;
            }
            from = to;
        }
        return Math.abs(sum);
    }

    @Test
    void whoeverWalksPastHidesEachPlayerForAWhile() {
        Scene scene = SceneFixture.of(Collections.nCopies(4, new Cast(Instrument.VIOLIN, Facing.CAMERA)))
                .with(Picture.of(480, 200))
                .with(Conditions.EASY.behind(Conditions.Obstacle.PASSING_HEAD));
        Layout layout = Layout.of(scene);
        Sight sight = new Sight(scene, layout);
        assertEquals(4, layout.performers().size());
        for (Performer performer : layout.performers()) {
            double unseenS = unseenS(performer, sight);
            assertTrue(unseenS > 0.05 && unseenS < 1, performer.label() + " unseen for " + unseenS + " s");
        }
    }

    /** A camera shaken so much that the arm leaves the picture. */
    @Test
    void anArmOutsideThePictureIsNotSeenAndOneInsideIs() {
        Scene scene = OPEN.with(Conditions.EASY.shaken(60));
        Layout layout = Layout.of(scene);
        Performer performer = layout.performers().get(0);
        Sight sight = new Sight(scene, layout);
        int outside = 0;
        int inside = 0;
        for (int look = 0; look <= scene.durationS() * Sight.LOOKS_PER_S; look++) {
            Rectangle2D arm = arm(scene, layout, performer, look / Sight.LOOKS_PER_S);
            Rectangle2D picture = new Rectangle2D.Double(
                    0, 0, scene.picture().widthPx(), scene.picture().heightPx());
            if (!picture.intersects(arm)) {
                assertEquals(0, sight.share(performer, look), 1e-12);
                outside++;
            } else if (picture.contains(arm)) {
                assertTrue(sight.sees(performer, look));
                inside++;
            }
        }
        assertTrue(outside > 5 && inside > 5, outside + " looks outside, " + inside + " inside");
    }

    private static Rectangle2D arm(Scene scene, Layout layout, Performer performer, double timeS) {
        Figure figure = performer.figure(timeS);
        AffineTransform moved = new Hands(scene).at(timeS);
        Rectangle2D arm = new Rectangle2D.Double();
        List<Vec> joints = List.of(figure.grip(), figure.right().elbow());
        for (int i = 0; i < joints.size(); i++) {
            Camera.Spot spot = layout.camera().see(performer.axes(timeS).room(joints.get(i)));
            Point2D at = moved.transform(new Point2D.Double(spot.xPx(), spot.yPx()), null);
            double r = AROUND_M * spot.pxPerM() + 2;
            Rectangle2D joint = new Rectangle2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r);
            arm = i == 0 ? joint : arm.createUnion(joint);
        }
        return arm;
    }

    private static Scene scene(Facing facing) {
        return SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, facing)));
    }

    private static double leastShare(Scene scene) {
        Layout layout = Layout.of(scene);
        Sight sight = new Sight(scene, layout);
        double least = 1;
        for (int look = 0; look <= scene.durationS() * Sight.LOOKS_PER_S; look++) {
            least = Math.min(least, sight.share(layout.performers().get(0), look));
        }
        return least;
    }

    private static double unseenS(Performer performer, Sight sight) {
        return Truth.of(performer, sight).stream()
                .filter(s -> s.kind() == StrokeKind.UNSEEN)
                .mapToDouble(Stroke::lengthS)
                .sum();
    }
}
