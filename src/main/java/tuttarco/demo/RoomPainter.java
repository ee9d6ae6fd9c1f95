package tuttarco.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** Draws what does not move: wall, floor and music stands. */
final class RoomPainter {
    private static final Color DESK = new Color(0x26282C);
    private static final Color PAPER = new Color(0xEFE9DA);
    /** Lower edge of a music stand's desk above the floor, metres: below the hands, or before them. */
    private static final double LOW_M = 0.50;

    private static final double HIGH_M = 0.86;

    private RoomPainter() {}

    /** The empty room, larger than the picture by {@code marginPx} on every side. */
    static BufferedImage backdrop(Scene scene, Camera camera, int marginPx) {
        int width = scene.picture().widthPx() + 2 * marginPx;
        int height = scene.picture().heightPx() + 2 * marginPx;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double depthM =
                scene.cast().size() == 1 ? 2.0 : 0.9 * Math.sqrt(scene.cast().size()) + 2.0;
        double wallPx = marginPx + camera.see(new Vec(0, depthM, 0)).yPx();
        g.setPaint(new GradientPaint(0, 0, new Color(0xC9C2B4), 0, (float) wallPx, new Color(0xA9A294)));
        g.fill(new Rectangle2D.Double(0, 0, width, wallPx));
        g.setPaint(new GradientPaint(0, (float) wallPx, new Color(0x84684A), 0, height, new Color(0xA98760)));
        g.fill(new Rectangle2D.Double(0, wallPx, width, height - wallPx));
        g.setStroke(new BasicStroke(1.5f));
        g.setPaint(new Color(0x9A9384));
        for (double x = 0; x < width; x += width / 9.0) {
            g.draw(new Line2D.Double(x, 0, x, wallPx));
        }
        g.setPaint(new Color(0x7A6146));
        for (int i = -30; i <= 30; i++) {
            Camera.Spot far = camera.see(new Vec(i * 0.45, depthM, 0));
            Camera.Spot near = camera.see(new Vec(i * 0.45, -2.5, 0));
            g.draw(new Line2D.Double(
                    far.xPx() + marginPx, far.yPx() + marginPx, near.xPx() + marginPx, near.yPx() + marginPx));
        }
        g.dispose();
        return image;
    }

    static void stand(Vec foot, double azimuthRad, boolean high, Brush brush, Camera camera) {
        double low = high ? HIGH_M : LOW_M;
        brush.limb(foot.plus(new Vec(0, 0, low)), foot, 0.025, 0.025, DESK, -0.05);
        for (int k = 0; k < 3; k++) {
            Vec leg = new Vec(0, 0.22, 0).turned(azimuthRad + k * 2.1 + 0.5);
            brush.limb(foot.plus(new Vec(0, 0, 0.15)), foot.plus(leg), 0.02, 0.02, DESK, 0);
        }
        List<Vec> desk = List.of(
                new Vec(-0.25, -0.04, low),
                new Vec(0.25, -0.04, low),
                new Vec(0.25, 0.14, low + 0.30),
                new Vec(-0.25, 0.14, low + 0.30));
        List<Vec> placed =
                desk.stream().map(v -> v.turned(azimuthRad).plus(foot)).toList();
        Vec reader = new Vec(0, -0.86, 0.5).turned(azimuthRad);
        boolean front = camera.towards(foot).dot(reader) > 0;
        brush.patch(placed, front ? PAPER : DESK, foot.plus(new Vec(0, 0, low)));
        brush.flush();
    }
}
