package tuttarco.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;

/** The beats behind a row of the bow chart, heavier where a bar begins or the playing stops; two paths, so that files stay small. */
final class BeatLines extends AbstractXYAnnotation {
    private final transient BeatMap beats;

    /** Beats may lie outside the row; what is outside is not drawn. */
    BeatLines(BeatMap beats) {
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
        Path2D barLines = new Path2D.Double();
        Path2D others = new Path2D.Double();
        for (BarRun bar : BarRun.of(beats)) {
            for (int b = bar.firstIndex(); b <= bar.lastIndex(); b++) {
                double timeS = beats.beats().get(b).timeS();
                if (timeAxis.getRange().contains(timeS)) {
                    (b == bar.firstIndex() ? barLines : others).append(line(time.x(timeS), area), false);
                }
            }
        }
        for (Run run : beats.runs()) {
            double endS = beats.endS(run);
            if (beats.stopped(endS) && timeAxis.getRange().contains(endS)) {
                barLines.append(line(time.x(endS), area), false);
            }
        }
        draw(g, others, Look.PALETTE.rule(), Look.HAIRLINE);
        draw(g, barLines, Look.PALETTE.secondary(), Look.MIDDLING);
    }

    private static Line2D line(double x, Rectangle2D area) {
        return new Line2D.Double(x, area.getMinY(), x, area.getMaxY());
    }

    private static void draw(Graphics2D g, Path2D lines, Color colour, BasicStroke stroke) {
        g.setPaint(colour);
        g.setStroke(stroke);
        g.draw(lines);
    }
}
