package tuttarco.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;

/** Draws a player's bars line by line: bar numbers above, the rows' names before, a cell a beat. Lengths are pixels. */
final class PlayedBarsPlot extends Plot {
    static final int NAMES_PX = 64;
    static final int CELL_WIDTH_PX = 30;
    private static final int CELL_HEIGHT_PX = 26;
    private static final int NUMBERS_PX = 20;
    private static final int GAP_PX = 12;

    private final transient List<PlayedBars.Row> rows;
    private final transient List<List<BarRun>> lines;

    PlayedBarsPlot(List<PlayedBars.Row> rows, List<List<BarRun>> lines) {
        this.rows = List.copyOf(rows);
        this.lines = List.copyOf(lines);
    }

    static int heightPx(int lines, int rows) {
        return lines * (NUMBERS_PX + rows * CELL_HEIGHT_PX) + (lines - 1) * GAP_PX + 2;
    }

    @Override
    public String getPlotType() {
        return "bars of a player";
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
        double y = area.getY();
        for (List<BarRun> line : lines) {
            drawLine(g, line, area.getX(), y + NUMBERS_PX);
            y += NUMBERS_PX + rows.size() * CELL_HEIGHT_PX + GAP_PX;
        }
    }

    private void drawLine(Graphics2D g, List<BarRun> bars, double left, double top) {
        int beats = Systems.beats(bars);
        double x0 = left + NAMES_PX;
        double widthPx = Math.min(CELL_WIDTH_PX, (double) CELL_WIDTH_PX * PlayedBars.LINE_BEATS / beats);
        CellPen pen = new CellPen();
        for (int r = 0; r < rows.size(); r++) {
            for (int b = 0; b < beats; b++) {
                pen.add(
                        rows.get(r).cells().get(bars.get(0).firstIndex() + b),
                        new Rectangle2D.Double(x0 + b * widthPx, top + r * CELL_HEIGHT_PX, widthPx, CELL_HEIGHT_PX));
            }
        }
        pen.draw(g);
        drawRows(g, left, x0, x0 + beats * widthPx, top);
        drawBars(g, bars, x0, widthPx, top);
    }

    private void drawRows(Graphics2D g, double left, double x0, double x1, double top) {
        g.setStroke(Look.HAIRLINE);
        for (int r = 0; r <= rows.size(); r++) {
            double y = top + r * CELL_HEIGHT_PX;
            g.setPaint(r == 0 || r == rows.size() ? Look.PALETTE.secondary() : Look.PALETTE.rule());
            g.draw(new Line2D.Double(x0, y, x1, y));
            if (r < rows.size()) {
                String name = rows.get(r).name();
                g.setPaint(Look.PALETTE.ink());
                Look.textStartingAt(
                        g,
                        name,
                        rows.get(r).own() ? Look.semibold(Look.BODY_PX) : Look.regular(Look.BODY_PX),
                        left,
                        y + CELL_HEIGHT_PX / 2.0);
            }
        }
    }

    private void drawBars(Graphics2D g, List<BarRun> bars, double x0, double widthPx, double top) {
        double bottom = top + rows.size() * CELL_HEIGHT_PX;
        Path2D beats = new Path2D.Double();
        Path2D barLines = new Path2D.Double();
        double x = x0;
        g.setPaint(Look.PALETTE.ink());
        for (BarRun bar : bars) {
            double roomPx = bar.beatCount() * widthPx - 4;
            Font font = Look.semibold(Look.BODY_PX);
            Look.textStartingAt(
                    g,
                    Words.shortened(Words.plain(bar.bar()), g.getFontMetrics(font), roomPx),
                    font,
                    x + 2,
                    top - NUMBERS_PX / 2.0);
            for (int b = 0; b < bar.beatCount(); b++) {
                (b == 0 ? barLines : beats).append(new Line2D.Double(x, top, x, bottom), false);
                x += widthPx;
            }
        }
        barLines.append(new Line2D.Double(x, top, x, bottom), false);
        g.setStroke(Look.HAIRLINE);
        g.setPaint(Look.PALETTE.rule());
        g.draw(beats);
        g.setStroke(Look.MIDDLING);
        g.setPaint(Look.PALETTE.ink());
        g.draw(barLines);
    }
}
