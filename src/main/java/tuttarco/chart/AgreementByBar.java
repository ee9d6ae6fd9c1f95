package tuttarco.chart;

import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import tuttarco.beats.BeatMap;
import tuttarco.compare.BarAgreement;
import tuttarco.stats.Interval;

/** How much of each bar was bowed as marked, with its 95 % interval. */
public final class AgreementByBar implements Chart {
    private static final int LEAST_WIDTH_PX = 720;
    private static final int MOST_WIDTH_PX = 1176;
    private static final int BAR_PX = 28;

    /** Bars named in the title before "and n more". */
    private static final int MOST_NAMED = 4;

    private final List<BarAgreement> bars;
    private final BeatMap beats;

    /** The bars of the beats in the order played, at least one. */
    public AgreementByBar(List<BarAgreement> bars, BeatMap beats) {
        this.bars = List.copyOf(bars);
        this.beats = beats;
        if (this.bars.isEmpty()) {
            throw new IllegalArgumentException("without bars there is nothing to draw");
        }
    }

    @Override
    public String key() {
        return "agreement-by-bar";
    }

    @Override
    public String title() {
        List<BarAgreement> judged = bars.stream().filter(b -> b.judged() > 0).toList();
        if (judged.isEmpty()) {
            return "No bar could be judged";
        }
        double lowest = judged.stream().mapToDouble(AgreementByBar::share).min().orElse(1);
        if (lowest == 1) {
            return "Every bar that could be judged was bowed as marked";
        }
        List<String> names = judged.stream()
                .filter(b -> share(b) == lowest)
                .map(BarAgreement::bar)
                .toList();
        String where = (names.size() == 1 ? "bar " : "bars ") + listed(names);
        return "Least together in " + where + ": " + Words.percent(lowest) + " as marked";
    }

    @Override
    public String help() {
        return "Each point is the share of readable bows that went as marked in a bar; its whisker is the 95 % interval "
                + "(Wilson), long where few bows could be read. A dash means that nothing in the bar could be judged."
                + (beats.stops() ? " A line stands where the playing stopped." : "");
    }

    @Override
    public int widthPx() {
        return Math.min(MOST_WIDTH_PX, Math.max(LEAST_WIDTH_PX, 120 + bars.size() * BAR_PX));
    }

    @Override
    public int heightPx() {
        return 300;
    }

    @Override
    public JFreeChart draw() {
        XYPlot plot = new XYPlot(points(), barAxis(), shareAxis(), renderer());
        Look.dress(plot);
        plot.setDomainAxisLocation(AxisLocation.TOP_OR_LEFT);
        plot.setAxisOffset(new RectangleInsets(Look.STEP_PX, 2 * Look.STEP_PX, 0, 0));
        for (int percent : List.of(0, 50, 100)) {
            plot.addRangeMarker(new ValueMarker(percent, Look.PALETTE.rule(), Look.HAIRLINE), Layer.BACKGROUND);
        }
        for (int i = 0; i < bars.size(); i++) {
            if (bars.get(i).judged() == 0) {
                plot.addAnnotation(dash(i));
            }
            if (i > 0 && beats.beginsRun(bars.get(i).firstIndex())) {
                plot.addDomainMarker(new ValueMarker(i - 0.5, Look.PALETTE.ink(), Look.MIDDLING), Layer.BACKGROUND);
            }
        }
        return Look.chart(title(), plot);
    }

    private YIntervalSeriesCollection points() {
        YIntervalSeries series = new YIntervalSeries("as marked");
        for (int i = 0; i < bars.size(); i++) {
            BarAgreement bar = bars.get(i);
            if (bar.judged() > 0) {
                double percent = 100 * share(bar);
                Interval whisker = bar.interval().orElse(new Interval(0, 1));
                series.add(i, percent, 100 * whisker.low(), 100 * whisker.high());
            }
        }
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        data.addSeries(series);
        return data;
    }

    private static XYErrorRenderer renderer() {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-4.5, -4.5, 9, 9));
        renderer.setSeriesPaint(0, Look.PALETTE.with());
        renderer.setErrorPaint(Look.PALETTE.with());
        renderer.setErrorStroke(Look.MIDDLING);
        renderer.setCapLength(5);
        return renderer;
    }

    private NumberAxis barAxis() {
        int every = Math.max(1, (int) Math.ceil(bars.size() / 36.0));
        NumberAxis axis = new NumberAxis("bar");
        Look.dress(axis);
        axis.setRange(-0.6, bars.size() - 0.4);
        axis.setTickUnit(new NumberTickUnit(
                every, new NamesFormat(bars.stream().map(BarAgreement::bar).toList())));
        axis.setTickLabelFont(Look.semibold(Look.SMALL_PX));
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    private static NumberAxis shareAxis() {
        NumberAxis axis = new NumberAxis("bowed as marked");
        Look.dress(axis);
        axis.setRange(-4, 104);
        DecimalFormat percent = new DecimalFormat("0' %'", DecimalFormatSymbols.getInstance(Locale.ROOT));
        axis.setTickUnit(new NumberTickUnit(50, percent));
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    private static XYTextAnnotation dash(int index) {
        XYTextAnnotation dash = new XYTextAnnotation("–", index, 25);
        Font font = Look.semibold(Look.TITLE_PX);
        dash.setFont(font);
        dash.setPaint(Look.PALETTE.secondary());
        dash.setTextAnchor(TextAnchor.CENTER);
        return dash;
    }

    private static double share(BarAgreement bar) {
        return (double) bar.with() / bar.judged();
    }

    private static String listed(List<String> names) {
        int shown = names.size() > MOST_NAMED ? MOST_NAMED : names.size() - 1;
        if (shown == 0) {
            return names.get(0);
        }
        String last = names.size() > MOST_NAMED ? names.size() - MOST_NAMED + " more" : names.get(shown);
        return names.stream().limit(shown).collect(Collectors.joining(", ")) + " and " + last;
    }

    @Override
    public ChartTable table() {
        List<List<String>> rows = bars.stream().map(this::row).toList();
        return new ChartTable(
                "Agreement with the marking, bar by bar",
                List.of("Bar", "Time", "As marked", "Judged", "Share", "95 % interval"),
                rows);
    }

    private List<String> row(BarAgreement bar) {
        String interval = bar.interval()
                .map(i -> Math.round(100 * i.low()) + "–" + Words.percent(i.high()))
                .orElse("–");
        String share = bar.judged() == 0 ? "not judged" : Words.percent(share(bar));
        String time = Words.clock(beats.beats().get(bar.firstIndex()).timeS());
        return List.of(bar.bar(), time, Integer.toString(bar.with()), Integer.toString(bar.judged()), share, interval);
    }
}
