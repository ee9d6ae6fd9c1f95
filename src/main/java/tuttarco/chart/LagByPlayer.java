package tuttarco.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XIntervalSeries;
import org.jfree.data.xy.XIntervalSeriesCollection;
import tuttarco.compare.Metric;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.PlayerTiming.Measured;
import tuttarco.compare.Timing;

/** How late each player changes, with its interval and what can't be told from the errors of reading. */
public final class LagByPlayer implements Chart {
    private static final int WIDTH_PX = 720;
    private static final int ROW_PX = 28;
    private static final int AROUND_PX = 132;

    /** Longest label, letters, so that the lags keep their room. */
    private static final int LONGEST_LABEL = 26;

    /** The axis reaches at least so far to both sides, milliseconds. */
    private static final double LEAST_REACH_MS = 80;

    private static final List<Integer> STEPS_MS = List.of(20, 50, 100, 200);
    private static final int MOST_STEPS = 8;

    private final Timing timing;

    /** A section of at least one player beside the one the lags are to. */
    public LagByPlayer(Timing timing) {
        this.timing = timing;
        if (timing.players().isEmpty()) {
            throw new IllegalArgumentException("without players there is nothing to draw");
        }
    }

    @Override
    public String key() {
        return "lag-by-player";
    }

    @Override
    public String title() {
        List<PlayerTiming> claimed = timing.claimed();
        if (claimed.size() == 1) {
            String label = shortened(claimed.get(0));
            return label + " changes " + claimed.get(0).claim().word() + ": " + median(claimed.get(0));
        }
        if (!claimed.isEmpty()) {
            return Stream.of(Claim.LATE, Claim.EARLY)
                            .map(c -> Words.count(count(c), "player") + " " + c.word())
                            .filter(said -> !said.startsWith("0 "))
                            .reduce((a, b) -> a + ", " + b)
                            .orElseThrow()
                    + " in changing bow";
        }
        return count(Claim.TOO_FEW) == timing.players().size()
                ? "Too few changes to say who is late"
                : "Nobody is shown to change late or early";
    }

    private long count(Claim claim) {
        return timing.players().stream().filter(p -> p.claim() == claim).count();
    }

    @Override
    public String help() {
        String from = timing.toLeader() ? "the leader's" : "the median of the others'";
        return "Each mark is the median of a player's lags to " + from
                + ", its whisker the 95 % interval (bootstrap). Within the"
                + " grey bar nothing can be told from the errors of reading. A filled diamond is a player who is late or "
                + "early beyond that and beyond chance (signed-rank test, Holm over the section), a ring one of whom that "
                + "is not shown.";
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return AROUND_PX + timing.players().size() * ROW_PX;
    }

    @Override
    public JFreeChart draw() {
        XIntervalSeriesCollection data = new XIntervalSeriesCollection();
        data.addSeries(points("shown", LagByPlayer::shown));
        data.addSeries(points("not shown", p -> !shown(p)));
        XYPlot plot = new XYPlot(data, lagAxis(), playerAxis(), renderer());
        Look.dress(plot);
        plot.setAxisOffset(new RectangleInsets(0, 2 * Look.STEP_PX, Look.STEP_PX, 0));
        plot.addDomainMarker(new ValueMarker(0, Look.PALETTE.ink(), Look.MIDDLING), Layer.BACKGROUND);
        for (int i = 0; i < timing.players().size(); i++) {
            annotate(plot, i, timing.players().get(i));
        }
        return Look.chart(title(), plot);
    }

    private static boolean shown(PlayerTiming player) {
        return player.claim() == Claim.LATE || player.claim() == Claim.EARLY;
    }

    private XIntervalSeries points(String name, Predicate<PlayerTiming> which) {
        XIntervalSeries series = new XIntervalSeries(name);
        for (int i = 0; i < timing.players().size(); i++) {
            PlayerTiming player = timing.players().get(i);
            int row = i;
            if (which.test(player)) {
                player.lag()
                        .ifPresent(l -> series.add(
                                l.medianMs(),
                                l.intervalMs().low(),
                                l.intervalMs().high(),
                                row));
            }
        }
        return series;
    }

    private static void annotate(XYPlot plot, int row, PlayerTiming player) {
        player.lag().ifPresent(l -> {
            // the axis runs downwards
            XYBoxAnnotation unseen = new XYBoxAnnotation(
                    -l.smallestMs(), row + 0.3, l.smallestMs(), row - 0.3, null, null, Look.PALETTE.rule());
            plot.getRenderer().addAnnotation(unseen, Layer.BACKGROUND);
        });
        String said = said(player);
        if (!said.isEmpty()) {
            double endMs = player.lag()
                    .map(l -> Math.max(l.intervalMs().high(), l.smallestMs()))
                    .orElse(0.0);
            XYTextAnnotation words = new XYTextAnnotation("  " + said, endMs, row);
            words.setFont(shown(player) ? Look.semibold(Look.SMALL_PX) : Look.regular(Look.SMALL_PX));
            words.setPaint(shown(player) ? Look.PALETTE.ink() : Look.PALETTE.secondary());
            words.setTextAnchor(TextAnchor.CENTER_LEFT);
            plot.addAnnotation(words);
        }
    }

    private static String said(PlayerTiming player) {
        return switch (player.claim()) {
            case LATE, EARLY -> player.claim().word();
            case TOO_FEW -> "too few changes";
            case NONE -> "";
        };
    }

    private static XYErrorRenderer renderer() {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawYError(false);
        renderer.setDefaultLinesVisible(false);
        renderer.setErrorStroke(Look.MIDDLING);
        renderer.setCapLength(5);
        mark(renderer, 0, diamond(), true);
        mark(renderer, 1, new Ellipse2D.Double(-4.5, -4.5, 9, 9), false);
        return renderer;
    }

    private static void mark(XYErrorRenderer renderer, int series, Shape shape, boolean filled) {
        renderer.setSeriesShape(series, shape);
        renderer.setSeriesPaint(series, filled ? Look.PALETTE.against() : Look.PALETTE.with());
        renderer.setSeriesShapesFilled(series, filled);
        renderer.setSeriesStroke(series, Look.MIDDLING);
    }

    private static Shape diamond() {
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(0, -7);
        diamond.lineTo(7, 0);
        diamond.lineTo(0, 7);
        diamond.lineTo(-7, 0);
        diamond.closePath();
        return diamond;
    }

    private NumberAxis lagAxis() {
        double reachMs = LEAST_REACH_MS;
        for (PlayerTiming player : timing.players()) {
            reachMs = Math.max(reachMs, player.lag().map(LagByPlayer::reachMs).orElse(0.0));
        }
        double rangeMs = reachMs * 1.25;
        NumberAxis axis = new NumberAxis("milliseconds: earlier to the left, later to the right of "
                + (timing.toLeader() ? "the leader" : "the others"));
        Look.dress(axis);
        axis.setRange(-rangeMs, rangeMs);
        int stepMs = STEPS_MS.stream()
                .filter(s -> 2 * rangeMs / s <= MOST_STEPS)
                .findFirst()
                .orElse(STEPS_MS.get(STEPS_MS.size() - 1));
        axis.setTickUnit(
                new NumberTickUnit(stepMs, new DecimalFormat("0;−0", DecimalFormatSymbols.getInstance(Locale.ROOT))));
        return axis;
    }

    private static double reachMs(Measured lag) {
        return Math.max(
                lag.smallestMs(),
                Math.max(
                        Math.abs(lag.intervalMs().low()),
                        Math.abs(lag.intervalMs().high())));
    }

    private SymbolAxis playerAxis() {
        List<String> labels =
                timing.players().stream().map(LagByPlayer::shortened).toList();
        SymbolAxis axis = new SymbolAxis(null, labels.toArray(String[]::new));
        Look.dress(axis);
        axis.setTickLabelFont(Look.able(Look.regular(Look.SMALL_PX), String.join("", labels)));
        axis.setGridBandsVisible(false);
        axis.setInverted(true);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        axis.setRange(-0.6, labels.size() - 0.4);
        return axis;
    }

    private static String shortened(PlayerTiming player) {
        String label = Words.plain(player.player().label());
        int letters = label.codePointCount(0, label.length());
        return letters <= LONGEST_LABEL
                ? label
                : label.substring(0, label.offsetByCodePoints(0, LONGEST_LABEL - 1))
                                .stripTrailing() + "…";
    }

    private static String median(PlayerTiming player) {
        return player.lag().map(l -> signed(l.medianMs()) + " ms").orElse("–");
    }

    /** {@code +12 to +40 ms}. */
    public static String interval(Measured lag) {
        return signed(lag.intervalMs().low()) + " to " + signed(lag.intervalMs().high()) + " ms";
    }

    /** {@code +12}, {@code −40} or {@code 0}. */
    public static String signed(double ms) {
        long whole = Math.round(ms);
        return (whole > 0 ? "+" : whole < 0 ? "−" : "") + Math.abs(whole);
    }

    @Override
    public ChartTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (PlayerTiming player : timing.players()) {
            rows.add(List.of(
                    Words.plain(player.player().label()),
                    Integer.toString(player.changes()),
                    median(player),
                    player.lag().map(LagByPlayer::interval).orElse("–"),
                    player.lag().map(l -> Math.round(l.spreadMs()) + " ms").orElse("–"),
                    player.lag().map(l -> Math.round(l.smallestMs()) + " ms").orElse("–"),
                    said(player).isEmpty() ? "not shown" : said(player)));
        }
        return new ChartTable(
                "Lags of bow changes, player by player",
                List.of(
                        "Player",
                        "Changes",
                        Metric.LAG.title(),
                        "95 % interval",
                        Metric.LAG_SPREAD.title(),
                        Metric.SMALLEST_LAG.title(),
                        "Late or early"),
                rows);
    }
}
