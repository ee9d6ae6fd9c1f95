package tuttarco.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.LinearGradientPaint;
import java.awt.RadialGradientPaint;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/** Gathers the parts of one thing and draws them from back to front as the camera sees them. Points are the room's. */
final class Brush {
    /** Brightness of the lit middle and the shaded edge of a round part against its colour (chosen by eye). */
    private static final double LIT = 1.18;

    private static final double SHADED = 0.68;

    private record Part(double depthM, Runnable draw) {}

    private final Pen pen;
    private final Camera camera;
    private final List<Part> parts;
    private final OptionalInt bowArmOf;

    Brush(Pen pen, Camera camera) {
        this(pen, camera, new ArrayList<>(), OptionalInt.empty());
    }

    private Brush(Pen pen, Camera camera, List<Part> parts, OptionalInt bowArmOf) {
        this.pen = pen;
        this.camera = camera;
        this.parts = parts;
        this.bowArmOf = bowArmOf;
    }

    /** The same brush for what belongs to a player's bow arm; both draw when one is flushed. */
    Brush ofBowArm(int playerIndex) {
        return new Brush(pen, camera, parts, OptionalInt.of(playerIndex));
    }

    /** Draws what was gathered, the farthest first. */
    void flush() {
        parts.sort(Comparator.comparingDouble(Part::depthM).reversed());
        parts.forEach(p -> p.draw().run());
        parts.clear();
    }

    /** A tapered round segment; widths in metres; {@code nearerM} lets it lie over what touches it. */
    void limb(Vec from, Vec to, double fromWidthM, double toWidthM, Color color, double nearerM) {
        Camera.Spot a = camera.see(from);
        Camera.Spot b = camera.see(to);
        later((a.depthM() + b.depthM()) / 2 - nearerM, () -> {
            double ra = Math.max(0.3, fromWidthM * a.pxPerM() / 2);
            double rb = Math.max(0.3, toWidthM * b.pxPerM() / 2);
            pen.fill(capsule(a, b, ra, rb), across(a, b, Math.max(ra, rb), color), bowArmOf);
        });
    }

    /** A rounded blob of given half width and half height in metres. */
    void ball(Vec centre, double halfWidthM, double halfHeightM, Color color, double nearerM) {
        Camera.Spot c = camera.see(centre);
        later(c.depthM() - nearerM, () -> {
            double rx = halfWidthM * c.pxPerM();
            double ry = halfHeightM * c.pxPerM();
            RadialGradientPaint lit = new RadialGradientPaint(
                    new Point2D.Double(c.xPx() - 0.3 * rx, c.yPx() - 0.35 * ry),
                    (float) Math.max(1, 1.6 * Math.max(rx, ry)),
                    new float[] {0, 1},
                    new Color[] {shade(color, LIT), shade(color, SHADED)});
            pen.fill(new Ellipse2D.Double(c.xPx() - rx, c.yPx() - ry, 2 * rx, 2 * ry), lit, bowArmOf);
        });
    }

    /** A flat piece with a shade from its first point to the middle one, sorted by a depth of its own. */
    void patch(List<Vec> outline, Color color, Vec sortedAt) {
        List<Camera.Spot> spots = outline.stream().map(camera::see).toList();
        later(camera.see(sortedAt).depthM(), () -> {
            Path2D path = new Path2D.Double();
            path.moveTo(spots.get(0).xPx(), spots.get(0).yPx());
            spots.forEach(s -> path.lineTo(s.xPx(), s.yPx()));
            path.closePath();
            Camera.Spot far = spots.get(spots.size() / 2);
            GradientPaint lit = new GradientPaint(
                    (float) spots.get(0).xPx(),
                    (float) spots.get(0).yPx(),
                    shade(color, LIT),
                    (float) far.xPx(),
                    (float) far.yPx(),
                    shade(color, 0.8));
            pen.fill(path, lit, bowArmOf);
            pen.draw(path, new BasicStroke((float) (0.006 * far.pxPerM())), shade(color, 0.5));
        });
    }

    /** A thin line; width in metres. */
    void line(Vec from, Vec to, double widthM, Color color, double nearerM) {
        Camera.Spot a = camera.see(from);
        Camera.Spot b = camera.see(to);
        later((a.depthM() + b.depthM()) / 2 - nearerM, () -> {
            BasicStroke stroke = new BasicStroke(
                    (float) Math.max(0.6, widthM * a.pxPerM()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
            pen.draw(new Line2D.Double(a.xPx(), a.yPx(), b.xPx(), b.yPx()), stroke, color);
        });
    }

    static Color shade(Color c, double k) {
        return new Color(level(c.getRed() * k), level(c.getGreen() * k), level(c.getBlue() * k));
    }

    private static int level(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }

    private void later(double depthM, Runnable draw) {
        parts.add(new Part(depthM, draw));
    }

    private static LinearGradientPaint across(Camera.Spot a, Camera.Spot b, double radiusPx, Color color) {
        double dx = b.xPx() - a.xPx();
        double dy = b.yPx() - a.yPx();
        double length = Math.max(1e-6, Math.hypot(dx, dy));
        double nx = -dy / length * radiusPx;
        double ny = dx / length * radiusPx;
        double toLight = nx * -0.5 + ny * -0.85 > 0 ? 1 : -1;
        double mx = (a.xPx() + b.xPx()) / 2;
        double my = (a.yPx() + b.yPx()) / 2;
        return new LinearGradientPaint(
                new Point2D.Double(mx + toLight * nx, my + toLight * ny),
                new Point2D.Double(mx - toLight * nx, my - toLight * ny),
                new float[] {0f, 0.35f, 1f},
                new Color[] {shade(color, 0.95), shade(color, LIT), shade(color, SHADED)});
    }

    private static Path2D capsule(Camera.Spot a, Camera.Spot b, double ra, double rb) {
        double alongDeg = -Math.toDegrees(Math.atan2(b.yPx() - a.yPx(), b.xPx() - a.xPx()));
        Path2D path = new Path2D.Double();
        path.append(
                new Arc2D.Double(a.xPx() - ra, a.yPx() - ra, 2 * ra, 2 * ra, alongDeg + 90, 180, Arc2D.OPEN), false);
        path.append(new Arc2D.Double(b.xPx() - rb, b.yPx() - rb, 2 * rb, 2 * rb, alongDeg - 90, 180, Arc2D.OPEN), true);
        path.closePath();
        return path;
    }
}
