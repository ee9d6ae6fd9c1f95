package tuttarco.window;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JComponent;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Sink;
import tuttarco.review.Listeners;

/**
 * The picture of a clip, as large as fits, and what is drawn over it. It is the sink of the player it watches; its other
 * methods are the event thread's.
 */
public final class PictureView extends JComponent implements Sink {
    private static final long serialVersionUID = 1L;

    /** What is drawn over the picture. */
    @FunctionalInterface
    public interface Overlay {
        /**
         * Draws, on the event thread.
         *
         * @param g in pixels of the view; what is set in it stays for nobody else
         * @param timeS presentation time of the picture below, seconds of the clip
         * @param pictureToView from pixels of the upright clip to those of the view
         */
        void paint(Graphics2D g, double timeS, AffineTransform pictureToView);
    }

    /** Shows what a player plays that was opened with this view as its sink; nothing if empty. It is not closed here. */
    public void watch(Optional<ClipPlayer> watched) {}

    public Optional<ClipPlayer> player() {
        return Optional.empty();
    }

    public void overlay(Overlay over) {}

    /** Time of the picture that is seen, seconds of the clip. */
    public double timeS() {
        return 0;
    }

    /** Where a point of the view lies in the upright clip, pixels; empty beside the picture. */
    public Optional<Point2D> inPicture(Point inView) {
        return Optional.empty();
    }

    /** From pixels of the upright clip to those of the view. */
    public AffineTransform pictureToView() {
        return new AffineTransform();
    }

    /** Told on the event thread that another picture is seen, that playing began or ended, or that another player is watched. */
    public Listeners onChange() {
        return new Listeners();
    }

    @Override
    public void shown(BufferedImage picture, double timeS) {}

    @Override
    public void stopped() {}
}
