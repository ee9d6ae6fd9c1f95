package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import tuttarco.chart.Palette;

/**
 * A component of our own drawing. It is drawn in the measures of the charts, which grow with the window's scale; it can have
 * the focus, and says what is chosen in it to those who don't see it.
 */
abstract class Drawn extends JComponent {
    private static final long serialVersionUID = 1L;

    private static final float FOCUS_PX = 2;

    private final transient AccessibleRole role;

    Drawn(String name, String spokenName, AccessibleRole role) {
        this.role = role;
        setName(name);
        getAccessibleContext().setAccessibleName(spokenName);
        setFocusable(true);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
            }
        });
    }

    /** Draws; lengths are pixels of a chart at its own size. */
    abstract void draw(Graphics2D g, Palette palette);

    static double scale() {
        return UIScale.getUserScaleFactor();
    }

    final double widthPx() {
        return getWidth() / scale();
    }

    final double heightPx() {
        return getHeight() / scale();
    }

    /** A point of the component in the measures of the charts. */
    static Point2D unscaled(Point point) {
        return new Point2D.Double(point.x / scale(), point.y / scale());
    }

    static Dimension scaled(double widthPx, double heightPx) {
        return new Dimension((int) Math.ceil(widthPx * scale()), (int) Math.ceil(heightPx * scale()));
    }

    @Override
    protected final void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.scale(scale(), scale());
            draw(g, Theme.worn().palette());
        } finally {
            g.dispose();
        }
    }

    /** A frame around what has the focus. */
    final void drawFocus(Graphics2D g, Palette palette, Rectangle2D box) {
        if (isFocusOwner()) {
            g.setPaint(palette.accent());
            g.setStroke(new BasicStroke(FOCUS_PX));
            double half = FOCUS_PX / 2;
            g.draw(new Rectangle2D.Double(
                    box.getX() + half, box.getY() + half, box.getWidth() - FOCUS_PX, box.getHeight() - FOCUS_PX));
        }
    }

    static void line(Graphics2D g, Color colour, float weightPx, double x0, double y0, double x1, double y1) {
        g.setPaint(colour);
        g.setStroke(new BasicStroke(weightPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Line2D.Double(x0, y0, x1, y1));
    }

    /** Draws text with its left end and its middle at a point; returns its width. */
    static double text(Graphics2D g, String text, Font font, double leftPx, double middlePx) {
        g.setFont(font);
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(text, (float) leftPx, (float) (middlePx + (metrics.getAscent() - metrics.getDescent()) / 2.0));
        return metrics.stringWidth(text);
    }

    /** What is chosen, for those who don't see it. */
    final void say(String spoken) {
        getAccessibleContext().setAccessibleDescription(spoken);
    }

    /** Has a key do something while the focus is here. */
    final void key(String key, Runnable done) {
        Keys.bind(this, WHEN_FOCUSED, key, done);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return role;
                }
            };
        }
        return accessibleContext;
    }
}
