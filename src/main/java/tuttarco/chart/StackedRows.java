package tuttarco.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;
import org.jfree.chart.plot.XYPlot;

/** Plots one under the other, each with an equal share of the height. */
final class StackedRows extends Plot {
    private final transient List<XYPlot> rows;

    StackedRows(List<XYPlot> rows) {
        this.rows = List.copyOf(rows);
    }

    @Override
    public String getPlotType() {
        return "rows";
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
        double heightPx = area.getHeight() / rows.size();
        for (int i = 0; i < rows.size(); i++) {
            Rectangle2D slice = new Rectangle2D.Double(
                    area.getX(), area.getY() + i * heightPx, area.getWidth(), heightPx - 2 * Look.STEP_PX);
            rows.get(i).draw(g, slice, null, null, null);
        }
    }
}
