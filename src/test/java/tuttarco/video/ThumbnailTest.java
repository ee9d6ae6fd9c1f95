package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleBinaryOperator;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;

/** Stripes across and stripes along have nothing in common: their correlation is 0. */
class ThumbnailTest {
    private static final int SIDE_PX = 160;

    private static Thumbnail of(DoubleBinaryOperator luma) {
        try (Mat grey = new Mat(SIDE_PX, SIDE_PX, opencv_core.CV_8UC1);
                UByteIndexer pixels = grey.createIndexer()) {
            for (int y = 0; y < SIDE_PX; y++) {
                for (int x = 0; x < SIDE_PX; x++) {
                    pixels.put(y, x, (int) Math.round(luma.applyAsDouble((double) x / SIDE_PX, (double) y / SIDE_PX)));
                }
            }
            return Thumbnail.of(grey);
        }
    }

    private static double wave(double phase) {
        return 60 * Math.sin(4 * Math.PI * phase);
    }

    private static final Thumbnail ACROSS = of((x, y) -> 120 + wave(x));
    private static final Thumbnail ALONG = of((x, y) -> 120 + wave(y));

    @Test
    void lightThatChangesAsAWholeIsNoChange() {
        Thumbnail dimmer = of((x, y) -> 20 + wave(x) / 4);
        assertEquals(1, ACROSS.correlation(dimmer), 0.01);
        assertTrue(ACROSS.leap(dimmer) < 0.1, "leap " + ACROSS.leap(dimmer));
    }

    /** Stripes of amplitude sqrt 2 differ most where one is at its crest and the other at its trough. */
    @Test
    void whatHasNothingInCommonIsFarApart() {
        assertEquals(0, ACROSS.correlation(ALONG), 0.01);
        assertEquals(-1, ACROSS.correlation(of((x, y) -> 120 - wave(x))), 0.01);
        assertEquals(2 * Math.sqrt(2), ACROSS.leap(ALONG), 0.2);
    }

    /** A square of four by four cells leaps: of the 51 that count, 16 get darker by what 16 others get brighter. */
    @Test
    void aLeapOfASmallThingCounts() {
        Thumbnail here = of((x, y) -> 120 + wave(x) + (x > 0.25 && x < 0.375 && y < 0.125 ? 100 : 0));
        Thumbnail there = of((x, y) -> 120 + wave(x) + (x > 0.25 && x < 0.375 && y > 0.875 ? 100 : 0));
        assertEquals(32.0 / 51 * 100 / (60 / Math.sqrt(2)), here.leap(there), 0.35);
        assertEquals(0, here.medianChange(there), 0.02);
    }

    @Test
    void aMixtureIsTakenApart() {
        for (double share : new double[] {0.2, 0.5, 0.9}) {
            Thumbnail mixed = of((x, y) -> 120 + (1 - share) * wave(x) + share * wave(y));
            assertEquals(share, mixed.mixtureOf(ACROSS, ALONG).share(), 0.01);
            assertEquals(0, mixed.mixtureOf(ACROSS, ALONG).rest(), 0.02);
        }
    }

    /** Half way between two places a thing is at neither. Stripes at 0, 30 and 60 degrees: no mixture explains the middle. */
    @Test
    void motionIsNoMixture() {
        Thumbnail left = of((x, y) -> x < 0.25 ? 200 : 50);
        Thumbnail middle = of((x, y) -> x > 0.25 && x < 0.5 ? 200 : 50);
        Thumbnail right = of((x, y) -> x > 0.5 && x < 0.75 ? 200 : 50);
        assertTrue(
                middle.mixtureOf(left, right).rest() > 0.4,
                middle.mixtureOf(left, right).toString());
    }

    @Test
    void aMotionOfTheWholePictureIsToldFromAMixture() {
        Thumbnail still = of((x, y) -> 120 + wave(x) / 2 + wave(1.7 * y) / 2);
        Thumbnail panned = of((x, y) -> 120 + wave(x + 0.01) / 2 + wave(1.7 * (y - 0.01)) / 2);
        Thumbnail zoomed =
                of((x, y) -> 120 + wave(0.5 + 0.98 * (x - 0.5)) / 2 + wave(1.7 * (0.5 + 0.98 * (y - 0.5))) / 2);
        assertTrue(still.moved(panned) > 0.9, "panned " + still.moved(panned));
        assertTrue(still.moved(zoomed) > 0.6, "zoomed " + still.moved(zoomed));
        Thumbnail mixed = of((x, y) -> 120 + 0.4 * wave(x) + 0.4 * wave(1.7 * y) + 0.2 * wave(2.3 * x + 1.1 * y));
        assertTrue(still.moved(mixed) < 0.1, "mixed " + still.moved(mixed));
    }

    @Test
    void aPictureWithoutContrastIsBlank() {
        assertTrue(of((x, y) -> 0).blank());
        assertTrue(of((x, y) -> 200 + wave(x) / 60).blank());
        assertFalse(ACROSS.blank());
    }
}
