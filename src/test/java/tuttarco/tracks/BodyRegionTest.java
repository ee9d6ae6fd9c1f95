package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.seats.SeatBox;

class BodyRegionTest {
    private static final KeyPose.Place HAND = new KeyPose.Place(300, 100);
    private static final Bodies BODY = Bodies.of(HAND, HAND);
    private static final BodyRegion REGION = BodyRegion.around(BODY.at(0));

    @Test
    void reachesTwoShoulderWidthsAsideAndBelowAndALittleLessAbove() {
        assertEquals(Bodies.SHOULDERS, REGION.middle());
        assertEquals(Bodies.SHOULDERS_PX, REGION.shoulderWidthPx(), 1e-9);
        BodyRegion inside = BodyRegion.around(BODY.placed(300, 300, 1).at(0));
        assertEquals(new SeatBox(300, 280, 400, 320), inside.box(2000, 2000));
    }

    @ParameterizedTest
    @CsvSource({
        // middle of the shoulders, then the box in a picture of 640 by 480
        "100, 60, 0, 0, 300, 260",
        "600, 60, 400, 0, 240, 260",
        "320, 400, 120, 280, 400, 200",
        "600, 400, 400, 280, 240, 200",
        "900, 900, 639, 479, 1, 1",
        "-900, -900, 0, 0, 1, 1",
        "-900, 900, 0, 479, 1, 1"
    })
    void isCutOffAtTheEdgesOfThePicture(double xPx, double yPx, int left, int top, int width, int height) {
        BodyRegion region = new BodyRegion(new KeyPose.Place(xPx, yPx), 100);
        assertEquals(new SeatBox(left, top, width, height), region.box(640, 480));
    }

    @Test
    void isLeftByAPlayerWhoMovesOnByHalfAShoulderWidth() {
        assertFalse(REGION.left(BODY.at(1)));
        assertFalse(REGION.left(BODY.placed(49, 0, 1).at(1)));
        assertTrue(REGION.left(BODY.placed(51, 0, 1).at(1)));
        assertTrue(REGION.left(BODY.placed(0, -51, 1).at(1)));
        // 0.36 and 0.48 of a shoulder width: 0.6 in all
        assertTrue(REGION.left(BODY.placed(36, 48, 1).at(1)));
    }

    @Test
    void isLeftByAPlayerWhoComesNearerOrGoesFarther() {
        assertFalse(REGION.left(scaledInPlace(1.45)));
        assertTrue(REGION.left(scaledInPlace(1.55)));
        assertFalse(REGION.left(scaledInPlace(1 / 1.45)));
        assertTrue(REGION.left(scaledInPlace(1 / 1.55)));
    }

    /** The middle of the shoulders stays. */
    private static KeyPose scaledInPlace(double scale) {
        return BODY.placed(Bodies.SHOULDERS.xPx() * (1 / scale - 1), Bodies.SHOULDERS.yPx() * (1 / scale - 1), scale)
                .at(1);
    }
}
