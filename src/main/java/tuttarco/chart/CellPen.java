package tuttarco.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.bow.BowDirection;

/** Collects cells and draws them, all of one kind in one path, so that files stay small. */
public final class CellPen {
    /** Sign height as a part of the smaller cell side; signs breathe as in print (chosen on rendered charts). */
    private static final double SIGN = 0.5;

    private static final double THIN = 0.11;
    private static final double HEAVY = 0.24;
    /** A cell's fill stops this many pixels inside it, so that neighbours stay apart. */
    private static final double INSET_PX = 1.5;

    /** Side of a pencilled corner as a part of the smaller cell side, and at most in pixels (chosen on rendered charts). */
    private static final double CORNER = 0.34;

    private static final double MOST_CORNER_PX = 7;

    private final Path2D shade = new Path2D.Double();
    private final Path2D shownSigns = new Path2D.Double();
    private final Path2D withSigns = new Path2D.Double();
    private final Path2D againstFills = new Path2D.Double();
    private final Path2D againstSigns = new Path2D.Double();
    private final Path2D dotted = new Path2D.Double();
    private final Path2D outlines = new Path2D.Double();
    private final Path2D dashes = new Path2D.Double();
    private final Path2D crossed = new Path2D.Double();
    private final Path2D corners = new Path2D.Double();

    public void add(Cell cell, Rectangle2D box) {
        double signPx = SIGN * Math.min(box.getWidth(), box.getHeight());
        switch (cell.state()) {
            case SHOWN -> append(shownSigns, cell, box, signPx, THIN * 1.3);
            case WITH -> {
                if (cell.direction().filter(d -> d == BowDirection.DOWN).isPresent()) {
                    shade.append(inset(box), false);
                }
                append(withSigns, cell, box, signPx, THIN);
            }
            case AGAINST -> {
                againstFills.append(bevelled(inset(box)), false);
                append(againstSigns, cell, box, signPx * 1.1, HEAVY);
            }
            case UNSURE -> {
                dotted.append(inset(box), false);
                cell.direction()
                        .ifPresentOrElse(
                                d -> outlines.append(
                                        BowSigns.of(d, box.getCenterX(), box.getCenterY(), signPx, signPx * HEAVY),
                                        false),
                                () -> dashes.append(question(box, signPx), false));
            }
            case UNSEEN ->
                dashes.append(
                        new Rectangle2D.Double(
                                box.getCenterX() - signPx / 3, box.getCenterY() - 0.6, signPx / 1.5, 1.2),
                        false);
            case ABSENT -> crossed.append(crossed(inset(box)), false);
            case EMPTY -> {}
        }
        if (cell.byHand()) {
            corners.append(corner(inset(box)), false);
        }
    }

    void draw(Graphics2D g) {
        draw(g, Look.PALETTE);
    }

    public void draw(Graphics2D g, Palette palette) {
        Map<String, Color> colours = palette.byRole();
        for (Layer layer : layers()) {
            g.setPaint(colours.get(layer.role()));
            if (layer.line().isPresent()) {
                g.setStroke(layer.line().get());
                g.draw(layer.path());
            } else {
                g.fill(layer.path());
            }
        }
    }

    /**
     * What is drawn in one colour.
     *
     * @param role the colour's name in {@link Palette#byRole()}
     * @param line what its outline is drawn with; empty where it is filled
     */
    record Layer(Path2D path, String role, Optional<BasicStroke> line) {}

    /** All that the cells consist of, in the order drawn. */
    List<Layer> layers() {
        return List.of(
                filled(shade, "shade"),
                filled(againstFills, "against"),
                filled(shownSigns, "ink"),
                filled(againstSigns, "heavy"),
                filled(withSigns, "with"),
                filled(dashes, "secondary"),
                new Layer(outlines, "secondary", Optional.of(Look.HAIRLINE)),
                new Layer(crossed, "secondary", Optional.of(Look.HAIRLINE)),
                new Layer(dotted, "secondary", Optional.of(Look.DOTTED)),
                filled(corners, "ink"));
    }

    private static Layer filled(Path2D path, String role) {
        return new Layer(path, role, Optional.empty());
    }

    /** A line through a span in which the player was not there. */
    static Shape crossed(Rectangle2D box) {
        return new Line2D.Double(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMinY());
    }

    /** A pencilled corner, below right, in what was set by hand. */
    static Path2D corner(Rectangle2D box) {
        double sidePx = Math.min(MOST_CORNER_PX, CORNER * Math.min(box.getHeight(), box.getWidth()));
        Path2D path = new Path2D.Double();
        path.moveTo(box.getMaxX(), box.getMaxY() - sidePx);
        path.lineTo(box.getMaxX(), box.getMaxY());
        path.lineTo(box.getMaxX() - sidePx, box.getMaxY());
        path.closePath();
        return path;
    }

    /** A direction's sign, or a bar across where the bow stands still. */
    private static void append(Path2D path, Cell cell, Rectangle2D box, double signPx, double weight) {
        double x = box.getCenterX();
        double y = box.getCenterY();
        path.append(
                cell.direction()
                        .<Shape>map(d -> BowSigns.of(d, x, y, signPx, signPx * weight))
                        .orElse(new Rectangle2D.Double(
                                x - signPx / 2, y - signPx * weight / 2, signPx, signPx * weight)),
                false);
    }

    private static Shape question(Rectangle2D box, double signPx) {
        Shape glyph = Look.regular((int) Math.round(signPx * 1.2))
                .createGlyphVector(new FontRenderContext(null, true, true), "?")
                .getOutline();
        Rectangle2D bounds = glyph.getBounds2D();
        return AffineTransform.getTranslateInstance(
                        box.getCenterX() - bounds.getCenterX(), box.getCenterY() - bounds.getCenterY())
                .createTransformedShape(glyph);
    }

    private static Rectangle2D inset(Rectangle2D box) {
        return new Rectangle2D.Double(
                box.getX() + INSET_PX,
                box.getY() + INSET_PX,
                box.getWidth() - 2 * INSET_PX,
                box.getHeight() - 2 * INSET_PX);
    }

    /** The box with its upper right corner cut off, like a page with a corner turned down. */
    public static Path2D bevelled(Rectangle2D box) {
        double cutPx = 0.32 * Math.min(box.getHeight(), box.getWidth());
        Path2D path = new Path2D.Double();
        path.moveTo(box.getMinX(), box.getMinY());
        path.lineTo(box.getMaxX() - cutPx, box.getMinY());
        path.lineTo(box.getMaxX(), box.getMinY() + cutPx);
        path.lineTo(box.getMaxX(), box.getMaxY());
        path.lineTo(box.getMinX(), box.getMaxY());
        path.closePath();
        return path;
    }
}
