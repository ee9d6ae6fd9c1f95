package tuttarco.chart;

import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.ui.RectangleEdge;

/** Where times lie on a row of the bow chart. */
record RowTime(ValueAxis axis, Rectangle2D area, RectangleEdge edge) {
    double x(double timeS) {
        return axis.valueToJava2D(timeS, area, edge);
    }

    /** The part of a span that lies on the row. */
    Optional<Rectangle2D> span(double startS, double endS, double topPx, double heightPx) {
        double x0 = Math.max(area.getMinX(), x(startS));
        double x1 = Math.min(area.getMaxX(), x(endS));
        return x1 - x0 < 0.2 ? Optional.empty() : Optional.of(new Rectangle2D.Double(x0, topPx, x1 - x0, heightPx));
    }
}
