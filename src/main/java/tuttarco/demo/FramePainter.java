package tuttarco.demo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.WritableRaster;

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
        this.hands = new Hands(scene);
        this.marginPx = hands.farthestPx();
        this.backdrop = RoomPainter.backdrop(scene, layout.camera(), marginPx);
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
        if (scene.picture().mirrored()) {
            flip(image.getRaster());
        }
        return image;
    }

    private static void flip(WritableRaster raster) {
        int last = raster.getWidth() - 1;
        int[] column = new int[3 * raster.getHeight()];
        int[] opposite = new int[3 * raster.getHeight()];
        for (int x = 0; x < last - x; x++) {
            raster.getPixels(x, 0, 1, raster.getHeight(), column);
            raster.getPixels(last - x, 0, 1, raster.getHeight(), opposite);
            raster.setPixels(x, 0, 1, raster.getHeight(), opposite);
            raster.setPixels(last - x, 0, 1, raster.getHeight(), column);
        }
    }

    private BufferedImage drawn(double timeS) {
        double other = hands.otherView(timeS);
        if (other == 0) {
            return drawn(timeS, hands.at(timeS));
        }
        BufferedImage elsewhere = drawn(timeS, hands.elsewhere(timeS));
        return other == 1 ? elsewhere : dissolved(drawn(timeS, hands.at(timeS)), elsewhere, other);
    }

    private static BufferedImage dissolved(BufferedImage image, BufferedImage into, double share) {
        byte[] bytes = bytes(image);
        byte[] more = bytes(into);
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) Math.round((1 - share) * (bytes[i] & 0xFF) + share * (more[i] & 0xFF));
        }
        return image;
    }

    private static byte[] bytes(BufferedImage image) {
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    private BufferedImage drawn(double timeS, AffineTransform moved) {
        BufferedImage image =
                new BufferedImage(scene.picture().widthPx(), scene.picture().heightPx(), BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.transform(moved);
        g.drawImage(backdrop, -marginPx, -marginPx, null);
        stage.paint(new Pen.Colours(g), timeS);
        g.dispose();
        return image;
    }

    private void average(BufferedImage image, double timeS, int moments) {
        byte[] bytes = bytes(image);
        int[] sums = new int[bytes.length];
        double openS = SHUTTER / scene.picture().framesPerS();
        for (int k = 0; k < moments; k++) {
            BufferedImage moment = k == 0 ? image : drawn(timeS + openS * k / moments);
            byte[] more = bytes(moment);
            for (int i = 0; i < sums.length; i++) {
                sums[i] += more[i] & 0xFF;
            }
        }
        for (int i = 0; i < sums.length; i++) {
            bytes[i] = (byte) (sums[i] / moments);
        }
    }
}
