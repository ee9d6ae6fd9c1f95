package tuttarco.demo;

import java.awt.geom.AffineTransform;
import java.util.Random;

/** How the camera is held: in hands it wanders a little and rolls a little; it may pan, zoom or cut besides. */
final class Hands {
    /** How fast a hand-held camera wanders, hertz (chosen: hand tremor of a standing person, slow part). */
    private static final double[] RATES_HZ = {0.4, 0.9, 1.7, 3.1};

    private static final double[] SHARES = {0.75, 0.5, 0.35, 0.2};
    /** Roll in radians for each pixel of wander in a picture of one pixel's width. */
    private static final double ROLL_PER_PX = 0.6;

    /** A wander beyond this many standard deviations does not happen: the sum of all waves at their crests, and roll. */
    private static final double MOST_WANDER = 5;
    /** For what softening and rounding need beyond the edge, pixels. */
    private static final int MARGIN_PX = 8;

    private final Scene scene;
    private final double[] phases;

    Hands(Scene scene) {
        this.scene = scene;
        this.phases =
                new Random(scene.seed() * 13 + 5).doubles(12, 0, 2 * Math.PI).toArray();
    }

    /** How much of the picture another view has taken at a time, 0 to 1. */
    double otherView(double timeS) {
        return scene.conditions().move().otherView(share(timeS));
    }

    /** From the picture of a camera at rest to the picture of the first view taken at a time. */
    AffineTransform at(double timeS) {
        return at(timeS, scene.conditions().move().at(share(timeS)));
    }

    /** The same for the other view. */
    AffineTransform elsewhere(double timeS) {
        return at(timeS, scene.conditions().move().to());
    }

    private double share(double timeS) {
        return timeS / scene.durationS();
    }

    private AffineTransform at(double timeS, Framing framing) {
        double px = scene.conditions().shakePx();
        double halfWidth = scene.picture().widthPx() / 2.0;
        double halfHeight = scene.picture().heightPx() / 2.0;
        double zoom = 1 + framing.closer();
        double rightPx = framing.right() * scene.picture().widthPx();
        double downPx = framing.down() * scene.picture().heightPx();
        AffineTransform moved = new AffineTransform();
        moved.translate(halfWidth + rightPx + px * wander(0, timeS), halfHeight + downPx + px * wander(4, timeS));
        moved.rotate(ROLL_PER_PX * px / scene.picture().widthPx() * wander(8, timeS));
        moved.scale(zoom, zoom);
        moved.translate(-halfWidth, -halfHeight);
        return moved;
    }

    /** Farthest the picture ever gets from that of a camera at rest, pixels. */
    int farthestPx() {
        Framing to = scene.conditions().move().to();
        double panPx = Math.max(
                Math.abs(to.right()) * scene.picture().widthPx(),
                Math.abs(to.down()) * scene.picture().heightPx());
        return (int) Math.ceil(MOST_WANDER * scene.conditions().shakePx() + panPx) + MARGIN_PX;
    }

    private double wander(int first, double timeS) {
        double sum = 0;
        for (int i = 0; i < RATES_HZ.length; i++) {
            sum += SHARES[i] * Math.sqrt(2) * Math.sin(phases[first + i] + 2 * Math.PI * RATES_HZ[i] * timeS);
        }
        return sum;
    }
}
