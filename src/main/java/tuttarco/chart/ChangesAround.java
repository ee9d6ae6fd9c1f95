package tuttarco.chart;

import java.awt.Color;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedRangeXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import tuttarco.bow.BowDirection;
import tuttarco.compare.ChangeScatter;
import tuttarco.compare.ChangeScatter.Change;
import tuttarco.compare.ChangeScatter.InBar;
import tuttarco.seats.Player;

/** Every player's changes around those of the leader, in the bars in which they lie widest apart, side by side. */
public final class ChangesAround implements Chart {
    /** Fits beside the margins of a page 900 px wide. */
    private static final int WIDTH_PX = 860;

    private static final int AROUND_PX = 132;
    private static final int GAP_PX = 20;
    private static final int SIGN_PX = 10;

    /** So many changes of a bar have room in a row; more are drawn closer. */
    private static final int FEW_CHANGES = 3;

    /** Room of a change in a row, as a share of the row's height. */
    private static final double CHANGE_ROWS = 0.24;

    private static final int MOST_STEPS = 5;

    private final ChangeScatter scatter;

    /** At least one bar. */
    public ChangesAround(ChangeScatter scatter) {
        this.scatter = scatter;
        if (scatter.bars().isEmpty()) {
            throw new IllegalArgumentException("without bars there is nothing to draw");
        }
    }

    @Override
    public String key() {
        return "changes-around";
    }

    @Override
    public String title() {
        return "Changes lie widest apart in "
                + scatter.bars().stream()
                        .map(b -> "bar " + b.bar().name() + " (" + Words.milliseconds(b.spreadMs()) + ")")
                        .collect(Collectors.joining(", "));
    }

    @Override
    public String help() {
        return "Each sign is a bow change of one player, to a down-bow or to an up-bow as printed in parts, earlier to the left "
                + "and later to the right of " + reference()
                + ", the bar's changes one under the other. Signs on the shaded "
                + "band lie within " + Words.milliseconds(scatter.togetherMs())
                + "; those beyond it are heavy. In brackets stands the range that holds the middle half of the players, "
                + "errors of reading included. Changes not seen, or too far off to tell which one is meant, are missing.";
    }

    private String reference() {
        return scatter.toLeader() ? "the leader's change" : "the median change";
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return AROUND_PX + scatter.players().size() * PlayerRows.ROW_PX;
    }

    @Override
    public JFreeChart draw() {
        CombinedRangeXYPlot all = new CombinedRangeXYPlot(PlayerRows.axis(scatter.players()));
        all.setGap(GAP_PX);
        double rangeMs = 1.1
                * scatter.bars().stream()
                        .flatMap(b -> b.changes().stream())
                        .flatMap(c -> c.lagsMs().values().stream())
                        .mapToDouble(Math::abs)
                        .reduce(1.5 * scatter.togetherMs(), Math::max);
        for (InBar bar : scatter.bars()) {
            all.add(plot(bar, rangeMs));
        }
        all.setAxisOffset(new RectangleInsets(0, 2 * Look.STEP_PX, Look.STEP_PX, 0));
        return Look.chart(title(), all);
    }

    private XYPlot plot(InBar bar, double rangeMs) {
        NumberAxis axis = LagAxis.of("bar " + bar.bar().name() + ": ms from " + reference(), rangeMs, MOST_STEPS);
        XYPlot plot = new XYPlot(points(bar), axis, null, renderer());
        Look.dress(plot);
        plot.setAxisOffset(new RectangleInsets(0, 0, Look.STEP_PX, 0));
        IntervalMarker together = new IntervalMarker(-scatter.togetherMs(), scatter.togetherMs());
        together.setPaint(Look.PALETTE.shade());
        together.setAlpha(1);
        plot.addDomainMarker(together, Layer.BACKGROUND);
        plot.addDomainMarker(new ValueMarker(0, Look.PALETTE.ink(), Look.MIDDLING), Layer.BACKGROUND);
        for (int row = 1; row < scatter.players().size(); row++) {
            plot.addRangeMarker(new ValueMarker(row - 0.5, Look.PALETTE.rule(), Look.HAIRLINE), Layer.BACKGROUND);
        }
        return plot;
    }

    /** What is drawn alike: changes to one direction, within the band or beyond it. */
    private record Kind(BowDirection to, boolean beyond) {
        static List<Kind> all() {
            return Stream.of(false, true)
                    .flatMap(beyond -> Stream.of(BowDirection.values()).map(to -> new Kind(to, beyond)))
                    .toList();
        }

        Shape sign() {
            return BowSigns.of(to, 0, 0, SIGN_PX, SIGN_PX * (beyond ? 0.22 : 0.12));
        }

        Color colour() {
            return beyond ? Look.PALETTE.against() : Look.PALETTE.with();
        }
    }

    private XYSeriesCollection points(InBar bar) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (Kind kind : Kind.all()) {
            XYSeries series = new XYSeries(kind.toString(), false);
            for (int i = 0; i < bar.changes().size(); i++) {
                Change change = bar.changes().get(i);
                for (int row = 0; row < scatter.players().size(); row++) {
                    double y = row + aside(i, bar.changes().size());
                    lagMs(change, scatter.players().get(row))
                            .filter(lagMs -> kind(change, lagMs).equals(kind))
                            .ifPresent(lagMs -> series.add((double) lagMs, y));
                }
            }
            data.addSeries(series);
        }
        return data;
    }

    private Kind kind(Change change, double lagMs) {
        return new Kind(change.to(), Math.abs(lagMs) > scatter.togetherMs());
    }

    /** How far below the middle of its row a change is drawn, rows. */
    private static double aside(int index, int changes) {
        double step = CHANGE_ROWS * Math.min(1, (double) FEW_CHANGES / changes);
        return step * (index - (changes - 1) / 2.0);
    }

    private static Optional<Double> lagMs(Change change, Player player) {
        return Optional.ofNullable(change.lagsMs().get(player));
    }

    private static XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        List<Kind> kinds = Kind.all();
        for (int i = 0; i < kinds.size(); i++) {
            renderer.setSeriesShape(i, kinds.get(i).sign());
            renderer.setSeriesPaint(i, kinds.get(i).colour());
        }
        return renderer;
    }

    @Override
    public ChartTable table() {
        List<String> headings = new ArrayList<>(List.of("Player"));
        for (InBar bar : scatter.bars()) {
            for (Change change : bar.changes()) {
                headings.add(
                        "Bar " + bar.bar().name() + ", " + change.to().word() + ", " + Words.clock(change.timeS()));
            }
        }
        return new ChartTable(
                "Changes around " + reference() + ", milliseconds",
                headings,
                scatter.players().stream().map(this::row).toList());
    }

    private List<String> row(Player player) {
        return Stream.concat(
                        Stream.of(Words.plain(player.label())),
                        scatter.bars().stream()
                                .flatMap(b -> b.changes().stream())
                                .map(c -> lagMs(c, player)
                                        .map(LagByPlayer::signed)
                                        .orElse("–")))
                .toList();
    }
}
