package tuttarco.window;

import java.awt.Component;
import java.awt.geom.AffineTransform;
import tuttarco.video.ClipFacts;

/** How a clip's picture lies in a view: as large as fits, in the middle. */
final class Fit {
    private Fit() {}

    /** From pixels of the upright clip to those of the view. */
    static AffineTransform of(ClipFacts clip, Component view) {
        double scale = Math.min((double) view.getWidth() / clip.widthPx(), (double) view.getHeight() / clip.heightPx());
        return new AffineTransform(
                scale,
                0,
                0,
                scale,
                (view.getWidth() - scale * clip.widthPx()) / 2,
                (view.getHeight() - scale * clip.heightPx()) / 2);
    }
}
