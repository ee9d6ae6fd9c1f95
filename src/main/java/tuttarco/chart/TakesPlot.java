package tuttarco.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;
import tuttarco.season.Changed;
import tuttarco.season.PlayerBar;
import tuttarco.season.Tally;

/** Draws takes and players by bar in systems: bar numbers above, a row a take, then a row a player. */
final class TakesPlot extends Plot {
    private static final int OVERALL_PX = 112;
    private static final int MOST_CELLS_PX = 864;
    private static final int LEAST_CELLS_PX = 480;
    private static final int WIDEST_CELL_PX = 40;
    private static final int NARROWEST_CELL_PX = 24;
    private static final int TAKE_PX = 32;
    private static final int PLAYER_PX = 24;
    private static final int BETWEEN_PX = 8;
    private static final int KEY_PX = 32;
    /** From here on a triangle is large, as a share of the bar. */
    private static final double LARGE = 0.5;

    private static final double LARGE_PX = 7;
    private static final double SMALL_PX = 4;

    /**
     * A take's bars.
     *
     * @param bars one a bar; empty where nothing could be judged
     */
    record TakeRow(String name, List<Optional<Tally>> bars) {}

    /** A player's bars, and what became of them altogether. */
    record PlayerRow(String name, List<PlayerBar> bars, Optional<Changed> overall) {}

    /** What a cell of a player shows. */
    private enum Glyph {
        MUCH_MORE("more, half a bar at least"),
        MORE("more"),
        ALIKE("no change"),
        LESS("less"),
        MUCH_LESS("less, half a bar at least"),
        UNKNOWN("not read in both");

        private final String word;

        Glyph(String word) {
            this.word = word;
        }

        static Glyph of(OptionalDouble difference) {
            if (difference.isEmpty()) {
                return UNKNOWN;
            }
            double by = difference.getAsDouble();
            if (by == 0) {
                return ALIKE;
            }
            boolean much = Math.abs(by) >= LARGE;
            return by > 0 ? (much ? MUCH_MORE : MORE) : much ? MUCH_LESS : LESS;
        }
    }

    private final transient List<String> bars;
    private final transient List<TakeRow> takes;
    private final transient List<PlayerRow> players;
    private final int cellPx;
    private final int barsInSystem;

    TakesPlot(List<String> bars, List<TakeRow> takes, List<PlayerRow> players) {
        this.bars = List.copyOf(bars);
        this.takes = List.copyOf(takes);
        this.players = List.copyOf(players);
        this.cellPx = Math.min(WIDEST_CELL_PX, Math.max(NARROWEST_CELL_PX, MOST_CELLS_PX / bars.size()));
        this.barsInSystem = Math.min(bars.size(), MOST_CELLS_PX / cellPx);
    }

    int widthPx() {
        return Systems.NAMES_PX + Math.max(LEAST_CELLS_PX, barsInSystem * cellPx) + OVERALL_PX;
    }

    int heightPx() {
        return systems() * systemPx() + (systems() - 1) * Systems.GAP_PX + KEY_PX;
    }

    private int systems() {
        return (bars.size() + barsInSystem - 1) / barsInSystem;
    }

    /** Between its systems, pixels from its top. */
    List<Integer> cutsPx() {
        return IntStream.range(1, systems())
                .mapToObj(system -> system * (systemPx() + Systems.GAP_PX) - Systems.GAP_PX / 2)
                .toList();
    }

    private int systemPx() {
        return Systems.BAR_NUMBERS_PX + takes.size() * TAKE_PX + BETWEEN_PX + players.size() * PLAYER_PX;
    }

    @Override
    public String getPlotType() {
        return "takes by bar";
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
        double y = area.getY();
        for (int first = 0; first < bars.size(); first += barsInSystem) {
            drawSystem(g, first, Math.min(bars.size(), first + barsInSystem), area.getX(), y);
            y += systemPx() + Systems.GAP_PX;
        }
        drawKey(g, area.getX(), y - Systems.GAP_PX + KEY_PX / 2.0);
    }

    private void drawSystem(Graphics2D g, int first, int end, double left, double top) {
        double x0 = left + Systems.NAMES_PX;
        double x1 = x0 + (end - first) * cellPx;
        g.setPaint(Look.PALETTE.ink());
        for (int b = first; b < end; b++) {
            Look.textStartingAt(
                    g,
                    bars.get(b),
                    Look.semibold(Look.SMALL_PX),
                    x0 + (b - first) * cellPx + 2.0,
                    top + Systems.BAR_NUMBERS_PX / 2.0);
        }
        boolean last = end == bars.size();
        double y = top + Systems.BAR_NUMBERS_PX;
        for (TakeRow take : takes) {
            drawTake(g, take, first, end, x0, y);
            drawName(g, take.name(), left, y + TAKE_PX / 2.0);
            if (last) {
                drawOverall(g, overall(take), false, x1, y + TAKE_PX / 2.0);
            }
            y += TAKE_PX;
        }
        y += BETWEEN_PX;
        for (PlayerRow player : players) {
            line(g, x0, y, x1);
            drawPlayer(g, player, first, end, x0, y + PLAYER_PX / 2.0);
            drawName(g, player.name(), left, y + PLAYER_PX / 2.0);
            if (last) {
                drawOverall(g, overall(player), shown(player), x1, y + PLAYER_PX / 2.0);
            }
            y += PLAYER_PX;
        }
        line(g, x0, y, x1);
    }

    private static void line(Graphics2D g, double x0, double y, double x1) {
        g.setPaint(Look.PALETTE.rule());
        g.setStroke(Look.HAIRLINE);
        g.draw(new Line2D.Double(x0, y, x1, y));
    }

    private static void drawName(Graphics2D g, String name, double left, double middle) {
        g.setPaint(Look.PALETTE.ink());
        double room = Systems.NAMES_PX - 2 * Look.STEP_PX;
        Look.textEndingAt(g, name, Look.regular(Look.BODY_PX), left + room, middle, room);
    }

    private static void drawOverall(Graphics2D g, String words, boolean shown, double x1, double middle) {
        Font font = shown ? Look.semibold(Look.SMALL_PX) : Look.regular(Look.SMALL_PX);
        g.setPaint(shown ? Look.PALETTE.ink() : Look.PALETTE.secondary());
        Look.textStartingAt(g, words, font, x1 + 2 * Look.STEP_PX, middle);
    }

    private static String overall(TakeRow take) {
        Tally all = take.bars().stream().flatMap(Optional::stream).reduce(Tally.NONE, Tally::plus);
        return all.judged() == 0 ? "not judged" : Words.percent(all.share());
    }

    private static String overall(PlayerRow player) {
        return player.overall()
                .map(c -> Words.percent(c.first()) + " to " + Words.percent(c.second()))
                .orElse("not judged");
    }

    private static boolean shown(PlayerRow player) {
        return player.overall().filter(c -> c.claim().shown()).isPresent();
    }

    /** Filled from below by the share. */
    private void drawTake(Graphics2D g, TakeRow take, int first, int end, double x0, double top) {
        Path2D filled = new Path2D.Double();
        Path2D frames = new Path2D.Double();
        Path2D dashes = new Path2D.Double();
        double height = TAKE_PX - 6.0;
        for (int b = first; b < end; b++) {
            double x = x0 + (b - first) * cellPx + 1.5;
            double width = cellPx - 3.0;
            Optional<Tally> bar = take.bars().get(b);
            if (bar.isEmpty()) {
                dashes.append(dash(x + width / 2, top + TAKE_PX / 2.0), false);
            } else {
                double full = height * bar.get().share();
                filled.append(new Rectangle2D.Double(x, top + 3 + height - full, width, full), false);
                frames.append(new Rectangle2D.Double(x, top + 3, width, height), false);
            }
        }
        fill(g, filled, Look.PALETTE.with());
        stroke(g, frames, Look.PALETTE.secondary());
        stroke(g, dashes, Look.PALETTE.secondary());
    }

    private void drawPlayer(Graphics2D g, PlayerRow player, int first, int end, double x0, double middle) {
        for (Glyph glyph : Glyph.values()) {
            Path2D all = new Path2D.Double();
            for (int b = first; b < end; b++) {
                if (Glyph.of(player.bars().get(b).difference()) == glyph) {
                    all.append(shape(glyph, x0 + (b - first + 0.5) * cellPx, middle), false);
                }
            }
            paint(g, glyph, all);
        }
    }

    private static Shape shape(Glyph glyph, double x, double y) {
        return switch (glyph) {
            case MUCH_MORE -> triangle(x, y, LARGE_PX, -1);
            case MORE -> triangle(x, y, SMALL_PX, -1);
            case LESS -> triangle(x, y, SMALL_PX, 1);
            case MUCH_LESS -> triangle(x, y, LARGE_PX, 1);
            case ALIKE -> new Ellipse2D.Double(x - 1.2, y - 1.2, 2.4, 2.4);
            case UNKNOWN -> dash(x, y);
        };
    }

    private static Shape dash(double x, double y) {
        return new Line2D.Double(x - 4, y, x + 4, y);
    }

    /** @param pointing -1 up, 1 down */
    private static Shape triangle(double x, double y, double size, int pointing) {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x - size, y - pointing * size * 0.75);
        triangle.lineTo(x + size, y - pointing * size * 0.75);
        triangle.lineTo(x, y + pointing * size * 0.95);
        triangle.closePath();
        return triangle;
    }

    /** Less has a heavy edge, so that the two differ by more than where they point. */
    private static void paint(Graphics2D g, Glyph glyph, Shape shape) {
        switch (glyph) {
            case MUCH_MORE, MORE -> fill(g, shape, Look.PALETTE.with());
            case MUCH_LESS, LESS -> {
                fill(g, shape, Look.PALETTE.against());
                g.setPaint(Look.PALETTE.heavy());
                g.setStroke(Look.MIDDLING);
                g.draw(shape);
            }
            case ALIKE -> fill(g, shape, Look.PALETTE.secondary());
            case UNKNOWN -> stroke(g, shape, Look.PALETTE.secondary());
        }
    }

    private static void fill(Graphics2D g, Shape shape, Color colour) {
        g.setPaint(colour);
        g.fill(shape);
    }

    private static void stroke(Graphics2D g, Shape shape, Color colour) {
        g.setPaint(colour);
        g.setStroke(Look.HAIRLINE);
        g.draw(shape);
    }

    private static void drawKey(Graphics2D g, double left, double middle) {
        double x = left;
        for (Glyph glyph : Glyph.values()) {
            paint(g, glyph, shape(glyph, x + LARGE_PX, middle));
            g.setPaint(Look.PALETTE.ink());
            x += 2 * LARGE_PX + Look.STEP_PX;
            x += Look.textStartingAt(g, glyph.word, Look.regular(Look.SMALL_PX), x, middle) + 4 * Look.STEP_PX;
        }
    }
}
