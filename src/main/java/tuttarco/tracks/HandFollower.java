package tuttarco.tracks;

import org.apache.commons.math3.util.ResizableDoubleArray;
import tuttarco.signal.LocalQuadratic;

/**
 * Follows one hand by flow from where a pose last showed it.
 *
 * <p>Over the cells within reach of the hand the mean motion against the body is taken, with the cube of each cell's
 * speed as weight, so that the fast hand counts and the quiet ground beside it does not. The hand's place moves along
 * with it until the next pose sets it anew.
 */
final class HandFollower {
    /** Half width of the smoothing window, seconds; on 30 frames a second it passes about 4 Hz, faster than strokes. */
    static final LocalQuadratic SMOOTHING = new LocalQuadratic(0.17);

    /** Cells this near to the wrist, shoulder widths, show hand, wrist or the fast end of the forearm. */
    private static final double REACH = 0.8;

    private final ResizableDoubleArray timesS = new ResizableDoubleArray();
    private final ResizableDoubleArray vx = new ResizableDoubleArray();
    private final ResizableDoubleArray vy = new ResizableDoubleArray();
    private KeyPose.Place place;

    HandFollower(KeyPose.Place start) {
        place = start;
    }

    /** A pose showed the hand here. */
    void seenAt(KeyPose.Place shown) {
        place = shown;
    }

    /**
     * Takes what moved between two frames.
     *
     * @param motion cells' motion in shoulder widths
     * @param shoulderWidthPx the unit in pixels
     */
    void accept(CellFlow.Motion motion, CellFlow.Grid grid, double shoulderWidthPx) {
        double weights = 0;
        double dx = 0;
        double dy = 0;
        double reachPx = REACH * shoulderWidthPx;
        for (int cell = 0; cell < CellFlow.CELLS; cell++) {
            double awayX = grid.xPx(cell) - place.xPx();
            double awayY = grid.yPx(cell) - place.yPx();
            if (awayX * awayX + awayY * awayY > reachPx * reachPx) {
                continue;
            }
            double cellX = motion.x(cell) - motion.bodyX();
            double cellY = motion.y(cell) - motion.bodyY();
            double squared = cellX * cellX + cellY * cellY;
            double weight = squared * Math.sqrt(squared);
            weights += weight;
            dx += weight * cellX;
            dy += weight * cellY;
        }
        if (weights > 0) {
            dx /= weights;
            dy /= weights;
        }
        double spanS = motion.toS() - motion.fromS();
        // what moved between two frames belongs to the time between them
        timesS.addElement((motion.fromS() + motion.toS()) / 2);
        vx.addElement(dx / spanS);
        vy.addElement(dy / spanS);
        double share = stepS() / spanS * shoulderWidthPx;
        place = place.plus(share * (dx + motion.bodyX()), share * (dy + motion.bodyY()));
    }

    private double stepS() {
        int n = timesS.getNumElements();
        return n < 2 ? 0 : timesS.getElement(n - 1) - timesS.getElement(n - 2);
    }

    double[] timesS() {
        return timesS.getElements();
    }

    /** Smoothed speed to the picture's right against the body, shoulder widths per second. */
    double[] smoothX() {
        return SMOOTHING.smooth(timesS(), vx.getElements());
    }

    /** Smoothed speed downwards, likewise. */
    double[] smoothY() {
        return SMOOTHING.smooth(timesS(), vy.getElements());
    }

    /** Speed of what the smoothing took off, likewise. */
    double[] trembling(double[] smoothX, double[] smoothY) {
        double[] trembling = new double[smoothX.length];
        for (int i = 0; i < trembling.length; i++) {
            trembling[i] = Math.hypot(vx.getElement(i) - smoothX[i], vy.getElement(i) - smoothY[i]);
        }
        return trembling;
    }
}
