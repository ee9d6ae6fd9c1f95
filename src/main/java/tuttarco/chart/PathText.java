package tuttarco.chart;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Writes a shape as the text of an SVG path (SVG 1.1, chapter 8.3), so short that a page can hold the charts of a whole
 * orchestra: each coordinate relative to the one before, in tenths of a pixel, and a polygon of many points by the
 * straight lines and cubic Hermite curves that reach farthest without leaving it.
 */
final class PathText {
    /** What is written passes each point of the shape at no more than this, pixels: not seen beside the shape itself. */
    static final double NEAR_PX = 0.4;

    /** A curve takes as many letters as this many lines. */
    private static final int LINES_OF_A_CURVE = 3;

    private static final int TENTHS = 10;

    private final StringBuilder text = new StringBuilder();
    private final List<Point2D> run = new ArrayList<>();
    private char command;
    private Point2D start = new Point2D.Double();
    private boolean moved;
    private long xTenths;
    private long yTenths;

    private PathText() {}

    /** The value of {@code d}; empty for an empty shape. */
    static String of(Shape shape) {
        PathText path = new PathText();
        double[] xy = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            path.add(i.currentSegment(xy), xy);
        }
        path.endRun();
        return path.text.toString();
    }

    /** A line through all the points, with none left out. */
    static String through(List<Point2D> points) {
        PathText path = new PathText();
        path.moved = true;
        points.forEach(path::to);
        return path.text.toString();
    }

    private void add(int segment, double[] xy) {
        switch (segment) {
            case PathIterator.SEG_MOVETO -> {
                endRun();
                start = new Point2D.Double(xy[0], xy[1]);
                run.add(start);
                moved = true;
            }
            case PathIterator.SEG_LINETO -> run.add(new Point2D.Double(xy[0], xy[1]));
            case PathIterator.SEG_QUADTO -> curve('q', xy, 2);
            case PathIterator.SEG_CUBICTO -> curve('c', xy, 3);
            case PathIterator.SEG_CLOSE -> close();
            default -> throw new IllegalArgumentException("no such segment: " + segment);
        }
    }

    private void curve(char letter, double[] xy, int points) {
        endRun();
        writeCurve(letter, xy, points);
        run.add(new Point2D.Double(xy[2 * points - 2], xy[2 * points - 1]));
    }

    private void writeCurve(char letter, double[] xy, int points) {
        command(letter);
        long fromXTenths = xTenths;
        long fromYTenths = yTenths;
        for (int i = 0; i < points; i++) {
            xTenths = tenths(xy[2 * i]);
            yTenths = tenths(xy[2 * i + 1]);
            number(xTenths - fromXTenths);
            number(yTenths - fromYTenths);
        }
    }

    private void close() {
        if (run.size() > 1 && run.get(run.size() - 1).equals(start)) {
            run.remove(run.size() - 1);
        }
        endRun();
        text.append('z');
        command = 'z';
        xTenths = tenths(start.getX());
        yTenths = tenths(start.getY());
        run.add(start);
    }

    /** Writes the points since the last curve or move; the first of them is the pen's place. */
    private void endRun() {
        if (moved && !run.isEmpty()) {
            to(run.get(0));
        }
        int at = 0;
        while (at < run.size() - 1) {
            int straight = reach(at, this::isStraight);
            int bent = reach(at, this::isBent);
            if (bent - at >= LINES_OF_A_CURVE * (straight - at)) {
                Bend bend = bend(at, bent);
                writeCurve('c', bend.controls(), 3);
                at = bent;
            } else {
                to(run.get(straight));
                at = straight;
            }
        }
        run.clear();
    }

    /** Whether one line or curve can stand for the points from the first to the last. */
    private interface Fit {
        boolean holds(int first, int last);
    }

    private int reach(int first, Fit fit) {
        int last = first + 1;
        while (last + 1 < run.size() && fit.holds(first, last + 1)) {
            last++;
        }
        return last;
    }

    private boolean isStraight(int first, int last) {
        Line2D line = new Line2D.Double(run.get(first), run.get(last));
        return IntStream.range(first + 1, last).allMatch(i -> line.ptSegDist(run.get(i)) <= NEAR_PX);
    }

    private boolean isBent(int first, int last) {
        double direction = Math.signum(run.get(last).getX() - run.get(first).getX());
        Bend bend = bend(first, last);
        return IntStream.rangeClosed(first + 1, last)
                .allMatch(i -> (run.get(i).getX() - run.get(i - 1).getX()) * direction > 0
                        && Math.abs(bend.yAt(run.get(i).getX()) - run.get(i).getY()) <= NEAR_PX);
    }

    private Bend bend(int first, int last) {
        return new Bend(run.get(first), slope(first), run.get(last), slope(last));
    }

    private double slope(int i) {
        Point2D before = run.get(Math.max(0, i - 1));
        Point2D after = run.get(Math.min(run.size() - 1, i + 1));
        return (after.getY() - before.getY()) / (after.getX() - before.getX());
    }

    /** A cubic curve by its ends and its slopes there. */
    private record Bend(Point2D from, double fromSlope, Point2D to, double toSlope) {
        double[] controls() {
            double third = (to.getX() - from.getX()) / 3;
            return new double[] {
                from.getX() + third,
                from.getY() + third * fromSlope,
                to.getX() - third,
                to.getY() - third * toSlope,
                to.getX(),
                to.getY()
            };
        }

        double yAt(double x) {
            double[] xy = controls();
            double t = (x - from.getX()) / (to.getX() - from.getX());
            double u = 1 - t;
            return u * u * u * from.getY() + 3 * u * u * t * xy[1] + 3 * u * t * t * xy[3] + t * t * t * xy[5];
        }
    }

    private void to(Point2D point) {
        long x = tenths(point.getX());
        long y = tenths(point.getY());
        to(x - xTenths, y - yTenths);
        xTenths = x;
        yTenths = y;
    }

    private void to(long dxTenths, long dyTenths) {
        if (moved) {
            // at the very beginning relative to 0, 0
            command('m');
            number(dxTenths);
            number(dyTenths);
            // what follows a move without a letter is a line
            command = 'l';
            moved = false;
        } else if (dxTenths == 0 && dyTenths != 0) {
            command('v');
            number(dyTenths);
        } else if (dyTenths == 0 && dxTenths != 0) {
            command('h');
            number(dxTenths);
        } else if (dxTenths != 0) {
            command('l');
            number(dxTenths);
            number(dyTenths);
        }
    }

    private void command(char letter) {
        if (letter != command) {
            text.append(letter);
            command = letter;
        }
    }

    private void number(long tenths) {
        boolean first = text.charAt(text.length() - 1) == command;
        if (!first && tenths >= 0) {
            text.append(' ');
        }
        if (tenths < 0) {
            text.append('-');
        }
        long whole = Math.abs(tenths) / TENTHS;
        long rest = Math.abs(tenths) % TENTHS;
        if (whole > 0 || rest == 0) {
            text.append(whole);
        }
        if (rest > 0) {
            text.append('.').append(rest);
        }
    }

    private static long tenths(double px) {
        return Math.round(px * TENTHS);
    }
}
