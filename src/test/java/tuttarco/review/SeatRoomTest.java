package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tuttarco.review.SeatRoom.Handle;
import tuttarco.seats.SeatBox;

/** In a picture of 400 x 300 pixels; the numbers are sums on paper. */
class SeatRoomTest {
    private static final SeatRoom ROOM = new SeatRoom(400, 300);
    private static final SeatBox SEAT = new SeatBox(100, 80, 60, 50);

    @Test
    void aSeatMovesByWhatItIsMoved() {
        assertEquals(new SeatBox(93, 92, 60, 50), ROOM.moved(SEAT, -7, 12));
    }

    @Test
    void atThePicturesEdgesItStopsAndKeepsItsSize() {
        assertEquals(new SeatBox(0, 0, 60, 50), ROOM.moved(SEAT, -500, -81));
        assertEquals(new SeatBox(340, 250, 60, 50), ROOM.moved(SEAT, 241, 9999));
    }

    @Test
    void aHandleMovesItsEdgesAndTheOthersStay() {
        assertEquals(new SeatBox(90, 75, 70, 55), ROOM.resized(SEAT, Handle.TOP_LEFT, -10, -5));
        assertEquals(new SeatBox(100, 75, 60, 55), ROOM.resized(SEAT, Handle.TOP, -10, -5));
        assertEquals(new SeatBox(100, 80, 50, 50), ROOM.resized(SEAT, Handle.RIGHT, -10, -5));
        assertEquals(new SeatBox(100, 80, 70, 55), ROOM.resized(SEAT, Handle.BOTTOM_RIGHT, 10, 5));
        assertEquals(new SeatBox(110, 80, 50, 55), ROOM.resized(SEAT, Handle.BOTTOM_LEFT, 10, 5));
    }

    @Test
    void noHandleGoesPastTheOppositeEdgeOrThePictures() {
        assertEquals(new SeatBox(144, 114, 16, 16), ROOM.resized(SEAT, Handle.TOP_LEFT, 999, 999));
        assertEquals(new SeatBox(0, 0, 160, 130), ROOM.resized(SEAT, Handle.TOP_LEFT, -999, -999));
        assertEquals(new SeatBox(100, 80, 300, 220), ROOM.resized(SEAT, Handle.BOTTOM_RIGHT, 999, 999));
        assertEquals(new SeatBox(100, 80, 16, 16), ROOM.resized(SEAT, Handle.BOTTOM_RIGHT, -999, -999));
    }

    @Test
    void aSeatIsDrawnFromAnyCornerAndCutOffAtTheEdges() {
        SeatBox drawn = new SeatBox(50, 60, 100, 120);
        assertEquals(drawn, ROOM.drawn(50, 60, 150, 180));
        assertEquals(drawn, ROOM.drawn(150, 60, 50, 180));
        assertEquals(drawn, ROOM.drawn(150.4, 180.3, 49.6, 59.7));
        assertEquals(new SeatBox(350, 0, 50, 300), ROOM.drawn(350, -20, 900, 700));
    }

    @Test
    void whatIsDrawnTooSmallHasTheLeastSizeWithinThePicture() {
        assertEquals(new SeatBox(200, 100, 16, 16), ROOM.drawn(200, 100, 200, 100));
        assertEquals(new SeatBox(384, 284, 16, 16), ROOM.drawn(400, 300, 400, 300));
    }

    @Test
    void handlesLieOnTheCornersAndInTheMiddleOfTheEdges() {
        assertEquals(130, Handle.TOP.xPx(SEAT));
        assertEquals(80, Handle.TOP.yPx(SEAT));
        assertEquals(160, Handle.BOTTOM_RIGHT.xPx(SEAT));
        assertEquals(130, Handle.BOTTOM_RIGHT.yPx(SEAT));
    }

    @Test
    void whateverIsDoneASeatLiesInThePicture() {
        Random random = new Random(6);
        SeatBox seat = SEAT;
        for (int i = 0; i < 10_000; i++) {
            int across = random.nextInt(801) - 400;
            int down = random.nextInt(601) - 300;
            Handle handle = Handle.values()[random.nextInt(8)];
            seat = random.nextBoolean() ? ROOM.moved(seat, across, down) : ROOM.resized(seat, handle, across, down);
            assertTrue(seat.fitsInto(400, 300), seat.toString());
            assertTrue(seat.widthPx() >= SeatRoom.LEAST_PX && seat.heightPx() >= SeatRoom.LEAST_PX, seat.toString());
        }
    }
}
