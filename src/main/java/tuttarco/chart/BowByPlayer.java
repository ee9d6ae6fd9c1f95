package tuttarco.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XIntervalSeries;
import org.jfree.data.xy.XIntervalSeriesCollection;
import tuttarco.compare.BowSharing;
import tuttarco.compare.Metric;
import tuttarco.compare.SharedBow;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.EndsKnown;

/** How much bow each player takes beside the leader. */
public final class BowByPlayer implements Chart {
    private static final int WIDTH_PX = 720;
    private static final int AROUND_PX = 132;

    /** The axis reaches at least so far, percent of the leader's bow. */
    private static final double LEAST_REACH_PERCENT = 125;

    private static final double PERCENT = 100;

    private final List<SharedBow> players;

    /** A section of at least one player beside the leader. */
    public BowByPlayer(BowSharing sharing) {
        this.players = sharing.players();
        if (players.isEmpty()) {
            throw new IllegalArgumentException("without players there is nothing to draw");
        }
    }

    @Override
    public String key() {
        return "bow-by-player";
    }

    @Override
    public String title() {
        List<SharedBow> halves = players.stream().filter(BowByPlayer::half).toList();
        if (halves.size() == 1) {
            return PlayerRows.shortened(halves.get(0).player()) + " takes about half the leader's bow or less";
        }
        if (!halves.isEmpty()) {
            return halves.size() + " players take about half the leader's bow or less";
        }
        return players.stream().allMatch(p -> amounts(p).isEmpty())
                ? "Too few strokes measured to say who takes less bow"
                : "Nobody is shown to take half the leader's bow or less";
    }

    @Override
    public String help() {
        return "Each mark is the median, over the strokes both played, of a player's bow beside the leader's, each as a share of "
                + "the longest of these strokes; its whisker is the 95 % interval (bootstrap). The heavy line is the leader. A "
                + "filled diamond is a player whose whole interval lies nearer to half than to as much, a ring one of whom "
                + "that is not shown.";
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return AROUND_PX + players.size() * PlayerRows.ROW_PX;
    }

    @Override
    public JFreeChart draw() {
        XIntervalSeriesCollection data = new XIntervalSeriesCollection();
        data.addSeries(points("half", BowByPlayer::half));
        data.addSeries(points("not shown", p -> !half(p)));
        XYPlot plot = new XYPlot(
                data,
                axis(),
                PlayerRows.axis(players.stream().map(SharedBow::player).toList()),
                PlayerRows.diamondsAndRings());
        Look.dress(plot);
        plot.setAxisOffset(new RectangleInsets(0, 2 * Look.STEP_PX, Look.STEP_PX, 0));
        plot.addDomainMarker(new ValueMarker(PERCENT, Look.PALETTE.ink(), Look.MIDDLING), Layer.BACKGROUND);
        plot.addDomainMarker(new ValueMarker(PERCENT / 2, Look.PALETTE.secondary(), Look.DOTTED), Layer.BACKGROUND);
        for (int i = 0; i < players.size(); i++) {
            SharedBow player = players.get(i);
            if (half(player) || amounts(player).isEmpty()) {
                double endPercent =
                        amounts(player).map(a -> PERCENT * a.interval().high()).orElse(0.0);
                plot.addAnnotation(PlayerRows.words(said(player), endPercent, i, half(player)));
            }
        }
        return Look.chart(title(), plot);
    }

    private XIntervalSeries points(String name, Predicate<SharedBow> which) {
        XIntervalSeries series = new XIntervalSeries(name);
        IntStream.range(0, players.size())
                .filter(i -> which.test(players.get(i)))
                .forEach(i -> amounts(players.get(i))
                        .ifPresent(a -> series.add(
                                PERCENT * a.ratio(),
                                PERCENT * a.interval().low(),
                                PERCENT * a.interval().high(),
                                i)));
        return series;
    }

    private NumberAxis axis() {
        double reach = players.stream()
                .flatMap(p -> amounts(p).stream())
                .mapToDouble(a -> PERCENT * a.interval().high())
                .reduce(LEAST_REACH_PERCENT, Math::max);
        NumberAxis axis = new NumberAxis("bow taken: 100 % is as much as the leader");
        Look.dress(axis);
        axis.setRange(0, reach * 1.05);
        DecimalFormat percent = new DecimalFormat("0' %'", DecimalFormatSymbols.getInstance(Locale.ROOT));
        axis.setTickUnit(new NumberTickUnit(reach > 2 * LEAST_REACH_PERCENT ? 100 : 25, percent));
        return axis;
    }

    private static Optional<Amounts> amounts(SharedBow player) {
        return player.amount() instanceof Amounts a ? Optional.of(a) : Optional.empty();
    }

    private static boolean half(SharedBow player) {
        return amounts(player).filter(Amounts::half).isPresent();
    }

    private static String said(SharedBow player) {
        return amounts(player).map(a -> a.half() ? "half or less" : "not shown").orElse("too few measured");
    }

    @Override
    public ChartTable table() {
        return new ChartTable(
                "Bow taken beside the leader, player by player",
                List.of(
                        "Player",
                        "Strokes measured",
                        Metric.BOW_AMOUNT.title(),
                        "95 % interval",
                        "Half or less",
                        "Strokes placed",
                        Metric.OTHER_END.title()),
                players.stream().map(BowByPlayer::row).toList());
    }

    private static List<String> row(SharedBow player) {
        return List.of(
                Words.plain(player.player().label()),
                Integer.toString(player.amount().strokes()),
                amounts(player).map(a -> Words.percent(a.ratio())).orElse("–"),
                amounts(player).map(a -> Words.percents(a.interval())).orElse("–"),
                said(player),
                Integer.toString(player.ends().strokes()),
                player.ends() instanceof EndsKnown known
                        ? Words.percent(known.share()) + " (" + Words.percents(known.interval()) + ")"
                        : "too few placed");
    }
}
