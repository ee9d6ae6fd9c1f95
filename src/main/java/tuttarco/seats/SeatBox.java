package tuttarco.seats;

/**
 * A player's place in the picture, in pixels of the upright picture; the origin is the top left corner.
 * A box has an area and begins inside the picture.
 */
public record SeatBox(int xPx, int yPx, int widthPx, int heightPx) {
    public SeatBox {
        if (xPx < 0 || yPx < 0) {
            throw new IllegalArgumentException("a seat box begins inside the picture, not at " + xPx + "," + yPx);
        }
        if (widthPx < 1 || heightPx < 1) {
            throw new IllegalArgumentException("a seat box has a width and a height, not " + widthPx + "x" + heightPx);
        }
    }

    public boolean fitsInto(int pictureWidthPx, int pictureHeightPx) {
        return (long) xPx + widthPx <= pictureWidthPx && (long) yPx + heightPx <= pictureHeightPx;
    }

    /** The seat in the picture flipped left to right. */
    public SeatBox mirrored(int pictureWidthPx) {
        return new SeatBox(pictureWidthPx - xPx - widthPx, yPx, widthPx, heightPx);
    }

    @Override
    public String toString() {
        return xPx + "," + yPx + "," + widthPx + "," + heightPx;
    }
}
