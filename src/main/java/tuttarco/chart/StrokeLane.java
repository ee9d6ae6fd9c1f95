package tuttarco.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
import tuttarco.stats.Interval;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** The head of a row of the bow chart: bar numbers, and below them the strokes with their signs. */
final class StrokeLane extends AbstractXYAnnotation {
    static final int BAR_NUMBERS_PX = 18;
    static final int LANE_PX = 24;

    /** Below this width a stroke's sign is left out; its shade still shows it. */
    private static final double LEAST_SIGN_PX = 9;

    private static final double SIGN_PX = 11;
    private static final double THIN = 0.12;
    private static final double HEAVY = 0.24;
    private static final double TREMOLO = 0.16;

    private final transient List<Bow> bows;
    private final transient List<Interval> againstS;
    private final transient BeatMap beats;

    /** Strokes and beats may lie outside the row; what is outside is not drawn. */
    StrokeLane(List<Bow> bows, List<Interval> againstS, BeatMap beats) {
        this.bows = bows;
        this.againstS = againstS;
        this.beats = beats;
    }

    @Override
    public void draw(
            Graphics2D g,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis timeAxis,
            ValueAxis travelAxis,
            int rendererIndex,
            PlotRenderingInfo info) {
        RowTime time = new RowTime(timeAxis, area, plot.getDomainAxisEdge());
        double top = area.getMinY() + BAR_NUMBERS_PX;
        drawBarNumbers(g, area, time);
        Pens pens = new Pens();
        for (Interval span : againstS) {
            time.span(span.low(), span.high(), top + 1, LANE_PX - 2)
                    .ifPresent(box -> pens.againstFills.append(CellPen.bevelled(box), false));
        }
        for (Bow bow : bows) {
            Stroke stroke = bow.stroke();
            time.span(stroke.startS(), stroke.endS(), top + 1, LANE_PX - 2)
                    .ifPresent(box -> pens.add(bow, against(stroke), box));
        }
        pens.draw(g);
        g.setPaint(Look.PALETTE.secondary());
        g.setStroke(Look.HAIRLINE);
        double endPx = bows.isEmpty()
                ? area.getMaxX()
                : Math.min(
                        area.getMaxX(),
                        time.x(bows.get(bows.size() - 1).stroke().endS()));
        g.draw(new Line2D.Double(area.getMinX(), top, endPx, top));
        g.draw(new Line2D.Double(area.getMinX(), top + LANE_PX, endPx, top + LANE_PX));
    }

    private void drawBarNumbers(Graphics2D g, Rectangle2D area, RowTime time) {
        double freeFromPx = area.getMinX();
        for (BarRun bar : BarRun.of(beats)) {
            Beat first = beats.beats().get(bar.firstIndex());
            double x = time.x(first.timeS());
            if (x >= freeFromPx - 0.5 && x < area.getMaxX() - 2 * Look.STEP_PX) {
                g.setPaint(Look.PALETTE.ink());
                double widthPx = Look.textStartingAt(
                        g, bar.bar(), Look.semibold(Look.SMALL_PX), x + 2, area.getMinY() + BAR_NUMBERS_PX / 2.0 - 1);
                freeFromPx = x + widthPx + 2 * Look.STEP_PX;
            }
        }
    }

    private boolean against(Stroke stroke) {
        double middleS = (stroke.startS() + stroke.endS()) / 2;
        return againstS.stream().anyMatch(s -> s.low() <= middleS && middleS < s.high());
    }

    /** Collects the strokes of a row and draws them, all of one kind in one path, as {@link CellPen} does. */
    private static final class Pens {
        private final Path2D againstFills = new Path2D.Double();
        private final Path2D shades = new Path2D.Double();
        private final Path2D ends = new Path2D.Double();
        private final Path2D endsByHand = new Path2D.Double();
        private final Path2D crossed = new Path2D.Double();
        private final Path2D corners = new Path2D.Double();
        private final Path2D dotted = new Path2D.Double();
        private final Path2D dashes = new Path2D.Double();
        private final Path2D tremolos = new Path2D.Double();
        private final Path2D signs = new Path2D.Double();
        private final Path2D againstSigns = new Path2D.Double();

        void add(Bow bow, boolean against, Rectangle2D box) {
            Stroke stroke = bow.stroke();
            double x = box.getCenterX();
            double y = box.getCenterY();
            double sizePx = Math.min(SIGN_PX, box.getWidth() - 2);
            if (stroke.kind() == StrokeKind.UNSURE && box.getWidth() > 4) {
                dotted.append(
                        new Rectangle2D.Double(
                                box.getX() + 1.5, box.getY() + 1, box.getWidth() - 3, box.getHeight() - 2),
                        false);
            } else if (stroke.kind() == StrokeKind.UNSEEN) {
                dashes.append(new Rectangle2D.Double(x - 4, y - 0.6, 8, 1.2), false);
            } else if (stroke.kind() == StrokeKind.ABSENT) {
                crossed.append(CellPen.crossed(box), false);
            } else if (stroke.kind() == StrokeKind.TREMOLO && box.getWidth() >= LEAST_SIGN_PX) {
                tremolos.append(BowSigns.tremolo(x, y, sizePx, sizePx * TREMOLO), false);
            }
            stroke.kind().direction().ifPresent(d -> {
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

        void draw(Graphics2D g) {
            Palette palette = Look.PALETTE;
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
}
