package tuttarco.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
import tuttarco.stats.Interval;
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

    private final transient List<Stroke> strokes;
    private final transient List<Interval> againstS;
    private final transient BeatMap beats;

    /** Strokes and beats may lie outside the row; what is outside is not drawn. */
    StrokeLane(List<Stroke> strokes, List<Interval> againstS, BeatMap beats) {
        this.strokes = strokes;
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
        RectangleEdge edge = Plot.resolveDomainAxisLocation(plot.getDomainAxisLocation(), PlotOrientation.VERTICAL);
        Time time = new Time(timeAxis, area, edge);
        double top = area.getMinY() + BAR_NUMBERS_PX;
        drawBarNumbers(g, area, time);
        for (Interval span : againstS) {
            time.span(span.low(), span.high(), top + 1, LANE_PX - 2).ifPresent(box -> {
                g.setPaint(Look.PALETTE.against());
                g.fill(CellPen.bevelled(box));
            });
        }
        for (Stroke stroke : strokes) {
            time.span(stroke.startS(), stroke.endS(), top + 1, LANE_PX - 2)
                    .ifPresent(box -> drawStroke(g, stroke, box));
        }
        g.setPaint(Look.PALETTE.secondary());
        g.setStroke(Look.HAIRLINE);
        double endPx = strokes.isEmpty()
                ? area.getMaxX()
                : Math.min(
                        area.getMaxX(), time.x(strokes.get(strokes.size() - 1).endS()));
        g.draw(new Line2D.Double(area.getMinX(), top, endPx, top));
        g.draw(new Line2D.Double(area.getMinX(), top + LANE_PX, endPx, top + LANE_PX));
    }

    private void drawBarNumbers(Graphics2D g, Rectangle2D area, Time time) {
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

    private void drawStroke(Graphics2D g, Stroke stroke, Rectangle2D box) {
        boolean against = againstS.stream().anyMatch(s -> s.low() <= middleS(stroke) && middleS(stroke) < s.high());
        if (stroke.kind() == StrokeKind.UNSURE && box.getWidth() > 4) {
            g.setPaint(Look.PALETTE.secondary());
            g.setStroke(Look.DOTTED);
            g.draw(new Rectangle2D.Double(box.getX() + 1.5, box.getY() + 1, box.getWidth() - 3, box.getHeight() - 2));
        } else if (stroke.kind() == StrokeKind.UNSEEN) {
            g.setPaint(Look.PALETTE.secondary());
            g.fill(new Rectangle2D.Double(box.getCenterX() - 4, box.getCenterY() - 0.6, 8, 1.2));
        } else if (stroke.kind() == StrokeKind.TREMOLO && box.getWidth() >= LEAST_SIGN_PX) {
            double sizePx = Math.min(SIGN_PX, box.getWidth() - 2);
            g.setPaint(Look.PALETTE.ink());
            g.fill(BowSigns.tremolo(box.getCenterX(), box.getCenterY(), sizePx, sizePx * TREMOLO));
        } else {
            stroke.kind().direction().ifPresent(d -> drawSign(g, d, against, box));
        }
        g.setPaint(Look.PALETTE.rule());
        g.setStroke(Look.HAIRLINE);
        g.draw(new Line2D.Double(box.getMaxX(), box.getMinY(), box.getMaxX(), box.getMaxY()));
    }

    private static void drawSign(Graphics2D g, BowDirection direction, boolean against, Rectangle2D box) {
        if (!against && direction == BowDirection.DOWN) {
            g.setPaint(Look.PALETTE.shade());
            g.fill(box);
        }
        if (box.getWidth() >= LEAST_SIGN_PX) {
            double sizePx = Math.min(SIGN_PX, box.getWidth() - 2);
            g.setPaint(against ? Look.PALETTE.heavy() : Look.PALETTE.with());
            g.fill(BowSigns.of(
                    direction,
                    box.getCenterX(),
                    box.getCenterY(),
                    sizePx,
                    Math.max(1.2, sizePx * (against ? HEAVY : THIN))));
        }
    }

    private static double middleS(Stroke stroke) {
        return (stroke.startS() + stroke.endS()) / 2;
    }

    /** Where times lie on a row. */
    private record Time(ValueAxis axis, Rectangle2D area, RectangleEdge edge) {
        double x(double timeS) {
            return axis.valueToJava2D(timeS, area, edge);
        }

        /** The part of a span that lies on the row. */
        Optional<Rectangle2D> span(double startS, double endS, double topPx, double heightPx) {
            double x0 = Math.max(area.getMinX(), x(startS));
            double x1 = Math.min(area.getMaxX(), x(endS));
            return x1 - x0 < 0.2 ? Optional.empty() : Optional.of(new Rectangle2D.Double(x0, topPx, x1 - x0, heightPx));
        }
    }
}
