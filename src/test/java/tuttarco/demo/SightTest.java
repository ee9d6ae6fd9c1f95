package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Collections;
import java.util.List;
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

    /** From the player's left in profile, instrument and left arm are before the bow hand; from the right nothing is. */
    @Test
    void thePlayersOwnInstrumentAndOtherArmHide() {
        assertTrue(leastShare(scene(Facing.LEFT)) < 0.5, "facing left: " + leastShare(scene(Facing.LEFT)));
        assertTrue(leastShare(scene(Facing.RIGHT)) > 0.5, "facing right: " + leastShare(scene(Facing.RIGHT)));
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
