package tuttarco.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import org.junit.jupiter.api.Test;

/** Closed forms: a right triangle 3-4-5 gives the radius. */
class CropTest {
    private static final Landmark CENTRE = new Landmark(100, 50, 1, 1);

    /** 50 px from the centre. */
    private static final Landmark RIM = new Landmark(130, 90, 1, 1);

    private static final Pose POSE = new Pose(Collections.nCopies(Pose.LANDMARKS, CENTRE), CENTRE, RIM, 1);

    @Test
    void aCropAroundAPoseIsCentredOnTheHipsAndTwoAndAHalfTimesTheRadiusWide() {
        assertEquals(new Crop(100, 50, 125), Crop.around(POSE));
    }

    @Test
    void theNextCropGoesHalfWay() {
        assertEquals(new Crop(110, 40, 175), new Crop(120, 30, 225).next(POSE));
    }

    @Test
    void aWiderCropHasTheSameMiddle() {
        assertEquals(new Crop(120, 30, 300), new Crop(120, 30, 200).wider(1.5));
    }

    @Test
    void aCropAroundThePersonStays() {
        assertEquals(Crop.around(POSE), Crop.around(POSE).next(POSE));
    }

    @Test
    void aPersonAsSmallAsAPointStillGivesASquare() {
        Pose point = new Pose(Collections.nCopies(Pose.LANDMARKS, CENTRE), CENTRE, CENTRE, 1);
        assertEquals(new Crop(100, 50, 2.5), Crop.around(point));
    }

    @Test
    void aCropHasASideAndAPlace() {
        assertThrows(IllegalArgumentException.class, () -> new Crop(0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Crop(0, 0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Crop(Double.POSITIVE_INFINITY, 0, 1));
    }
}
