package tuttarco.tracks;

import tuttarco.seats.SeatBox;

/**
 * The part of the picture in which a player's bow hand can be, as the body lies in it.
 *
 * @param middle between the shoulders
 * @param shoulderWidthPx the unit of all that follows
 */
record BodyRegion(KeyPose.Place middle, double shoulderWidthPx) {
    /** An arm reaches about so far from the middle of the shoulders, shoulder widths: 0.7 m of arm on 0.36 m (from memory). */
    private static final double ASIDE = 2.0;

    private static final double ABOVE = 1.2;
    private static final double BELOW = 2.0;

    /** The player has left the region after moving so far, shoulder widths, or coming so much nearer or farther. */
    private static final double MOVED = 0.5;

    private static final double GROWN = 1.5;

    static BodyRegion around(KeyPose pose) {
        return new BodyRegion(pose.shoulders(), pose.shoulderWidthPx());
    }

    boolean left(KeyPose pose) {
        double growth = pose.shoulderWidthPx() / shoulderWidthPx;
        return pose.shoulders().distancePx(middle) > MOVED * shoulderWidthPx || growth > GROWN || growth < 1 / GROWN;
    }

    /** The region, cut off at the picture's edges; at least a pixel of it remains. */
    SeatBox box(int pictureWidthPx, int pictureHeightPx) {
        int left = within(middle.xPx() - ASIDE * shoulderWidthPx, pictureWidthPx - 1);
        int right = within(middle.xPx() + ASIDE * shoulderWidthPx, pictureWidthPx);
        int top = within(middle.yPx() - ABOVE * shoulderWidthPx, pictureHeightPx - 1);
        int bottom = within(middle.yPx() + BELOW * shoulderWidthPx, pictureHeightPx);
        return new SeatBox(left, top, Math.max(1, right - left), Math.max(1, bottom - top));
    }

    private static int within(double px, int mostPx) {
        return (int) Math.round(Math.max(0, Math.min(mostPx, px)));
    }
}
