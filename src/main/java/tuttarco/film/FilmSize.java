package tuttarco.film;

import java.awt.geom.AffineTransform;
import tuttarco.video.ClipFacts;

/**
 * How large a film is, in pixels: the picture, and the strip of beats below it. All sides are even, as H.264 wants them.
 *
 * @param pictureScale pixels of the picture to one of the clip
 * @param signsScale pixels of the film to one of the signs' own
 */
record FilmSize(int widthPx, int pictureHeightPx, int stripHeightPx, double pictureScale, double signsScale) {
    /** The picture's longer side at most, and its width at least, pixels: larger ones take longer than they play, on smaller ones signs can't be read. */
    private static final double LONGEST_PX = 1280;

    private static final double NARROWEST_PX = 640;

    /** Signs never get smaller than this on narrow pictures: words of 12 pixels, at least 9 in the film (chosen). */
    private static final double LEAST_SIGNS = 0.75;

    static FilmSize of(ClipFacts clip) {
        double scale = Math.min(
                LONGEST_PX / Math.max(clip.widthPx(), clip.heightPx()), Math.max(1, NARROWEST_PX / clip.widthPx()));
        int widthPx = even(scale * clip.widthPx());
        double signs = Math.max(LEAST_SIGNS, widthPx / (double) BeatStrip.USUAL_WIDTH_PX);
        return new FilmSize(widthPx, even(scale * clip.heightPx()), even(signs * BeatStrip.HEIGHT_PX), scale, signs);
    }

    private static int even(double px) {
        return (int) (2 * Math.max(1, Math.round(px / 2)));
    }

    int heightPx() {
        return pictureHeightPx + stripHeightPx;
    }

    /** From pixels of the clip to those of the picture. */
    AffineTransform toPicture() {
        return AffineTransform.getScaleInstance(pictureScale, pictureScale);
    }
}
