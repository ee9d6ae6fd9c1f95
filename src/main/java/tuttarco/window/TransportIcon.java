package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import javax.swing.UIManager;

/** Signs of the transport, drawn in the colour of the words around them. The loop's are a part's repeat bar lines. */
final class TransportIcon implements Icon {
    static final TransportIcon PLAY = new TransportIcon(triangle(4, 14));
    static final TransportIcon PAUSE = new TransportIcon(upright(3.5, 6.5), upright(9.5, 12.5));
    static final TransportIcon BACK = new TransportIcon(upright(11.5, 13.5), triangle(9.5, 2.5));
    static final TransportIcon ON = new TransportIcon(upright(2.5, 4.5), triangle(6.5, 13.5));
    static final TransportIcon LOOP = new TransportIcon(repeat(0, 1), repeat(16, -1));

    /** Side of the square a sign is drawn in, before scaling; pixels. */
    private static final int SIDE = 16;

    private final Path2D path = new Path2D.Double();

    private TransportIcon(Shape... shapes) {
        for (Shape shape : shapes) {
            path.append(shape, false);
        }
    }

    private static Shape triangle(double baseX, double tipX) {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(baseX, 2);
        triangle.lineTo(tipX, 8);
        triangle.lineTo(baseX, 14);
        triangle.closePath();
        return triangle;
    }

    /** A thick and a thin line and two dots, from an edge inwards. */
    private static Shape repeat(double edge, int inwards) {
        Path2D repeat = new Path2D.Double();
        repeat.append(upright(edge, edge + inwards * 2.2), false);
        repeat.append(upright(edge + inwards * 3.2, edge + inwards * 4.2), false);
        for (double y : new double[] {6, 10}) {
            repeat.append(new Ellipse2D.Double(edge + inwards * 6 - 0.9, y - 0.9, 1.8, 1.8), false);
        }
        return repeat;
    }

    private static Rectangle2D upright(double oneX, double otherX) {
        return new Rectangle2D.Double(Math.min(oneX, otherX), 2, Math.abs(oneX - otherX), 12);
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        Graphics2D g2 = (Graphics2D) g.create();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setColor(c.isEnabled() ? c.getForeground() : UIManager.getColor("Button.disabledText"));
        g2.translate(x, y);
        double scale = UIScale.scale((float) SIDE) / SIDE;
        g2.fill(path.createTransformedShape(AffineTransform.getScaleInstance(scale, scale)));
        g2.dispose();
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIDE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIDE);
    }
}
