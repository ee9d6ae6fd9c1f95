package tuttarco.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Collects the strokes of a row and draws them, all of one kind in one path, as {@link CellPen} does with cells. */
public final class StrokePen {
    /** Below this width a stroke's sign is left out; its shade still shows it. */
    private static final double LEAST_SIGN_PX = 9;

    private static final double SIGN_PX = 11;
    private static final double THIN = 0.12;
    private static final double HEAVY = 0.24;
    private static final double TREMOLO = 0.16;

    private final Path2D againstFills = new Path2D.Double();
    private final Path2D shades = new Path2D.Double();
    private final Path2D ends = new Path2D.Double();
    private final Path2D dotted = new Path2D.Double();
    private final Path2D dashes = new Path2D.Double();
    private final Path2D tremolos = new Path2D.Double();
    private final Path2D endsByHand = new Path2D.Double();
    private final Path2D crossed = new Path2D.Double();
    private final Path2D corners = new Path2D.Double();
    private final Path2D signs = new Path2D.Double();
    private final Path2D againstSigns = new Path2D.Double();

    /** A stretch in which the strokes went against what they are compared with; it lies under them. */
    public void addAgainst(Rectangle2D box) {
        againstFills.append(CellPen.bevelled(box), false);
    }

    /** A span of a reading. */
    public void add(Bow bow, boolean against, Rectangle2D box) {
        Stroke stroke = bow.stroke();
        StrokeKind kind = stroke.kind();
        double x = box.getCenterX();
        double y = box.getCenterY();
        double sizePx = Math.min(SIGN_PX, box.getWidth() - 2);
        if (kind == StrokeKind.UNSURE && box.getWidth() > 4) {
            dotted.append(
                    new Rectangle2D.Double(box.getX() + 1.5, box.getY() + 1, box.getWidth() - 3, box.getHeight() - 2),
                    false);
        } else if (kind == StrokeKind.UNSEEN) {
            dashes.append(new Rectangle2D.Double(x - 4, y - 0.6, 8, 1.2), false);
        } else if (kind == StrokeKind.ABSENT) {
            crossed.append(CellPen.crossed(box), false);
        } else if (kind == StrokeKind.TREMOLO && box.getWidth() >= LEAST_SIGN_PX) {
            tremolos.append(BowSigns.tremolo(x, y, sizePx, sizePx * TREMOLO), false);
        }
        kind.direction().ifPresent(d -> {
            if (!against && d == BowDirection.DOWN) {
                shades.append(box, false);
            }
            if (box.getWidth() >= LEAST_SIGN_PX) {
                double weightPx = Math.max(1.2, sizePx * (against ? HEAVY : THIN));
                (against ? againstSigns : signs).append(BowSigns.of(d, x, y, sizePx, weightPx), false);
            }
        });
        boolean moved = bow.end() instanceof Edge.ByHand;
        (moved ? endsByHand : ends)
                .append(new Line2D.Double(box.getMaxX(), box.getMinY(), box.getMaxX(), box.getMaxY()), false);
        if (stroke.source() == Stroke.Source.BY_HAND) {
            corners.append(CellPen.corner(box), false);
        }
    }

    public void draw(Graphics2D g, Palette palette) {
        fill(g, palette.against(), againstFills);
        fill(g, palette.shade(), shades);
        g.setPaint(palette.rule());
        g.setStroke(Look.HAIRLINE);
        g.draw(ends);
        g.setPaint(palette.secondary());
        g.draw(crossed);
        g.setStroke(Look.DOTTED);
        g.draw(dotted);
        fill(g, palette.secondary(), dashes);
        fill(g, palette.ink(), tremolos);
        fill(g, palette.with(), signs);
        fill(g, palette.heavy(), againstSigns);
        fill(g, palette.ink(), corners);
        g.setStroke(Look.MIDDLING);
        g.draw(endsByHand);
    }

    private static void fill(Graphics2D g, Color colour, Path2D path) {
        g.setPaint(colour);
        g.fill(path);
    }
}
