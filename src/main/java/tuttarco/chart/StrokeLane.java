package tuttarco.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.stats.Interval;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Stroke;

/** The head of a row of the bow chart: bar numbers, and below them the strokes with their signs. */
final class StrokeLane extends AbstractXYAnnotation {
    static final int BAR_NUMBERS_PX = 18;
    static final int LANE_PX = 24;

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
        StrokePen pen = new StrokePen();
        for (Interval span : againstS) {
            time.span(span.low(), span.high(), top + 1, LANE_PX - 2).ifPresent(pen::addAgainst);
        }
        for (Bow bow : bows) {
            Stroke stroke = bow.stroke();
            time.span(stroke.startS(), stroke.endS(), top + 1, LANE_PX - 2)
                    .ifPresent(box -> pen.add(bow, against(stroke), box));
        }
        pen.draw(g, Look.PALETTE);
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
}
