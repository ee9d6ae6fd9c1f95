package tuttarco.demo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/** Draws a scene's frames one after another, as its camera takes them. */
final class FramePainter {
    /** Share of the frame interval for which the shutter is open where motion blur is wanted (common practice: half). */
    private static final double SHUTTER = 0.5;

    private final Scene scene;
    private final Stage stage;
    private final BufferedImage backdrop;
    private final int marginPx;
    private final Hands hands;
    private final Sensor sensor;

    FramePainter(Scene scene, Layout layout) {
        this.scene = scene;
        this.stage = new Stage(scene, layout);
        this.marginPx = (int) Math.ceil(5 * scene.conditions().shakePx()) + 8;
        this.backdrop = RoomPainter.backdrop(scene, layout.camera(), marginPx);
        this.hands = new Hands(scene);
        this.sensor = new Sensor(scene);
    }

    /** The frame at a time; frames must be asked for in the clip's order, because the noise runs on. */
    BufferedImage frame(double timeS) {
        int moments = scene.conditions().subFrames();
        BufferedImage image = drawn(timeS);
        if (moments > 1) {
            average(image, timeS, moments);
        }
        sensor.take(image, timeS);
        return image;
    }

    private BufferedImage drawn(double timeS) {
        BufferedImage image =
                new BufferedImage(scene.picture().widthPx(), scene.picture().heightPx(), BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform moved = hands.at(timeS);
        g.transform(moved);
        g.drawImage(backdrop, -marginPx, -marginPx, null);
        stage.paint(new Pen.Colours(g), timeS);
        g.dispose();
        return image;
    }

    private void average(BufferedImage image, double timeS, int moments) {
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int[] sums = new int[bytes.length];
        double openS = SHUTTER / scene.picture().framesPerS();
        for (int k = 0; k < moments; k++) {
            BufferedImage moment = k == 0 ? image : drawn(timeS + openS * k / moments);
            byte[] more = ((DataBufferByte) moment.getRaster().getDataBuffer()).getData();
            for (int i = 0; i < sums.length; i++) {
                sums[i] += more[i] & 0xFF;
            }
        }
        for (int i = 0; i < sums.length; i++) {
            bytes[i] = (byte) (sums[i] / moments);
        }
    }
}
