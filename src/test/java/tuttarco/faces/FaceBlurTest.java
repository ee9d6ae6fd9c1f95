package tuttarco.faces;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FaceBlurTest {
    private static final int SIDE_PX = 120;

    /** Six cells of ten pixels across. */
    private static final Shape FACE = new Ellipse2D.Double(30, 30, 60, 60);

    /** Pixels at the rim may fall on either side of it. */
    private static final Shape WELL_INSIDE = new Ellipse2D.Double(32, 32, 56, 56);

    private static BufferedImage noise(long seed) {
        BufferedImage picture = new BufferedImage(SIDE_PX, SIDE_PX, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(seed);
        for (int y = 0; y < SIDE_PX; y++) {
            for (int x = 0; x < SIDE_PX; x++) {
                picture.setRGB(x, y, random.nextInt(0x1000000));
            }
        }
        return picture;
    }

    private static int[] blurred(BufferedImage picture) {
        FaceBlur.over(picture, List.of(FACE), new AffineTransform());
        return pixels(picture);
    }

    private static int[] pixels(BufferedImage picture) {
        return picture.getRGB(0, 0, SIDE_PX, SIDE_PX, null, 0, SIDE_PX);
    }

    @Test
    void besideTheFaceNothingChanges() {
        BufferedImage picture = noise(1);
        int[] before = pixels(picture);
        int[] after = blurred(picture);
        int changed = 0;
        for (int i = 0; i < before.length; i++) {
            boolean inside = WELL_INSIDE.contains(i % SIDE_PX, i / SIDE_PX);
            boolean outside = !FACE.intersects(i % SIDE_PX - 1, i / SIDE_PX - 1, 3, 3);
            changed += inside && before[i] != after[i] ? 1 : 0;
            assertFalse(outside && before[i] != after[i], "pixel " + i);
        }
        assertTrue(changed > 2400, changed + " of about 2463 changed");
    }

    /** Where in a cell a pixel lay is gone: no way leads back to it. */
    @Test
    void picturesOfEqualCellsCannotBeToldApart() {
        BufferedImage picture = noise(2);
        BufferedImage shuffled = noise(2);
        for (int y = 30; y < 90; y++) {
            for (int x = 30; x < 90; x++) {
                int mirrored = x / 10 * 10 + 9 - x % 10;
                shuffled.setRGB(mirrored, y, picture.getRGB(x, y));
            }
        }
        assertFalse(Arrays.equals(pixels(picture), pixels(shuffled)));
        assertArrayEquals(insides(blurred(picture)), insides(blurred(shuffled)));
    }

    private static int[] insides(int[] pixels) {
        int[] inside = new int[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            inside[i] = WELL_INSIDE.contains(i % SIDE_PX, i / SIDE_PX) ? pixels[i] : 0;
        }
        return inside;
    }

    /** Eyes, as two dark dots with a light bridge between them, are one even shade afterwards. */
    @Test
    void whatIsFinerThanAThirdOfTheFaceIsGone() {
        BufferedImage picture = new BufferedImage(SIDE_PX, SIDE_PX, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < SIDE_PX; y++) {
            for (int x = 0; x < SIDE_PX; x++) {
                picture.setRGB(x, y, x / 5 % 2 == 0 ? 0x000000 : 0xFFFFFF);
            }
        }
        int[] after = blurred(picture);
        for (int x = 40; x < 80; x++) {
            assertEquals(127, after[60 * SIDE_PX + x] & 0xFF, 2);
        }
    }

    @Test
    void aFaceAtTheEdgeIsBlurredAsFarAsItIsSeen() {
        BufferedImage picture = noise(3);
        int before = picture.getRGB(0, 0);
        FaceBlur.over(picture, List.of(new Ellipse2D.Double(-30, -30, 60, 60)), AffineTransform.getScaleInstance(2, 2));
        assertFalse(before == picture.getRGB(0, 0));
        FaceBlur.over(picture, List.of(new Ellipse2D.Double(500, 500, 60, 60)), new AffineTransform());
    }
}
