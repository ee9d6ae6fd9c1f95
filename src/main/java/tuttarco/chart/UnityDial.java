package tuttarco.chart;

import java.awt.geom.Ellipse2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XIntervalSeries;
import org.jfree.data.xy.XIntervalSeriesCollection;
import tuttarco.compare.Unity;
import tuttarco.compare.Unity.Agreement;

/**
 * Free or unified: a scale from bowing as chance has it to bowing as one, with a pointer for the section and, where there are
 * both, one for partners at a desk and one for players of different desks.
 */
public final class UnityDial implements Chart {
    private static final double LOWEST = -0.6;
    private static final double HIGHEST = 1.15;
    private static final int ROW_PX = 36;

    private final Unity.Told told;
    private final List<Row> rows = new ArrayList<>();

    private record Row(String name, Agreement agreement) {}

    public UnityDial(Unity.Told told) {
        this.told = told;
        told.desks().ifPresent(d -> {
            rows.add(new Row("different desks", d.apart()));
            rows.add(new Row("partners at a desk", d.partners()));
        });
        rows.add(new Row("the section", told.section()));
    }

    @Override
    public String key() {
        return "free-or-unified";
    }

    @Override
    public String title() {
        return switch (told.kind()) {
            case UNIFIED -> "The section bowed as one";
            case FREE -> "The section bowed freely";
            case BY_DESK -> "Each desk bowed as one, but not with the others";
            case BETWEEN -> "The section bowed neither as one nor freely";
            case UNCERTAIN -> "Whether the section bowed as one or freely is not certain";
        };
    }

    @Override
    public String help() {
        return "How often two players went the same way, with what chance does taken off: at \"free\" as often as if their bows"
                + " were shifted against each other in time, at \"as one\" always. The whisker is how far chance moves"
                + " the point in 95 of 100 takes.";
    }

    @Override
    public int widthPx() {
        return 720;
    }

    @Override
    public int heightPx() {
        return 110 + rows.size() * ROW_PX;
    }

    @Override
    public JFreeChart draw() {
        XYPlot plot = new XYPlot(points(), scale(), names(), renderer());
        Look.dress(plot);
        plot.setDomainAxisLocation(AxisLocation.TOP_OR_LEFT);
        plot.setAxisOffset(new RectangleInsets(Look.STEP_PX, 2 * Look.STEP_PX, 0, 0));
        plot.addDomainMarker(new ValueMarker(0, Look.PALETTE.ink(), Look.MIDDLING), Layer.BACKGROUND);
        plot.addDomainMarker(new ValueMarker(0.5, Look.PALETTE.rule(), Look.HAIRLINE), Layer.BACKGROUND);
        plot.addDomainMarker(new ValueMarker(1, Look.PALETTE.ink(), Look.MIDDLING), Layer.BACKGROUND);
        return Look.chart(title(), plot);
    }

    private XIntervalSeriesCollection points() {
        XIntervalSeries series = new XIntervalSeries("agreement", false, true);
        for (int i = 0; i < rows.size(); i++) {
            Agreement row = rows.get(i).agreement();
            series.add(
                    shown(row.index()),
                    shown(row.interval().low()),
                    shown(row.interval().high()),
                    i);
        }
        XIntervalSeriesCollection data = new XIntervalSeriesCollection();
        data.addSeries(series);
        return data;
    }

    /** What lies off the scale stands at its end. */
    private static double shown(double index) {
        return Math.max(LOWEST, Math.min(HIGHEST, index));
    }

    private static XYErrorRenderer renderer() {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawYError(false);
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-6, -6, 12, 12));
        renderer.setSeriesPaint(0, Look.PALETTE.with());
        renderer.setErrorPaint(Look.PALETTE.with());
        renderer.setErrorStroke(Look.MIDDLING);
        renderer.setCapLength(5);
        return renderer;
    }

    private static NumberAxis scale() {
        NumberAxis axis = new NumberAxis();
        Look.dress(axis);
        axis.setRange(LOWEST, HIGHEST);
        axis.setTickUnit(new NumberTickUnit(0.5, new Ends()));
        axis.setTickLabelFont(Look.semibold(Look.SMALL_PX));
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    private SymbolAxis names() {
        SymbolAxis axis = new SymbolAxis(null, rows.stream().map(Row::name).toArray(String[]::new));
        Look.dress(axis);
        axis.setRange(-0.6, rows.size() - 0.4);
        axis.setGridBandsVisible(false);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    /** Words at the ends of the scale, figures elsewhere. */
    private static final class Ends extends NumberFormat {
        private static final long serialVersionUID = 1;

        @Override
        public StringBuffer format(double index, StringBuffer to, FieldPosition position) {
            if (index == 0) {
                return to.append("free (0)");
            }
            return to.append(index == 1 ? "as one (1)" : figure(index));
        }

        @Override
        public StringBuffer format(long index, StringBuffer to, FieldPosition position) {
            return format((double) index, to, position);
        }

        @Override
        public Number parse(String text, ParsePosition position) {
            throw new UnsupportedOperationException("the scale is only shown");
        }
    }

    private static String figure(double value) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setMinusSign('−');
        return new DecimalFormat("0.0#", symbols).format(value);
    }

    @Override
    public ChartTable table() {
        List<List<String>> lines = new ArrayList<>();
        for (int i = rows.size() - 1; i >= 0; i--) {
            Agreement row = rows.get(i).agreement();
            lines.add(List.of(
                    rows.get(i).name(),
                    Words.percent(row.agreement()),
                    Words.percent(row.byChance()),
                    figure(row.index()),
                    figure(row.interval().low()) + " to "
                            + figure(row.interval().high()),
                    Math.round(1000 * row.pValue()) + " of 1000"));
        }
        return new ChartTable(
                "How often two players went the same way",
                List.of("Pairs of", "Agreed", "By chance", "Scale", "95 % of chance", "Chance does as much in"),
                lines);
    }
}
