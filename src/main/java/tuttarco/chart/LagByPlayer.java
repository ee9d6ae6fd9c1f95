package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
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
    private static final int AROUND_PX = 132;

    /** The axis reaches at least so far to both sides, milliseconds. */
    private static final double LEAST_REACH_MS = 80;

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
            String label = PlayerRows.shortened(claimed.get(0).player());
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
        return AROUND_PX + timing.players().size() * PlayerRows.ROW_PX;
    }

    @Override
    public JFreeChart draw() {
        XIntervalSeriesCollection data = new XIntervalSeriesCollection();
        data.addSeries(points("shown", LagByPlayer::shown));
        data.addSeries(points("not shown", p -> !shown(p)));
        XYPlot plot = new XYPlot(
                data,
                lagAxis(),
                PlayerRows.axis(
                        timing.players().stream().map(PlayerTiming::player).toList()),
                PlayerRows.diamondsAndRings());
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
            plot.addAnnotation(PlayerRows.words(said, endMs, row, shown(player)));
        }
    }

    private static String said(PlayerTiming player) {
        return switch (player.claim()) {
            case LATE, EARLY -> player.claim().word();
            case TOO_FEW -> "too few changes";
            case NONE -> "";
        };
    }

    private NumberAxis lagAxis() {
        double reachMs = LEAST_REACH_MS;
        for (PlayerTiming player : timing.players()) {
            reachMs = Math.max(reachMs, player.lag().map(LagByPlayer::reachMs).orElse(0.0));
        }
        double rangeMs = reachMs * 1.25;
        return LagAxis.of(
                "milliseconds: earlier to the left, later to the right of "
                        + (timing.toLeader() ? "the leader" : "the others"),
                rangeMs,
                MOST_STEPS);
    }

    private static double reachMs(Measured lag) {
        return Math.max(
                lag.smallestMs(),
                Math.max(
                        Math.abs(lag.intervalMs().low()),
                        Math.abs(lag.intervalMs().high())));
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
                    player.lag().map(l -> Words.milliseconds(l.spreadMs())).orElse("–"),
                    player.lag().map(l -> Words.milliseconds(l.smallestMs())).orElse("–"),
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
