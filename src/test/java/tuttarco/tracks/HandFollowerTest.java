package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.SeatBox;

class HandFollowerTest {
    private static final double SHOULDERS_PX = 40;
    private static final double FRAME_S = 1 / 30.0;
    private static final int FRAMES = 40;
    private static final int MIDDLE = 20;

    /** Follows a hand in the middle of the seat: the cells about it move, in shoulder widths a frame, the others rest. */
    private static HandFollower following(double... stepsOfTwo) {
        HandFollower follower = new HandFollower(new KeyPose.Place(80, 80));
        CellFlow.Grid grid = new CellFlow.Grid(new SeatBox(0, 0, 160, 160));
        for (int i = 0; i < FRAMES; i++) {
            float[] shift = new float[2 * CellFlow.CELLS];
            for (int cell = 0; cell < CellFlow.CELLS; cell++) {
                boolean hand = Math.hypot(grid.xPx(cell) - 80, grid.yPx(cell) - 80) < SHOULDERS_PX;
                shift[cell] = hand ? (float) stepsOfTwo[i % 2] : 0;
            }
            follower.accept(new CellFlow.Motion(i * FRAME_S, (i + 1) * FRAME_S, shift), grid, SHOULDERS_PX);
        }
        return follower;
    }

    private static double trembling(HandFollower follower) {
        return follower.trembling(follower.smoothX(), follower.smoothY())[MIDDLE];
    }

    @Test
    void aSteadyHandDoesNotTremble() {
        HandFollower steady = following(0.02, 0.02);
        assertEquals(0.02 / FRAME_S, steady.smoothX()[MIDDLE], 1e-3);
        assertEquals(0, trembling(steady), 1e-3);
    }

    /** To and fro from frame to frame is what no smoothing over eleven of them leaves. */
    @Test
    void aHandThatGoesToAndFroFromFrameToFrameOnlyTrembles() {
        HandFollower trembling = following(0.02, -0.02);
        assertEquals(0.02 / FRAME_S, trembling(trembling), 0.15 * 0.02 / FRAME_S);
    }

    /** Shoulders are 100 px apart: 80 px are far, and half of them, which are left after the first pose, are not. */
    @Test
    void aPoseThatShowsTheHandFarAwayDisagreesOnceAndDrawsItHalfWay() {
        HandFollower hand = new HandFollower(Bodies.SHOULDERS);
        KeyPose far = Bodies.of(Bodies.SHOULDERS, Bodies.SHOULDERS.plus(-80, 0)).at(1);
        assertTrue(hand.correct(far, Hand.RIGHT, Instrument.VIOLIN));
        assertFalse(hand.correct(far, Hand.RIGHT, Instrument.VIOLIN));
    }

    @Test
    void aHandThatTheModelOnlyGuessesDoesNotDisagree() {
        HandFollower hand = new HandFollower(Bodies.SHOULDERS);
        Bodies far = Bodies.of(Bodies.SHOULDERS, Bodies.SHOULDERS.plus(-80, 0));
        assertFalse(hand.correct(far.at(1, 0.4, 1), Hand.RIGHT, Instrument.VIOLIN));
    }

    /** Only the tip moves, 1.2 shoulder widths past the strings and 2.2 from the hand. */
    private static double speedOfATip(Instrument instrument, double visibility) {
        KeyPose.Place hand = Bodies.SHOULDERS.plus(-Bodies.SHOULDERS_PX, 0);
        KeyPose.Place tip = Bodies.SHOULDERS.plus(1.2 * Bodies.SHOULDERS_PX, 0);
        HandFollower follower = new HandFollower(hand);
        follower.correct(Bodies.of(Bodies.SHOULDERS, hand).at(0, visibility, 1), Hand.RIGHT, instrument);
        CellFlow.Grid grid = new CellFlow.Grid(new SeatBox(0, 0, 400, 400));
        float[] shift = new float[2 * CellFlow.CELLS];
        for (int cell = 0; cell < CellFlow.CELLS; cell++) {
            boolean moves = Math.hypot(grid.xPx(cell) - tip.xPx(), grid.yPx(cell) - tip.yPx()) < 30;
            shift[cell] = moves ? 0.02f : 0;
        }
        for (int i = 0; i < FRAMES; i++) {
            follower.accept(new CellFlow.Motion(i * FRAME_S, (i + 1) * FRAME_S, shift), grid, Bodies.SHOULDERS_PX);
        }
        return follower.smoothX()[MIDDLE];
    }

    @Test
    void ofAHandHalfHiddenBehindTheInstrumentTheBowsTipIsFollowed() {
        assertEquals(0.02 / FRAME_S, speedOfATip(Instrument.VIOLIN, 0.5), 1e-3);
    }

    /** What moves far from a hand that is seen is not the hand's, and nothing is held before a cellist's bow hand. */
    @Test
    void aHandThatIsSeenIsFollowedByItself() {
        assertEquals(0, speedOfATip(Instrument.VIOLIN, 0.9), 1e-9);
        assertEquals(0, speedOfATip(Instrument.CELLO, 0.5), 1e-9);
    }
}
