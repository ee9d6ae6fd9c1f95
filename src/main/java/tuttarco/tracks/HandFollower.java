package tuttarco.tracks;

import java.io.IOException;
import org.apache.commons.math3.util.ResizableDoubleArray;
import tuttarco.bow.Instrument;
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

    /** A hand seen less likely than this is half hidden; chosen on rendered players in profile, of whom 0.6 leaves more unread. */
    private static final double CLEAR = 0.8;

    /**
     * Cells this near to the strings, shoulder widths, show the bow up to its tip: the bow is about two long, and half of
     * what sticks out is on either side. Rendered players in profile: 1.3 and 1.8 are a little worse.
     */
    private static final double BOW_REACH = 1.5;

    private final ResizableDoubleArray timesS = new ResizableDoubleArray();
    private final ResizableDoubleArray vx = new ResizableDoubleArray();
    private final ResizableDoubleArray vy = new ResizableDoubleArray();
    private KeyPose.Place place;
    private KeyPose.Place strings;
    private boolean halfHidden;

    HandFollower(KeyPose.Place start) {
        place = start;
        strings = start;
    }

    /**
     * Takes what a pose shows of the hand.
     *
     * @param instrument what the player plays; only what is held on the shoulder hides a hand behind the other
     * @return whether the pose, which sees the hand, disagrees with where the flow had led
     */
    boolean correct(KeyPose key, Hand hand, Instrument instrument) {
        strings = key.strings(instrument, hand);
        halfHidden = instrument.onShoulder() && key.visibility(hand) < CLEAR;
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
        for (int cell = 0; cell < CellFlow.CELLS; cell++) {
            if (!within(REACH, place, grid, cell, shoulderWidthPx)
                    && !(halfHidden && within(BOW_REACH, strings, grid, cell, shoulderWidthPx))) {
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

    private static boolean within(
            double reach, KeyPose.Place place, CellFlow.Grid grid, int cell, double shoulderWidthPx) {
        return place.distancePx(new KeyPose.Place(grid.xPx(cell), grid.yPx(cell))) <= reach * shoulderWidthPx;
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
        strings = memo.value(KeyPose.Place.class, strings);
        halfHidden = memo.flag(halfHidden);
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
