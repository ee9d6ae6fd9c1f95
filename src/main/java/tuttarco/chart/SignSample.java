package tuttarco.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;

/** One entry of a {@link SignKey} as a small picture of its own, beside which its words can flow. */
public final class SignSample implements Chart {
    private static final int CELL_PX = 24;

    private final String key;
    private final SignKey sign;

    public SignSample(String key, SignKey sign) {
        this.key = key;
        this.sign = sign;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String title() {
        return sign.words();
    }

    @Override
    public String help() {
        return "What this sign means.";
    }

    @Override
    public int widthPx() {
        return CELL_PX * sign.cells().size();
    }

    @Override
    public int heightPx() {
        return CELL_PX;
    }

    @Override
    public JFreeChart draw() {
        return Look.picture(new Cells(sign.cells()));
    }

    @Override
    public ChartTable table() {
        return new ChartTable(sign.words(), List.of("Sign"), List.of(List.of(sign.words())));
    }

    private static final class Cells extends Plot {
        private final transient List<Cell> cells;

        Cells(List<Cell> cells) {
            this.cells = cells;
        }

        @Override
        public String getPlotType() {
            return "signs";
        }

        @Override
        public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
            CellPen pen = new CellPen();
            for (int i = 0; i < cells.size(); i++) {
                pen.add(
                        cells.get(i),
                        new Rectangle2D.Double(area.getX() + i * CELL_PX, area.getY(), CELL_PX, area.getHeight()));
            }
            pen.draw(g);
        }
    }
}
