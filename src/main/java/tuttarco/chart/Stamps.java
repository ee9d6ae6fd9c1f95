package tuttarco.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The outlines of a path that repeat, such as the bow signs of a section, each told once with the places where it stands.
 *
 * @param places by the outline's text, as of an outline that starts at 0, 0
 * @param others the outlines that do not repeat
 */
record Stamps(Map<String, List<Point2D>> places, Path2D others) {
    /** Outlines alike from which on telling them once is shorter. */
    private static final int LEAST = 5;

    static Stamps of(Path2D path) {
        Map<String, List<Path2D>> alike = new LinkedHashMap<>();
        for (Path2D outline : outlines(path)) {
            alike.computeIfAbsent(text(outline), t -> new ArrayList<>()).add(outline);
        }
        Map<String, List<Point2D>> places = new LinkedHashMap<>();
        Path2D others = new Path2D.Double(path.getWindingRule());
        alike.forEach((text, outlines) -> {
            if (outlines.size() < LEAST) {
                outlines.forEach(o -> others.append(o, false));
            } else {
                places.put(text, outlines.stream().map(Stamps::start).toList());
            }
        });
        return new Stamps(places, others);
    }

    private static String text(Path2D outline) {
        Point2D start = start(outline);
        AffineTransform home = AffineTransform.getTranslateInstance(-start.getX(), -start.getY());
        return PathText.of(home.createTransformedShape(outline));
    }

    private static Point2D start(Path2D outline) {
        double[] xy = new double[6];
        outline.getPathIterator(null).currentSegment(xy);
        return new Point2D.Double(xy[0], xy[1]);
    }

    private static List<Path2D> outlines(Path2D path) {
        List<Path2D> outlines = new ArrayList<>();
        double[] xy = new double[6];
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            int segment = i.currentSegment(xy);
            if (segment == PathIterator.SEG_MOVETO) {
                outlines.add(new Path2D.Double(path.getWindingRule()));
            }
            Path2D outline = outlines.get(outlines.size() - 1);
            switch (segment) {
                case PathIterator.SEG_MOVETO -> outline.moveTo(xy[0], xy[1]);
                case PathIterator.SEG_LINETO -> outline.lineTo(xy[0], xy[1]);
                case PathIterator.SEG_QUADTO -> outline.quadTo(xy[0], xy[1], xy[2], xy[3]);
                case PathIterator.SEG_CUBICTO -> outline.curveTo(xy[0], xy[1], xy[2], xy[3], xy[4], xy[5]);
                case PathIterator.SEG_CLOSE -> outline.closePath();
                default -> throw new IllegalArgumentException("no such segment: " + segment);
            }
        }
        return outlines;
    }
}
