package tuttarco.chart;

import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import tuttarco.season.Season;
import tuttarco.season.Trend;
import tuttarco.season.Trend.Claim;
import tuttarco.season.Trend.Point;

/** How figures of one kind went over a season: a row for each player or passage, take by take, all rows to one scale. */
public final class SeasonTrend implements Chart {
    private static final int WIDTH_PX = 880;
    private static final int ROW_PX = 52;
    private static final int AROUND_PX = 120;

    /** Room for the words before and behind a row, and for a day below it, pixels. */
    private static final int SCALE_PX = 44;

    private static final int ENDS_PX = 150;
    private static final int DAY_PX = 52;

    /** About what the labels leave to the rows, pixels. */
    private static final int PLOT_PX = 660;

    /** Half the height of a row's figures, rows. */
    private static final double HALF = 0.36;

    /** More are only counted in the title. */
    private static final int MOST_NAMED = 2;

    /** What the rows show. */
    public enum Kind {
        SHARE("season-share", "player"),
        PASSAGE("season-passages", "passage"),
        LAG("season-lag", "player");

        private final String key;
        private final String of;

        Kind(String key, String of) {
            this.key = key;
            this.of = of;
        }
    }

    private final Kind kind;
    private final Season season;
    private final List<Trend> rows;
    private final double lowest;
    private final double highest;

    private SeasonTrend(Kind kind, Season season, List<Trend> rows) {
        this.kind = kind;
        this.season = season;
        this.rows = List.copyOf(rows);
        if (kind == Kind.LAG) {
            double reachMs = points().mapToDouble(p -> Math.max(
                            Math.abs(p.interval().low()), Math.abs(p.interval().high())))
                    .max()
                    .orElse(0);
            highest = Math.max(50, 50 * Math.ceil(reachMs / 50));
            lowest = -highest;
        } else {
            highest = 1;
            lowest = Math.min(
                    0.8,
                    Math.floor(points().mapToDouble(p -> p.interval().low())
                                            .min()
                                            .orElse(0)
                                    * 5)
                            / 5);
        }
    }

    /** The charts a season has figures for. */
    public static List<SeasonTrend> of(Season season) {
        List<Trend> shares = new ArrayList<>(List.of(season.section()));
        shares.addAll(season.players());
        return Stream.of(
                        new SeasonTrend(Kind.SHARE, season, shares),
                        new SeasonTrend(Kind.LAG, season, season.lags()),
                        new SeasonTrend(Kind.PASSAGE, season, season.byPassage()))
                .filter(chart -> chart.points().findAny().isPresent())
                .toList();
    }

    private Stream<Point> points() {
        return rows.stream().flatMap(r -> r.seen().stream());
    }

    public Kind kind() {
        return kind;
    }

    @Override
    public String key() {
        return kind.key;
    }

    @Override
    public String title() {
        String of = switch (kind) {
            case SHARE -> season.marked() ? "With the marking" : "With the leader";
            case PASSAGE -> "By passage";
            case LAG -> "Changing bow";
        };
        String claimed = Stream.of(Claim.RISING, Claim.FALLING)
                .filter(c -> count(c) > 0)
                .map(c -> named(c) + " " + word(c))
                .collect(Collectors.joining(", "));
        if (!claimed.isEmpty()) {
            return of + ": " + claimed;
        }
        return of + ": "
                + (count(Claim.TOO_FEW) == rows.size() ? "too few takes to tell a trend" : "no trend beyond chance");
    }

    private String named(Claim claim) {
        long count = count(claim);
        return count > MOST_NAMED
                ? count + " of " + rows.size()
                : rows.stream()
                        .filter(r -> r.claim() == claim)
                        .map(r -> r.subject() instanceof Trend.Section ? "the section" : TrendWords.shortened(r))
                        .collect(Collectors.joining(" and "));
    }

    private long count(Claim claim) {
        return rows.stream().filter(r -> r.claim() == claim).count();
    }

    private String word(Claim claim) {
        return TrendWords.of(kind == Kind.LAG, claim);
    }

    @Override
    public String help() {
        return "Takes from left to right in the order of their days; each row runs from " + scale(lowest) + " to "
                + scale(highest) + (kind == Kind.LAG ? ", later upwards" : "")
                + ". A point is a take's " + (kind == Kind.LAG ? "median lag" : "share")
                + ", its whisker the 95 % interval; a dash is a take without such a figure. Diamonds on a heavy line are a "
                + "trend beyond chance (Mann-Kendall test, Holm over all rows"
                + (kind == Kind.SHARE ? " of players" : "")
                + "), rings on a thin line are not shown to be one. At the end of the line: the first figure and the last.";
    }

    private String scale(double value) {
        return kind == Kind.LAG ? LagByPlayer.signed(value) + " ms" : Words.percent(value);
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return AROUND_PX + rows.size() * ROW_PX;
    }

    @Override
    public JFreeChart draw() {
        XYPlot plot = new XYPlot();
        Look.dress(plot);
        plot.setDomainAxis(takeAxis());
        plot.setRangeAxis(Look.rows(rows.stream().map(TrendWords::shortened).toList()));
        plot.setAxisOffset(new RectangleInsets(0, 2 * Look.STEP_PX, 2 * Look.STEP_PX, 0));
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setDefaultLinesVisible(true);
        renderer.setCapLength(4);
        renderer.setErrorStroke(Look.HAIRLINE);
        for (int row = 0; row < rows.size(); row++) {
            frame(renderer, row);
            addRow(data, renderer, row);
            sayEnds(renderer, row);
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
        return Look.chart(title(), plot);
    }

    /** The scale's ends, and no lag in between. */
    private void frame(XYErrorRenderer renderer, int row) {
        double right = season.takes().size() - 0.6;
        for (double value : kind == Kind.LAG ? new double[] {0} : new double[] {lowest, highest}) {
            renderer.addAnnotation(
                    new XYLineAnnotation(
                            -0.4, at(row, value), right, at(row, value), Look.HAIRLINE, Look.PALETTE.rule()),
                    Layer.BACKGROUND);
        }
        if (row == 0) {
            for (double value : new double[] {lowest, highest}) {
                renderer.addAnnotation(
                        Look.words(scale(value), -0.4 - 6 / stepPx(), at(row, value), TextAnchor.CENTER_RIGHT, false));
            }
        }
    }

    /** A series for each run of takes that follow each other. */
    private void addRow(YIntervalSeriesCollection data, XYErrorRenderer renderer, int row) {
        Trend trend = rows.get(row);
        Optional<YIntervalSeries> open = Optional.empty();
        for (int take = 0; take < trend.points().size(); take++) {
            Optional<Point> point = trend.points().get(take);
            if (point.isEmpty()) {
                open = Optional.empty();
                renderer.addAnnotation(Look.words("–", take, row, TextAnchor.CENTER, false));
                continue;
            }
            if (open.isEmpty()) {
                open = Optional.of(new YIntervalSeries(row + " " + take));
                dress(renderer, data.getSeriesCount(), trend.claimed());
                data.addSeries(open.get());
            }
            open.get()
                    .add(
                            take,
                            at(row, point.get().value()),
                            at(row, point.get().interval().low()),
                            at(row, point.get().interval().high()));
        }
    }

    private static void dress(XYErrorRenderer renderer, int series, boolean claimed) {
        renderer.setSeriesShape(series, claimed ? Look.diamond(5) : new Ellipse2D.Double(-3.5, -3.5, 7, 7));
        renderer.setSeriesPaint(series, claimed ? Look.PALETTE.ink() : Look.PALETTE.with());
        renderer.setSeriesStroke(series, claimed ? Look.HEAVY : Look.HAIRLINE);
        renderer.setSeriesShapesFilled(series, true);
        renderer.setSeriesFillPaint(series, claimed ? Look.PALETTE.ink() : Look.PALETTE.ground());
        renderer.setUseFillPaint(true);
        renderer.setDrawOutlines(true);
        renderer.setSeriesOutlineStroke(series, Look.MIDDLING);
    }

    private void sayEnds(XYErrorRenderer renderer, int row) {
        Trend trend = rows.get(row);
        String said = trend.claimed() ? TrendWords.ends(trend) + ", " + TrendWords.word(trend) : TrendWords.ends(trend);
        renderer.addAnnotation(Look.words(
                said, season.takes().size() - 0.6 + 8 / stepPx(), row, TextAnchor.CENTER_LEFT, trend.claimed()));
    }

    /** The axis of rows runs downwards. */
    private double at(int row, double value) {
        double share = (value - lowest) / (highest - lowest);
        return row + HALF - 2 * HALF * Math.max(0, Math.min(1, share));
    }

    /** Pixels from take to take. */
    private double stepPx() {
        return (double) (PLOT_PX - SCALE_PX - ENDS_PX) / season.takes().size();
    }

    private NumberAxis takeAxis() {
        NumberAxis axis = new NumberAxis();
        Look.dress(axis);
        int takes = season.takes().size();
        axis.setRange(-0.5 - SCALE_PX / stepPx(), takes - 0.5 + ENDS_PX / stepPx());
        int every = (int) Math.max(1, Math.ceil(DAY_PX / stepPx()));
        List<String> days = IntStream.range(0, takes)
                .mapToObj(t -> TrendWords.when(season.takes(), t))
                .toList();
        axis.setTickUnit(new NumberTickUnit(every, new NamesFormat(days)));
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    @Override
    public ChartTable table() {
        List<String> headings = new ArrayList<>(List.of(kind == Kind.PASSAGE ? "Passage" : "Player"));
        IntStream.range(0, season.takes().size()).forEach(t -> headings.add(TrendWords.when(season.takes(), t)));
        headings.add("Trend");
        return new ChartTable(
                "Take by take, each " + kind.of + (kind == Kind.LAG ? "'s lag" : "'s share")
                        + " with its 95 % interval",
                headings,
                rows.stream().map(TrendWords::row).toList());
    }
}
