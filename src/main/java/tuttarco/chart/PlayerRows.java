package tuttarco.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.TextAnchor;
import tuttarco.seats.Player;

/** What charts share that give each player a row, numbered from 0 at the top. */
final class PlayerRows {
    static final int ROW_PX = 28;

    /** Longest label, letters, so that the figures keep their room. */
    private static final int LONGEST_LABEL = 26;

    private PlayerRows() {}

    static SymbolAxis axis(List<Player> players) {
        return Look.rows(players.stream().map(PlayerRows::shortened).toList());
    }

    static String shortened(Player player) {
        return Words.shortened(Words.plain(player.label()), LONGEST_LABEL);
    }

    /** Whiskers along the row; the first series in filled diamonds, the second in rings. */
    static XYErrorRenderer diamondsAndRings() {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawYError(false);
        renderer.setDefaultLinesVisible(false);
        renderer.setErrorStroke(Look.MIDDLING);
        renderer.setCapLength(5);
        mark(renderer, 0, Look.diamond(7), true);
        mark(renderer, 1, new Ellipse2D.Double(-4.5, -4.5, 9, 9), false);
        return renderer;
    }

    private static void mark(XYErrorRenderer renderer, int series, Shape shape, boolean filled) {
        renderer.setSeriesShape(series, shape);
        renderer.setSeriesPaint(series, filled ? Look.PALETTE.against() : Look.PALETTE.with());
        renderer.setSeriesShapesFilled(series, filled);
        renderer.setSeriesStroke(series, Look.MIDDLING);
    }

    /** Words to the right of a place in a row. */
    static XYTextAnnotation words(String said, double x, int row, boolean claimed) {
        return Look.words("  " + said, x, row, TextAnchor.CENTER_LEFT, claimed);
    }
}
