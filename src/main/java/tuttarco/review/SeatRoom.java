package tuttarco.review;

import tuttarco.seats.SeatBox;

/**
 * Keeps seats inside the picture while they are drawn, moved and resized. Lengths are pixels of the upright picture.
 *
 * @param widthPx of the picture
 */
public record SeatRoom(int widthPx, int heightPx) {
    /** The smallest seat that can be drawn; in a smaller one nothing was ever seen. */
    public static final int LEAST_PX = 16;

    /** A seat this wide is laid around a figure of 70 pixels, the smallest that were read well: the scene small-70. */
    public static final int SMALL_PX = 62;

    /** An edge or a corner of a seat: -1 for left or top, 1 for right or bottom, 0 for neither. */
    public enum Handle {
        TOP_LEFT(-1, -1),
        TOP(0, -1),
        TOP_RIGHT(1, -1),
        RIGHT(1, 0),
        BOTTOM_RIGHT(1, 1),
        BOTTOM(0, 1),
        BOTTOM_LEFT(-1, 1),
        LEFT(-1, 0);

        private final int across;
        private final int down;

        Handle(int across, int down) {
            this.across = across;
            this.down = down;
        }

        public int across() {
            return across;
        }

        public int down() {
            return down;
        }

        /** Where the handle lies on a seat. */
        public double xPx(SeatBox seat) {
            return seat.xPx() + (across + 1) / 2.0 * seat.widthPx();
        }

        public double yPx(SeatBox seat) {
            return seat.yPx() + (down + 1) / 2.0 * seat.heightPx();
        }
    }

    /** The seat moved as far as the picture goes; its size stays. */
    public SeatBox moved(SeatBox seat, int acrossPx, int downPx) {
        int width = Math.min(seat.widthPx(), widthPx);
        int height = Math.min(seat.heightPx(), heightPx);
        return new SeatBox(
                within(seat.xPx() + acrossPx, 0, widthPx - width),
                within(seat.yPx() + downPx, 0, heightPx - height),
                width,
                height);
    }

    /** The seat with an edge or corner moved; the opposite edges stay, and so does the least size. */
    public SeatBox resized(SeatBox seat, Handle handle, int acrossPx, int downPx) {
        int left = seat.xPx();
        int right = left + seat.widthPx();
        int top = seat.yPx();
        int bottom = top + seat.heightPx();
        if (handle.across() < 0) {
            left = within(left + acrossPx, 0, right - LEAST_PX);
        } else if (handle.across() > 0) {
            right = within(right + acrossPx, left + LEAST_PX, widthPx);
        }
        if (handle.down() < 0) {
            top = within(top + downPx, 0, bottom - LEAST_PX);
        } else if (handle.down() > 0) {
            bottom = within(bottom + downPx, top + LEAST_PX, heightPx);
        }
        return new SeatBox(left, top, right - left, bottom - top);
    }

    /** A seat drawn from one corner to the other, cut off at the picture's edges; at least of the least size. */
    public SeatBox drawn(double fromXPx, double fromYPx, double toXPx, double toYPx) {
        int left = within(Math.round(Math.min(fromXPx, toXPx)), 0, widthPx - LEAST_PX);
        int top = within(Math.round(Math.min(fromYPx, toYPx)), 0, heightPx - LEAST_PX);
        int right = within(Math.round(Math.max(fromXPx, toXPx)), left + LEAST_PX, widthPx);
        int bottom = within(Math.round(Math.max(fromYPx, toYPx)), top + LEAST_PX, heightPx);
        return new SeatBox(left, top, right - left, bottom - top);
    }

    /** A seat of this size in the middle of the picture. */
    public SeatBox middle(int seatWidthPx, int seatHeightPx) {
        int width = within(seatWidthPx, LEAST_PX, widthPx);
        int height = within(seatHeightPx, LEAST_PX, heightPx);
        return new SeatBox((widthPx - width) / 2, (heightPx - height) / 2, width, height);
    }

    private static int within(long px, int leastPx, int mostPx) {
        return (int) Math.max(Math.min(px, mostPx), Math.min(leastPx, mostPx));
    }
}
