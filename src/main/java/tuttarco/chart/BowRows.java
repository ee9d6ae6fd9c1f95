package tuttarco.chart;

import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import tuttarco.beats.BeatMap;

/** Builds the rows of a bow chart; all rows share one scale. */
final class BowRows {
    /** Seat heights shown at least to either side, so that the tremble of a resting arm stays small. */
    private static final double LEAST_TRAVEL = 0.1;

    private static final int TIME_AXIS_PX = 40;

    /** Width of the error band, in standard deviations: about 95 % of a normal error. */
    private static final double BAND = 2;

    private final List<List<BowTravel.Point>> stretches;
    private final BeatMap beats;
    private final double most;

    BowRows(List<List<BowTravel.Point>> stretches, BeatMap beats) {
        this.stretches = stretches;
        this.beats = beats;
        this.most = 1.08
                * stretches.stream()
                        .flatMap(List::stream)
                        .mapToDouble(p -> Math.abs(p.travel()))
                        .reduce(LEAST_TRAVEL, Math::max);
    }

    XYPlot row(double startS, double endS, StrokeLane lane, int heightPx, boolean last) {
        XYPlot plot = new XYPlot(points(startS, endS), timeAxis(startS, endS, last), travelAxis(heightPx), null);
        Look.dress(plot);
        DeviationRenderer renderer = renderer(plot.getDataset().getSeriesCount());
        renderer.addAnnotation(new BeatLines(beats), Layer.BACKGROUND);
        plot.setRenderer(renderer);
        plot.addRangeMarker(new ValueMarker(0, Look.PALETTE.rule(), Look.HAIRLINE), Layer.BACKGROUND);
        plot.addAnnotation(lane);
        return plot;
    }

    private YIntervalSeriesCollection points(double startS, double endS) {
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        for (int i = 0; i < stretches.size(); i++) {
            YIntervalSeries series = new YIntervalSeries(i);
            for (BowTravel.Point p : stretches.get(i)) {
                if (p.timeS() >= startS - 0.2 && p.timeS() <= endS + 0.2) {
                    double band = BAND * p.error();
                    series.add(p.timeS(), p.travel(), p.travel() - band, p.travel() + band);
                }
            }
            if (series.getItemCount() > 0) {
                data.addSeries(series);
            }
        }
        return data;
    }

    private static DeviationRenderer renderer(int series) {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1f);
        for (int i = 0; i < series; i++) {
            renderer.setSeriesPaint(i, Look.PALETTE.ink());
            renderer.setSeriesFillPaint(i, Look.PALETTE.rule());
            renderer.setSeriesStroke(i, Look.line(1.6f));
        }
        return renderer;
    }

    private static NumberAxis timeAxis(double startS, double endS, boolean last) {
        NumberAxis axis = new NumberAxis(last ? "time in the clip (min:s)" : null);
        Look.dress(axis);
        axis.setRange(startS, endS);
        axis.setFixedDimension(TIME_AXIS_PX);
        axis.setTickUnit(new NumberTickUnit(endS - startS > 12 ? 2 : 1, new ClockFormat()));
        return axis;
    }

    /** Leaves room above the curve for the lane. */
    private NumberAxis travelAxis(int heightPx) {
        int headPx = StrokeLane.BAR_NUMBERS_PX + StrokeLane.LANE_PX;
        double curvePx = heightPx - headPx - TIME_AXIS_PX - 2.0 * Look.STEP_PX;
        NumberAxis axis = new CurveAxis("to the tip, shoulder widths", most);
        Look.dress(axis);
        axis.setRange(-most, most + 2 * most * headPx / curvePx);
        axis.setTickUnit(new NumberTickUnit(roundStep(most), CurveAxis.plainNumbers()));
        axis.setFixedDimension(62);
        return axis;
    }

    /** The largest of 1, 2 or 5 times a power of ten that fits between 0 and the top. */
    private static double roundStep(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double times = most / power;
        return power * (times >= 5 ? 5 : times >= 2 ? 2 : 1);
    }
}
