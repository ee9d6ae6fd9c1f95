package tuttarco.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;

/** An axis of milliseconds to both sides of nought. */
final class LagAxis {
    private static final List<Integer> STEPS_MS = List.of(20, 50, 100, 200);

    private LagAxis() {}

    static NumberAxis of(String label, double rangeMs, int mostSteps) {
        NumberAxis axis = new NumberAxis(label);
        Look.dress(axis);
        axis.setRange(-rangeMs, rangeMs);
        int stepMs = STEPS_MS.stream()
                .filter(s -> 2 * rangeMs / s <= mostSteps)
                .findFirst()
                .orElse(STEPS_MS.get(STEPS_MS.size() - 1));
        axis.setTickUnit(
                new NumberTickUnit(stepMs, new DecimalFormat("0;−0", DecimalFormatSymbols.getInstance(Locale.ROOT))));
        return axis;
    }
}
