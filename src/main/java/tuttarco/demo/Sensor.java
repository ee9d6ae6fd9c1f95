package tuttarco.demo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Random;

/** What a camera's lens and sensor do to a picture: soften, darken, add noise. */
final class Sensor {
    /** Mains flicker as a camera sees it, hertz (chosen on rendered scenes). */
    private static final double FLICKER_HZ = 3.3;

    private static final int NOISE_TABLE = 1 << 16;

    private final Conditions conditions;
    private final int[] noise = new int[NOISE_TABLE];
    private final Random random;
    private final int widthPx;
    private final int heightPx;
    private final short[] rows;

    Sensor(Scene scene) {
        this.conditions = scene.conditions();
        this.random = new Random(scene.seed() * 17 + 3);
        this.widthPx = scene.picture().widthPx();
        this.heightPx = scene.picture().heightPx();
        this.rows = new short[widthPx * heightPx * 3];
        for (int i = 0; i < NOISE_TABLE; i++) {
            noise[i] = (int) Math.round(conditions.noise() * random.nextGaussian());
        }
    }

    /** Changes the picture in place; pictures must come in the clip's order. */
    void take(BufferedImage image, double timeS) {
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        soften(bytes);
        double flicker = conditions.flicker() * (0.5 + 0.5 * Math.sin(2 * Math.PI * FLICKER_HZ * timeS));
        double light = conditions.light() * (1 - flicker);
        int stride = widthPx * 3;
        for (int y = 0; y < heightPx; y++) {
            int from = random.nextInt(NOISE_TABLE);
            for (int i = y * stride, end = i + stride; i < end; i++) {
                int value = (int) (light * (bytes[i] & 0xFF)) + noise[(from + i) & (NOISE_TABLE - 1)];
                bytes[i] = (byte) Math.max(0, Math.min(255, value));
            }
        }
    }

    /** Weighs each pixel 2:1 against its neighbours, across and along; the outermost pixels stay as they are. */
    private void soften(byte[] bytes) {
        int stride = widthPx * 3;
        for (int y = 0; y < heightPx; y++) {
            for (int i = y * stride + 3, end = (y + 1) * stride - 3; i < end; i++) {
                rows[i] = (short) ((bytes[i - 3] & 0xFF) + 2 * (bytes[i] & 0xFF) + (bytes[i + 3] & 0xFF));
            }
        }
        for (int y = 1; y < heightPx - 1; y++) {
            for (int i = y * stride + 3, end = (y + 1) * stride - 3; i < end; i++) {
                bytes[i] = (byte) ((rows[i - stride] + 2 * rows[i] + rows[i + stride] + 8) >> 4);
            }
        }
    }
}
