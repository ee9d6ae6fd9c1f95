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
import tuttarco.beats.BeatMap;
import tuttarco.seats.Player;

/** Draws a section by beat in systems: bar numbers above, the marked row, then the players by desk. */
final class SectionPlot extends Plot {
    static final int KEY_PX = 28;

    private final transient List<CellRow> rows;
    private final transient Systems systems;
    private final transient BeatMap beats;

    SectionPlot(List<CellRow> rows, Systems systems, BeatMap beats) {
        this.rows = List.copyOf(rows);
        this.systems = systems;
        this.beats = beats;
    }

    @Override
    public String getPlotType() {
        return "section by beat";
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
        double y = area.getY();
        for (List<BarRun> system : systems.systems()) {
            drawSystem(g, system, area.getX(), y);
            y += systems.systemHeightPx() + Systems.GAP_PX;
        }
        drawKey(g, area.getX() + Systems.NAMES_PX, y - Systems.GAP_PX / 2.0 + KEY_PX / 2.0);
    }

    private void drawSystem(Graphics2D g, List<BarRun> system, double left, double top) {
        double x0 = left + Systems.NAMES_PX;
        double y0 = top + Systems.BAR_NUMBERS_PX;
        double x1 = x0 + Systems.beats(system) * systems.cellWidthPx();
        drawCells(g, system, x0, y0);
        drawRows(g, left, x0, x1, y0);
        drawBars(g, system, x0, y0);
        if (beats.stops() && beats.beginsRun(system.get(0).firstIndex())) {
            drawTime(g, system.get(0).firstIndex(), left, x0, y0 - Systems.BAR_NUMBERS_PX / 2.0 + 1);
        }
    }

    /** The time in the clip at which a run begins. */
    private void drawTime(Graphics2D g, int index, double left, double x0, double middle) {
        String time = "from " + Words.clock(beats.beats().get(index).timeS());
        double right = x0 - 2 * Look.STEP_PX;
        g.setPaint(Look.PALETTE.secondary());
        Look.textEndingAt(g, time, Look.semibold(Look.SMALL_PX), right, middle, right - left);
    }

    private void drawCells(Graphics2D g, List<BarRun> system, double x0, double y0) {
        int first = system.get(0).firstIndex();
        int beats = Systems.beats(system);
        CellPen pen = new CellPen();
        for (int r = 0; r < rows.size(); r++) {
            for (int b = 0; b < beats; b++) {
                Rectangle2D box = new Rectangle2D.Double(
                        x0 + b * systems.cellWidthPx(),
                        y0 + r * systems.cellHeightPx(),
                        systems.cellWidthPx(),
                        systems.cellHeightPx());
                pen.add(rows.get(r).cells().get(first + b), box);
            }
        }
        pen.draw(g);
    }

    private void drawRows(Graphics2D g, double left, double x0, double x1, double y0) {
        boolean large = systems.cellHeightPx() < 22;
        Font names = Look.regular(large ? Look.SMALL_PX : Look.BODY_PX);
        for (int r = 0; r < rows.size(); r++) {
            CellRow row = rows.get(r);
            double y = y0 + r * systems.cellHeightPx();
            boolean newDesk = r > 0 && row.beginsDeskAfter(rows.get(r - 1));
            g.setPaint(newDesk || r == 0 ? Look.PALETTE.secondary() : Look.PALETTE.rule());
            g.setStroke(Look.HAIRLINE);
            g.draw(new Line2D.Double(newDesk ? left : x0, y, x1, y));
            drawName(g, row, names, left, x0, y + systems.cellHeightPx() / 2.0);
        }
        double bottom = y0 + rows.size() * systems.cellHeightPx();
        g.setPaint(Look.PALETTE.secondary());
        g.draw(new Line2D.Double(x0, bottom, x1, bottom));
    }

    private static void drawName(Graphics2D g, CellRow row, Font font, double left, double x0, double middle) {
        boolean leads = row.player().filter(Player::leader).isPresent();
        double right = x0 - 2 * Look.STEP_PX;
        g.setPaint(row.player().isPresent() ? Look.PALETTE.ink() : Look.PALETTE.secondary());
        double widthPx = Look.textEndingAt(g, row.name(), font, right, middle, right - left);
        if (leads) {
            g.setStroke(Look.MIDDLING);
            double under = middle + font.getSize() * 0.55;
            g.draw(new Line2D.Double(right - widthPx, under, right, under));
        }
    }

    private void drawBars(Graphics2D g, List<BarRun> system, double x0, double y0) {
        double bottom = y0 + rows.size() * systems.cellHeightPx();
        Path2D beats = new Path2D.Double();
        Path2D halves = new Path2D.Double();
        Path2D barLines = new Path2D.Double();
        double x = x0;
        g.setPaint(Look.PALETTE.ink());
        for (BarRun bar : system) {
            Look.textStartingAt(
                    g, bar.bar(), Look.semibold(Look.SMALL_PX), x + 2, y0 - Systems.BAR_NUMBERS_PX / 2.0 + 1);
            for (int b = 0; b < bar.beatCount(); b++) {
                Path2D lines = b == 0 ? barLines : bar.strong(b) ? halves : beats;
                lines.append(new Line2D.Double(x, y0, x, bottom), false);
                x += systems.cellWidthPx();
            }
        }
        barLines.append(new Line2D.Double(x, y0, x, bottom), false);
        stroke(g, beats, Look.PALETTE.rule(), Look.HAIRLINE);
        stroke(g, halves, Look.PALETTE.secondary(), Look.HAIRLINE);
        stroke(g, barLines, Look.PALETTE.ink(), Look.MIDDLING);
    }

    private static void stroke(Graphics2D g, Path2D path, java.awt.Color colour, java.awt.Stroke stroke) {
        g.setPaint(colour);
        g.setStroke(stroke);
        g.draw(path);
    }

    /** How high the key is; what somebody set by hand has a line of its own where there is any. */
    static int keyPx(List<CellRow> rows) {
        return byHand(rows) ? 2 * KEY_PX : KEY_PX;
    }

    private static boolean byHand(List<CellRow> rows) {
        return rows.stream().flatMap(row -> row.cells().stream()).anyMatch(Cell::byHand);
    }

    private void drawKey(Graphics2D g, double left, double middle) {
        drawKeyLine(g, SignKey.ofReadings(), left, middle);
        if (byHand(rows)) {
            drawKeyLine(g, SignKey.byHand(), left, middle + KEY_PX);
        }
    }

    private static void drawKeyLine(Graphics2D g, List<SignKey> signs, double left, double middle) {
        double x = left;
        for (SignKey sign : signs) {
            CellPen pen = new CellPen();
            for (Cell cell : sign.cells()) {
                pen.add(cell, new Rectangle2D.Double(x, middle - 11, 22, 22));
                x += 22;
            }
            pen.draw(g);
            g.setPaint(Look.PALETTE.ink());
            x += Look.STEP_PX;
            x += Look.textStartingAt(g, sign.words(), Look.regular(Look.SMALL_PX), x, middle) + 6 * Look.STEP_PX;
        }
    }
}
