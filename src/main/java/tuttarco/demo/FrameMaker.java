package tuttarco.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Random;

/** Takes the picture: what the stage shows, through a camera with its faults. */
final class FrameMaker {
    /** Pictures averaged while the shutter is open. */
    private static final int BLUR_STEPS = 4;

    private static final int NOISE_TABLE = 1 << 16;
    /** Rate of the light's flicker, hertz: twice the mains'. */
    private static final double FLICKER_HZ = 100;

    private final Scene scene;
    private final Stage stage;
    private final BufferedImage canvas;
    private final BufferedImage picture;
    private final byte[] noise = new byte[NOISE_TABLE];
    private final Random random;

    FrameMaker(Scene scene, Stage stage) {
        this.scene = scene;
        this.stage = stage;
        canvas = new BufferedImage(scene.widthPx(), scene.heightPx(), BufferedImage.TYPE_3BYTE_BGR);
        picture = new BufferedImage(scene.widthPx(), scene.heightPx(), BufferedImage.TYPE_3BYTE_BGR);
        random = new Random(scene.seed() + 2);
        for (int i = 0; i < NOISE_TABLE; i++) {
            noise[i] = (byte)
                    Math.max(-127, Math.min(127, Math.round(scene.conditions().noise() * random.nextGaussian())));
        }
    }

    /** The picture at a time; it is overwritten by the next. Times must come in order. */
    BufferedImage at(double timeS) {
        Conditions c = scene.conditions();
        int steps = c.exposure() > 0 ? BLUR_STEPS : 1;
        byte[] out = bytes(picture);
        int[] sums = new int[out.length];
        AffineTransform view = view(timeS);
        for (int step = 0; step < steps; step++) {
            draw(timeS - c.exposure() / scene.framesPerS() * step / steps, view);
            byte[] drawn = bytes(canvas);
            for (int i = 0; i < sums.length; i++) {
                sums[i] += drawn[i] & 0xff;
            }
        }
        double light = c.light() * (1 - c.flicker() * (0.5 + 0.5 * Math.sin(2 * Math.PI * FLICKER_HZ * 1.003 * timeS)));
        expose(sums, steps, light, out);
        return picture;
    }

    private void draw(double timeS, AffineTransform view) {
        Graphics2D g = canvas.createGraphics();
        g.setColor(Color.GRAY);
        g.fillRect(0, 0, scene.widthPx(), scene.heightPx());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.transform(view);
        stage.paint(g, timeS);
        g.dispose();
    }

    /** Hand-held shake (slow and quick parts) and a creeping zoom. */
    private AffineTransform view(double timeS) {
        Conditions c = scene.conditions();
        double dx = c.shakePx() * (Math.sin(2 * Math.PI * 0.7 * timeS) + 0.5 * Math.sin(2 * Math.PI * 2.3 * timeS + 1));
        double dy = c.shakePx() * (Math.sin(2 * Math.PI * 0.9 * timeS + 2) + 0.5 * Math.sin(2 * Math.PI * 3.1 * timeS));
        double zoom = 1 + c.zoomDrift() * timeS / scene.endS();
        AffineTransform view = new AffineTransform();
        view.translate(scene.widthPx() / 2.0 + dx, scene.heightPx() / 2.0 + dy);
        view.scale(zoom, zoom);
        view.translate(-scene.widthPx() / 2.0, -scene.heightPx() / 2.0);
        return view;
    }

    /** Averages, softens by a lens of three pixels, dims and adds noise. */
    private void expose(int[] sums, int steps, double light, byte[] out) {
        int stride = 3 * scene.widthPx();
        for (int y = 0; y < scene.heightPx(); y++) {
            int offset = random.nextInt(NOISE_TABLE);
            int above = Math.max(0, y - 1) * stride;
            int below = Math.min(scene.heightPx() - 1, y + 1) * stride;
            for (int x = 0; x < stride; x++) {
                int left = Math.max(x % 3, x - 3);
                int right = Math.min(stride - 3 + x % 3, x + 3);
                int here = y * stride;
                int soft =
                        4 * sums[here + x] + sums[here + left] + sums[here + right] + sums[above + x] + sums[below + x];
                double value = light * soft / (8.0 * steps) + noise[(offset + x) & (NOISE_TABLE - 1)];
                out[here + x] = (byte) Math.max(0, Math.min(255, (int) (value + 0.5)));
            }
        }
    }

    private static byte[] bytes(BufferedImage image) {
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }
}
