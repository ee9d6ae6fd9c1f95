package tuttarco.tracks;

import java.io.IOException;
import org.apache.commons.math3.util.ResizableDoubleArray;
import tuttarco.signal.LocalQuadratic;

/**
 * Follows one hand by flow from where a pose last showed it.
 *
 * <p>Over the cells within reach of the hand the mean motion against the body is taken, with the cube of each cell's
 * speed as weight, so that the fast hand counts and the quiet ground beside it does not. The hand's place moves along
 * with it; each pose draws it half way to where it shows the hand, since poses tremble as much as the flow drifts.
 */
final class HandFollower {
    /** Half width of the smoothing window, seconds; on 30 frames a second it passes about 4 Hz, faster than strokes. */
    static final LocalQuadratic SMOOTHING = new LocalQuadratic(0.17);

    /** Cells this near to the wrist, shoulder widths, show hand, wrist or the fast end of the forearm. */
    private static final double REACH = 0.7;

    /** Share of the way to where a pose shows the hand; chosen on rendered scenes: 1 and 0.7 lose small and dim figures. */
    private static final double DRAWN = 0.5;

    /** A pose that shows the hand farther from where the flow led, shoulder widths, disagrees: three times its scatter. */
    private static final double DISAGREES = 3 * KeyPose.SCATTER;

    /** A hand seen less likely than this is the model's guess. */
    private static final double SEEN = 0.5;

    private final ResizableDoubleArray timesS = new ResizableDoubleArray();
    private final ResizableDoubleArray vx = new ResizableDoubleArray();
    private final ResizableDoubleArray vy = new ResizableDoubleArray();
    private KeyPose.Place place;

    HandFollower(KeyPose.Place start) {
        place = start;
    }

    /**
     * Takes what a pose shows of the hand.
     *
     * @return whether the pose, which sees the hand, disagrees with where the flow had led
     */
    boolean correct(KeyPose key, Hand hand) {
        KeyPose.Place shown = key.hand(hand);
        boolean disagrees = shown.distancePx(place) > DISAGREES * key.shoulderWidthPx() && key.visibility(hand) > SEEN;
        place = place.plus(DRAWN * (shown.xPx() - place.xPx()), DRAWN * (shown.yPx() - place.yPx()));
        return disagrees;
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

    /**
     * How much the hand has moved so far: the sum of its squared speeds. Of late alone would not do: a bow hand that is lost
     * rests, and the other one would be taken for it.
     */
    double busy() {
        double sum = 0;
        for (int i = 0; i < timesS.getNumElements(); i++) {
            sum += vx.getElement(i) * vx.getElement(i) + vy.getElement(i) * vy.getElement(i);
        }
        return sum;
    }

    private double stepS() {
        int n = timesS.getNumElements();
        return n < 2 ? 0 : timesS.getElement(n - 1) - timesS.getElement(n - 2);
    }

    void note(Memo memo) throws IOException {
        memo.series(timesS);
        memo.series(vx);
        memo.series(vy);
        place = memo.value(KeyPose.Place.class, place);
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
