package tuttarco.window;

import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Sink;
import tuttarco.review.Listeners;
import tuttarco.video.ClipFacts;

/**
 * The picture of a clip, as large as fits, and what is drawn over it. It is the sink of the player it watches; its other
 * methods are the event thread's. The player draws its pictures as large as this view shows them, so that painting one is
 * copying it.
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

    private final Listeners onChange = new Listeners();
    private final AtomicBoolean willTell = new AtomicBoolean();
    private final Runnable tell = this::tell;
    private Optional<ClipPlayer> player = Optional.empty();
    private Overlay overlay = (g, timeS, pictureToView) -> {};

    /** Guards the latest picture: the player draws into it again once it has given the next. */
    private final Object latest = new Object();

    private BufferedImage picture;
    private double timeS;

    public PictureView() {
        setOpaque(true);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fit();
            }
        });
    }

    /** Shows what a player plays that was opened with this view as its sink; nothing if empty. It is not closed here. */
    public void watch(Optional<ClipPlayer> watched) {
        player = watched;
        if (watched.isEmpty()) {
            synchronized (latest) {
                picture = null;
                timeS = 0;
            }
        }
        fit();
        repaint();
        onChange.tell();
    }

    public Optional<ClipPlayer> player() {
        return player;
    }

    public void overlay(Overlay over) {
        overlay = over;
        repaint();
    }

    /** Time of the picture that is seen, seconds of the clip. */
    public double timeS() {
        synchronized (latest) {
            return timeS;
        }
    }

    /** Where a point of the view lies in the upright clip, pixels; empty beside the picture. */
    public Optional<Point2D> inPicture(Point inView) {
        if (player.isEmpty()) {
            return Optional.empty();
        }
        try {
            Point2D point = pictureToView().inverseTransform(inView, null);
            ClipFacts clip = player.get().facts();
            boolean inside = point.getX() >= 0
                    && point.getY() >= 0
                    && point.getX() < clip.widthPx()
                    && point.getY() < clip.heightPx();
            return inside ? Optional.of(point) : Optional.empty();
        } catch (NoninvertibleTransformException e) {
            // a view without a size
            return Optional.empty();
        }
    }

    /** From pixels of the upright clip to those of the view. */
    public AffineTransform pictureToView() {
        return player.map(p -> Fit.of(p.facts(), this)).orElseGet(AffineTransform::new);
    }

    /** Told on the event thread that another picture is seen, that playing ended, or that another player is watched. */
    public Listeners onChange() {
        return onChange;
    }

    @Override
    public void shown(BufferedImage shown, double shownS) {
        synchronized (latest) {
            picture = shown;
            timeS = shownS;
        }
        tellSoon();
    }

    @Override
    public void stopped() {
        tellSoon();
    }

    /** However many pictures come while the event thread is busy, it is told once. */
    private void tellSoon() {
        if (willTell.compareAndSet(false, true)) {
            EventQueue.invokeLater(tell);
        }
    }

    /** Paints at once: asked to repaint, the picture would wait behind all that its listeners do, and once more in the queue. */
    private void tell() {
        willTell.set(false);
        paintImmediately(0, 0, getWidth(), getHeight());
        onChange.tell();
    }

    /** Asks for pictures of the view's size in pixels of the screen. */
    private void fit() {
        int widthPx = (int) Math.round(getWidth() * screenScale());
        int heightPx = (int) Math.round(getHeight() * screenScale());
        if (widthPx > 0 && heightPx > 0) {
            player.ifPresent(p -> p.fit(widthPx, heightPx));
        }
    }

    private double screenScale() {
        GraphicsConfiguration screen = getGraphicsConfiguration();
        return screen == null ? 1 : screen.getDefaultTransform().getScaleX();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Theme.worn().palette().ground());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (player.isEmpty()) {
            return;
        }
        AffineTransform pictureToView = pictureToView();
        Graphics2D over = (Graphics2D) g.create();
        double paintedS;
        synchronized (latest) {
            if (picture == null) {
                over.dispose();
                return;
            }
            paint((Graphics2D) g.create(), pictureToView);
            paintedS = timeS;
        }
        overlay.paint(over, paintedS, pictureToView);
        over.dispose();
    }

    /** Copies the picture pixel by pixel of the screen, or stretches one that is not yet of the right size. */
    private void paint(Graphics2D g, AffineTransform pictureToView) {
        double screenScale = g.getTransform().getScaleX();
        ClipFacts clip = player.orElseThrow().facts();
        g.scale(1 / screenScale, 1 / screenScale);
        int widthPx = (int) Math.round(clip.widthPx() * pictureToView.getScaleX() * screenScale);
        int heightPx = (int) Math.round(clip.heightPx() * pictureToView.getScaleY() * screenScale);
        int x = (int) Math.round(pictureToView.getTranslateX() * screenScale);
        int y = (int) Math.round(pictureToView.getTranslateY() * screenScale);
        if (picture.getWidth() == widthPx && picture.getHeight() == heightPx) {
            g.drawImage(picture, x, y, null);
        } else {
            g.drawImage(picture, x, y, widthPx, heightPx, null);
        }
        g.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
            accessibleContext.setAccessibleName("Picture of the take");
        }
        return accessibleContext;
    }
}
