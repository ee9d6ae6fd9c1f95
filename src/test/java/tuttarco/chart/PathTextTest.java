package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathTextTest {
    private static Path2D line(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        return path;
    }

    private static Path2D closed(double... xy) {
        Path2D path = line(xy);
        path.closePath();
        return path;
    }

    @Test
    void edgesAreRelativeInTenths() {
        assertEquals(
                "m2 3.5 10-4.1h3.3v7l-2.2 .9", PathText.of(line(2, 3.5, 12, -0.6, 15.3, -0.6, 15.3, 6.4, 13.1, 7.3)));
    }

    @Test
    void aClosedOutlineEndsWhereItBeganAndTheNextGoesOnFromThere() {
        Path2D two = closed(1, 1, 5, 1, 5, 5, 1, 5, 1, 1);
        two.append(closed(11, 1, 15, 1, 15, 5), false);
        assertEquals("m1 1h4v4h-4zm10 0h4v4z", PathText.of(two));
    }

    @Test
    void curvesKeepTheirControlPoints() {
        Path2D path = line(10, 10);
        path.curveTo(11, 12, 13, 14, 15, 16);
        path.quadTo(16, 16, 17, 10);
        path.lineTo(20, 10);
        assertEquals("m10 10c1 2 3 4 5 6q1 0 2-6h3", PathText.of(path));
    }

    /** Each coordinate is rounded for itself: a thousand steps of a third of a pixel end at 333.3, not at 300. */
    @Test
    void roundingDoesNotAddUp() {
        Path2D steps = line(0, 0);
        for (int i = 1; i <= 1000; i++) {
            steps.lineTo(i / 3.0, i % 2 * 10);
        }
        List<Point2D> points = points(PathText.of(steps));
        assertEquals(1001, points.size());
        assertEquals(333.3, points.get(1000).getX(), 1e-6);
    }

    @Test
    void anEmptyShapeIsEmpty() {
        assertEquals("", PathText.of(new Path2D.Double()));
    }

    /** Every point of a wave, smooth or noisy, lies within the tolerance and a tenth's rounding of what is written. */
    @ParameterizedTest
    @CsvSource({"0, 0.6", "1, 1"})
    void noPointIsMissed(double noisePx, double share) {
        Random random = new Random(7);
        List<Point2D> wave = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            double y = 100 + 27 * Math.sin(2 * i * 2 * Math.PI / 54) + noisePx * random.nextGaussian();
            wave.add(new Point2D.Double(2 * i, y));
        }
        Path2D path = new Path2D.Double();
        path.moveTo(wave.get(0).getX(), wave.get(0).getY());
        wave.forEach(p -> path.lineTo(p.getX(), p.getY()));
        String text = PathText.of(path);
        assertTrue(text.length() < share * PathText.through(wave).length(), text.length() + " letters");
        List<Point2D> written = points(text);
        for (Point2D point : wave) {
            double nearestPx = Double.POSITIVE_INFINITY;
            for (int i = 1; i < written.size(); i++) {
                nearestPx = Math.min(nearestPx, new Line2D.Double(written.get(i - 1), written.get(i)).ptSegDist(point));
            }
            assertTrue(nearestPx <= PathText.NEAR_PX + 0.15, "missed by " + nearestPx + " px");
        }
    }

    @Test
    void aStraightLineNeedsItsEndsOnly() {
        assertEquals("m0 0 9 9", PathText.of(line(0, 0, 3, 3, 5, 5, 9, 9)));
    }

    @Test
    void aLineThroughPlacesKeepsThemAll() {
        List<Point2D> places = List.of(new Point2D.Double(1, 1), new Point2D.Double(2, 1), new Point2D.Double(3, 1));
        assertEquals("m1 1h1 1", PathText.through(places));
    }

    /** Points along a path of moves, lines and cubic curves, close enough to each other that lines may join them. */
    private static List<Point2D> points(String text) {
        List<Point2D> points = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (String run : text.split("(?=[mlhvc])")) {
            char command = run.charAt(0);
            List<Double> numbers = new ArrayList<>();
            for (String number : run.substring(1).trim().split(" |(?<=\\d)(?=-)")) {
                numbers.add(Double.valueOf(number));
            }
            int step = command == 'c' ? 6 : command == 'h' || command == 'v' ? 1 : 2;
            for (int i = 0; i < numbers.size(); i += step) {
                List<Double> n = numbers.subList(i, i + step);
                for (double t = 0.05; command == 'c' && t < 0.99; t += 0.05) {
                    points.add(new Point2D.Double(
                            x + cubic(t, n.get(0), n.get(2), n.get(4)), y + cubic(t, n.get(1), n.get(3), n.get(5))));
                }
                x += command == 'v' ? 0 : n.get(command == 'h' ? 0 : step - 2);
                y += command == 'h' ? 0 : n.get(step - 1);
                points.add(new Point2D.Double(x, y));
            }
        }
        return points;
    }

    /** Bernstein's form of a cubic that begins at 0. */
    private static double cubic(double t, double first, double second, double end) {
        return 3 * (1 - t) * (1 - t) * t * first + 3 * (1 - t) * t * t * second + t * t * t * end;
    }
}
