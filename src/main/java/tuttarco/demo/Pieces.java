package tuttarco.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import tuttarco.demo.Camera.Spot;

/** The pieces of a picture, painted from far to near. Points are in the room, metres. */
final class Pieces {
    private record Piece(double depthM, Consumer<Graphics2D> paint) {}

    private final Camera camera;
    private final List<Piece> pieces = new ArrayList<>();

    Pieces(Camera camera) {
        this.camera = camera;
    }

    Camera camera() {
        return camera;
    }

    /**
     * A tapered round limb, lit from one side.
     *
     * @param nearerM how much nearer to the camera than it is the piece is taken to be, so that it is painted later
     */
    void limb(Vec from, double fromRadiusM, Vec to, double toRadiusM, Color colour, double nearerM) {
        Spot a = camera.see(from);
        Spot b = camera.see(to);
        double ra = fromRadiusM * a.pxPerM();
        double rb = toRadiusM * b.pxPerM();
        add((a.depthM() + b.depthM()) / 2 - nearerM, g -> {
            double length = Math.hypot(b.xPx() - a.xPx(), b.yPx() - a.yPx());
            double nx = length < 1e-6 ? 0 : -(b.yPx() - a.yPx()) / length;
            double ny = length < 1e-6 ? 1 : (b.xPx() - a.xPx()) / length;
            Path2D sides = new Path2D.Double();
            sides.moveTo(a.xPx() + nx * ra, a.yPx() + ny * ra);
            sides.lineTo(b.xPx() + nx * rb, b.yPx() + ny * rb);
            sides.lineTo(b.xPx() - nx * rb, b.yPx() - ny * rb);
            sides.lineTo(a.xPx() - nx * ra, a.yPx() - ny * ra);
            sides.closePath();
            double r = Math.max(ra, rb);
            g.setPaint(new GradientPaint(
                    (float) (a.xPx() - nx * r),
                    (float) (a.yPx() - ny * r),
                    Costume.shade(colour, 1.12),
                    (float) (a.xPx() + nx * r),
                    (float) (a.yPx() + ny * r),
                    Costume.shade(colour, 0.72)));
            g.fill(disc(a.xPx(), a.yPx(), ra));
            g.fill(disc(b.xPx(), b.yPx(), rb));
            g.fill(sides);
        });
    }

    void ball(Vec centre, double radiusM, Color colour, double nearerM) {
        Spot spot = camera.see(centre);
        add(spot.depthM() - nearerM, g -> {
            g.setColor(colour);
            g.fill(disc(spot.xPx(), spot.yPx(), radiusM * spot.pxPerM()));
        });
    }

    void line(Vec from, Vec to, double widthM, Color colour, double nearerM) {
        Spot a = camera.see(from);
        Spot b = camera.see(to);
        add((a.depthM() + b.depthM()) / 2 - nearerM, g -> {
            g.setColor(colour);
            float widthPx = (float) Math.max(0.7, widthM * (a.pxPerM() + b.pxPerM()) / 2);
            g.setStroke(new BasicStroke(widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(new Line2D.Double(a.xPx(), a.yPx(), b.xPx(), b.yPx()));
        });
    }

    void polygon(List<Vec> corners, Color colour, double nearerM) {
        List<Spot> spots = corners.stream().map(camera::see).toList();
        double depthM = spots.stream().mapToDouble(Spot::depthM).average().orElseThrow();
        add(depthM - nearerM, g -> {
            Path2D outline = new Path2D.Double();
            outline.moveTo(spots.get(0).xPx(), spots.get(0).yPx());
            spots.stream().skip(1).forEach(s -> outline.lineTo(s.xPx(), s.yPx()));
            outline.closePath();
            g.setColor(colour);
            g.fill(outline);
        });
    }

    void paint(Graphics2D g) {
        pieces.sort(Comparator.comparingDouble(Piece::depthM).reversed());
        pieces.forEach(p -> p.paint().accept(g));
    }

    private void add(double depthM, Consumer<Graphics2D> paint) {
        pieces.add(new Piece(depthM, paint));
    }

    private static Ellipse2D disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
