package tuttarco.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;

/** An axis that is labelled only as far as its curve goes; above it other things are drawn. */
final class CurveAxis extends NumberAxis {
    private final double most;

    CurveAxis(String label, double most) {
        super(label);
        this.most = most;
    }

    static NumberFormat plainNumbers() {
        return new DecimalFormat("0.0##;−0.0##", DecimalFormatSymbols.getInstance(Locale.ROOT));
    }

    @Override
    public List<?> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<?> ticks = super.refreshTicks(g, state, area, edge);
        return ticks.stream()
                .filter(t -> t instanceof NumberTick tick && Math.abs(tick.getValue()) <= most)
                .toList();
    }
}
