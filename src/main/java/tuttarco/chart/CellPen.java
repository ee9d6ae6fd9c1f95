package tuttarco.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import tuttarco.bow.BowDirection;

/** Collects cells and draws them, all of one kind in one path, so that files stay small. */
public final class CellPen {
    /** Sign height as a part of the smaller cell side; signs breathe as in print (chosen on rendered charts). */
    private static final double SIGN = 0.5;

    private static final double THIN = 0.11;
    private static final double HEAVY = 0.24;
    /** Side of the mark of what was set by hand, as a part of the smaller cell side (chosen on rendered charts). */
    private static final double HAND_MARK = 0.28;

    /** A cell's fill stops this many pixels inside it, so that neighbours stay apart. */
    private static final double INSET_PX = 1.5;

    private final Path2D shade = new Path2D.Double();
    private final Path2D shownSigns = new Path2D.Double();
    private final Path2D withSigns = new Path2D.Double();
    private final Path2D againstFills = new Path2D.Double();
    private final Path2D againstSigns = new Path2D.Double();
    private final Path2D dotted = new Path2D.Double();
    private final Path2D outlines = new Path2D.Double();
    private final Path2D dashes = new Path2D.Double();
    private final Path2D handMarks = new Path2D.Double();

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
            case ABSENT -> dashes.append(cross(box, signPx), false);
            case EMPTY -> {}
        }
        if (cell.byHand()) {
            handMarks.append(handMark(inset(box)), false);
        }
    }

    void draw(Graphics2D g) {
        draw(g, Look.PALETTE);
    }

    public void draw(Graphics2D g, Palette palette) {
        g.setPaint(palette.shade());
        g.fill(shade);
        g.setPaint(palette.against());
        g.fill(againstFills);
        g.setPaint(palette.ink());
        g.fill(shownSigns);
        g.setPaint(palette.heavy());
        g.fill(againstSigns);
        g.setPaint(palette.with());
        g.fill(withSigns);
        g.setPaint(palette.secondary());
        g.fill(dashes);
        g.setStroke(Look.HAIRLINE);
        g.draw(outlines);
        g.setStroke(Look.DOTTED);
        g.draw(dotted);
        g.setPaint(palette.ink());
        g.fill(handMarks);
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

    /** Two thin lines across each other, for nobody there. */
    private static Shape cross(Rectangle2D box, double signPx) {
        double half = signPx / 3;
        Path2D cross = new Path2D.Double();
        for (double lean : List.of(-1.0, 1.0)) {
            Path2D line = new Path2D.Double();
            line.moveTo(box.getCenterX() - half, box.getCenterY() - lean * half);
            line.lineTo(box.getCenterX() + half, box.getCenterY() + lean * half);
            cross.append(Look.HAIRLINE.createStrokedShape(line), false);
        }
        return cross;
    }

    /** The mark of what was set by hand: the lower left corner filled, as a page's corner folded up. */
    static Path2D handMark(Rectangle2D box) {
        double sidePx = HAND_MARK * Math.min(box.getHeight(), box.getWidth());
        Path2D corner = new Path2D.Double();
        corner.moveTo(box.getMinX(), box.getMaxY() - sidePx);
        corner.lineTo(box.getMinX() + sidePx, box.getMaxY());
        corner.lineTo(box.getMinX(), box.getMaxY());
        corner.closePath();
        return corner;
    }

    private static Rectangle2D inset(Rectangle2D box) {
        return new Rectangle2D.Double(
                box.getX() + INSET_PX,
                box.getY() + INSET_PX,
                box.getWidth() - 2 * INSET_PX,
                box.getHeight() - 2 * INSET_PX);
    }

    /** The box with its upper right corner cut off, like a page with a corner turned down. */
    static Path2D bevelled(Rectangle2D box) {
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
