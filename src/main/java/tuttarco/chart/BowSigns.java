package tuttarco.chart;

import java.awt.geom.Path2D;
import tuttarco.bow.BowDirection;

/**
 * The two bow signs as a printed part draws them (common practice): the down-bow a square bracket open downwards, the
 * up-bow a narrow v; and the tremolo's three slanted bars, as through a note's stem. Closed outlines, so that they can be
 * filled or drawn as an outline.
 */
public final class BowSigns {
    /** The up-bow is this much narrower than the down-bow (drawn after printed parts). */
    private static final double NARROW = 0.82;

    /** Rise of a tremolo's bar over its width (drawn after printed parts). */
    private static final double SLANT = 0.25;

    private BowSigns() {}

    /**
     * The sign's outline, in pixels.
     *
     * @param centreXPx middle of the sign; {@code centreYPx} likewise
     * @param sizePx its height; it is about as wide
     * @param weightPx thickness of its lines
     */
    public static Path2D of(
            BowDirection direction, double centreXPx, double centreYPx, double sizePx, double weightPx) {
        return direction == BowDirection.DOWN
                ? down(centreXPx, centreYPx, sizePx, weightPx)
                : up(centreXPx, centreYPx, sizePx, weightPx);
    }

    /** Three short bars one above the other, slanting up to the right; measures as for the bow signs. */
    static Path2D tremolo(double centreXPx, double centreYPx, double sizePx, double weightPx) {
        double half = sizePx / 2;
        double rise = sizePx * SLANT / 2;
        double thick = weightPx / 2;
        Path2D bars = new Path2D.Double();
        for (int bar = -1; bar <= 1; bar++) {
            double y = centreYPx + bar * sizePx / 3;
            bars.append(
                    closed(
                            centreXPx - half,
                            y + rise - thick,
                            centreXPx + half,
                            y - rise - thick,
                            centreXPx + half,
                            y - rise + thick,
                            centreXPx - half,
                            y + rise + thick),
                    false);
        }
        return bars;
    }

    private static Path2D down(double x, double y, double size, double weight) {
        double half = size / 2;
        double beam = Math.min(1.7 * weight, half);
        return closed(
                x - half,
                y - half,
                x + half,
                y - half,
                x + half,
                y + half,
                x + half - weight,
                y + half,
                x + half - weight,
                y - half + beam,
                x - half + weight,
                y - half + beam,
                x - half + weight,
                y + half,
                x - half,
                y + half);
    }

    private static Path2D up(double x, double y, double size, double weight) {
        double half = size / 2;
        double wide = half * NARROW;
        double arm = 1.15 * weight;
        double notch = y + half - 2 * half * arm / wide;
        return closed(
                x - wide,
                y - half,
                x - wide + arm,
                y - half,
                x,
                Math.max(notch, y - half),
                x + wide - arm,
                y - half,
                x + wide,
                y - half,
                x + weight * 0.3,
                y + half,
                x - weight * 0.3,
                y + half);
    }

    private static Path2D closed(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
