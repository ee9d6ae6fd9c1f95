package tuttarco.faces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Area;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import tuttarco.seats.SeatBox;

/** What is blurred of a face of radius 10 px that is looked at each second. */
class FaceTrackTest {
    private static final SeatBox SEAT = new SeatBox(400, 100, 100, 100);

    private static Area at(FaceTrack track, double timeS) {
        Area area = new Area();
        track.at(timeS).forEach(shape -> area.add(new Area(shape)));
        return area;
    }

    private static FaceTrack seen(FaceTrack track, double timeS, double xPx) {
        track.looked(timeS, List.of(new FaceDisc(xPx, 50, 10)), true);
        return track;
    }

    private static FaceTrack person() {
        return FaceTrack.ofPerson(Optional.empty());
    }

    @Test
    void atALookItIsTheDiscAndBetweenTwoTheWholeWay() {
        FaceTrack track = seen(seen(person(), 0, 100), 1, 200);
        assertTrue(at(track, 0).contains(92, 50));
        assertFalse(at(track, 0).contains(115, 50));
        for (double xPx : List.of(92.0, 150.0, 208.0)) {
            assertTrue(at(track, 0.5).contains(xPx, 50));
            assertFalse(at(track, 0.5).contains(xPx, 62), "no wider than the face");
        }
    }

    @Test
    void throughAMissItIsHeldAndWidened() {
        FaceTrack track = seen(person(), 0, 100);
        track.looked(1, List.of(), true);
        seen(track, 1.9, 120);
        assertTrue(at(track, 1).contains(110, 50 + 14));
        assertFalse(at(track, 1).contains(110, 50 + 16));
    }

    @Test
    void whoCannotBeFollowedIsBlurredWidelyWhereHeOrSheSits() {
        FaceTrack never = FaceTrack.ofPerson(Optional.of(SEAT));
        assertTrue(at(never, 7).contains(390, 90, 120, 55), "the upper half of the seat, and about it");
        assertFalse(at(never, 7).contains(450, 180));
        FaceTrack lost = seen(FaceTrack.ofPerson(Optional.of(SEAT)), 0, 440);
        lost.looked(10, List.of(), true);
        assertTrue(at(lost, 10).contains(440, 50 + 14), "where last seen");
        assertTrue(at(lost, 10).contains(390, 90, 120, 55), "and in the seat");
    }

    @Test
    void othersAreHeldForAWhileBeforeAndAfter() {
        FaceTrack track = seen(person(), 30, 100);
        assertTrue(at(track, 11).contains(100, 50));
        assertTrue(at(track, 49).contains(100, 50));
        assertEquals(List.of(), track.at(9));
        assertEquals(List.of(), track.at(51));
    }

    private static FaceTrack seenAt(FaceTrack track, double timeS, double... ysPx) {
        track.looked(
                timeS,
                DoubleStream.of(ysPx).mapToObj(y -> new FaceDisc(100, y, 10)).toList(),
                true);
        return track;
    }

    @Test
    void whereALookIsOfTwoMindsBothPlacesAndTheWayBetweenAreBlurred() {
        FaceTrack track = seenAt(person(), 0, 50, 90);
        for (double yPx : List.of(42.0, 70.0, 98.0)) {
            assertTrue(at(track, 0).contains(100, yPx));
            assertFalse(at(track, 0).contains(112, yPx), "no wider than the face");
        }
    }

    @Test
    void betweenTwoLooksOfTwoMindsAllThatLiesBetweenIsBlurred() {
        FaceTrack track = person();
        track.looked(0, List.of(new FaceDisc(100, 50, 10), new FaceDisc(100, 110, 10)), true);
        track.looked(1, List.of(new FaceDisc(200, 50, 10), new FaceDisc(200, 110, 10)), true);
        assertTrue(at(track, 0.5).contains(92, 50, 116, 60), "from face to face, and their outer halves");
        assertFalse(at(track, 0.5).contains(150, 122));
        assertFalse(at(track, 0.5).contains(88, 80));
    }

    /** A head that is lower for two of ten seconds is rather a hand that was taken for it. */
    @Test
    void whereAFaceUsuallyIsCountsAndIsWidenedWhileItIsSeenElsewhere() {
        FaceTrack track = person();
        for (int timeS = 0; timeS < 10; timeS++) {
            seenAt(track, timeS, timeS == 5 || timeS == 6 ? 100 : 50);
        }
        assertTrue(at(track, 5.5).contains(100, 100));
        assertTrue(at(track, 5.5).contains(100, 50 - 14));
        assertFalse(at(track, 5.5).contains(100, 50 - 16));
        assertFalse(at(track, 2.5).contains(100, 50 - 11), "seen there it is no wider");
        assertFalse(at(track, 2.5).contains(100, 100));
    }

    @Test
    void ofPlacesSeenAsOftenTheUpperIsTheUsualOne() {
        FaceTrack track = person();
        for (int timeS = 0; timeS < 10; timeS++) {
            seenAt(track, timeS, timeS < 5 ? 50 : 100);
        }
        assertTrue(at(track, 6).contains(100, 50));
        assertFalse(at(track, 3).contains(100, 100));
    }

    @Test
    void whoMayHaveBeenTakenForANeighbourIsBlurredInTheOwnSeatToo() {
        FaceTrack track = FaceTrack.ofPerson(Optional.of(SEAT));
        for (int timeS = 0; timeS < 4; timeS++) {
            track.looked(timeS, List.of(new FaceDisc(440, 50, 10)), timeS != 2);
        }
        assertTrue(at(track, 2).contains(440, 50));
        assertTrue(at(track, 1.5).contains(390, 90, 120, 55), "the upper half of the seat, and about it");
        assertFalse(at(track, 0.5).contains(450, 100));
    }
}
