package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.ArmSample.Reason;

/** When an arm counts as lost, and why. */
class BowArmTest {
    private static final double STEP_S = 0.04;
    private static final double END_S = 8;

    /** Poses a second apart; from this one on they say something else of the bow hand. */
    private static final double FROM_S = 4;

    private static final Player PLAYER = new Player(
            "player", 1, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 400, 400), Optional.empty(), false);

    @Test
    void aHandInFullViewIsSeen() {
        assertTrue(samples(0.9, 1, new BitSet()).stream().allMatch(ArmSample.Seen.class::isInstance));
    }

    @Test
    void aHandSeenHalfAsLikelyIsSeenWithTwiceTheNoise() {
        List<ArmSample> samples = samples(0.5, 1, new BitSet());
        assertTrue(samples.stream().allMatch(ArmSample.Seen.class::isInstance));
        assertEquals(2, noise(samples, END_S - 1) / noise(samples, FROM_S - 2), 1e-3);
    }

    @Test
    void aHandThatIsCoveredIsHidden() {
        assertLost(Reason.HIDDEN, samples(0.02, 1, new BitSet()));
    }

    @Test
    void aHandBeyondTheEdgeIsOutsideEvenIfTheModelClaimsToSeeIt() {
        assertLost(Reason.OUT_OF_PICTURE, samples(0.02, 0.05, new BitSet()));
        assertLost(Reason.OUT_OF_PICTURE, samples(0.9, 0.05, new BitSet()));
    }

    @Test
    void darknessComesBeforeAllElse() {
        assertLost(Reason.TOO_DARK, samples(0.02, 0.05, late()));
    }

    @Test
    void behindWhatMovesBeforeThePlayerAHandIsHiddenEvenIfTheModelClaimsToSeeIt() {
        assertLost(Reason.HIDDEN, samples(0.9, 1, new BitSet(), late()));
    }

    private static BitSet late() {
        BitSet late = new BitSet();
        late.set((int) Math.ceil(FROM_S / STEP_S), (int) Math.ceil(END_S / STEP_S));
        return late;
    }

    private static void assertLost(Reason reason, List<ArmSample> samples) {
        for (ArmSample sample : samples) {
            if (sample.timeS() >= FROM_S) {
                assertEquals(reason, sample instanceof ArmSample.Lost lost ? lost.reason() : null, sample::toString);
            } else if (sample.timeS() < FROM_S - 1) {
                assertTrue(sample instanceof ArmSample.Seen, sample::toString);
            }
        }
    }

    private static double noise(List<ArmSample> samples, double timeS) {
        return samples.stream()
                .filter(s -> Math.abs(s.timeS() - timeS) < STEP_S)
                .mapToDouble(s -> ((ArmSample.Seen) s).noise())
                .average()
                .orElseThrow();
    }

    private static List<ArmSample> samples(double visibility, double presence, BitSet dark) {
        return samples(visibility, presence, dark, new BitSet());
    }

    private static List<ArmSample> samples(double visibility, double presence, BitSet dark, BitSet crossed) {
        KeyPose.Place hand = Bodies.SHOULDERS.plus(-Bodies.SHOULDERS_PX, Bodies.SHOULDERS_PX);
        CellFlow.Grid grid = new CellFlow.Grid(new SeatBox(0, 0, 400, 400));
        HandFollower right = new HandFollower(hand);
        HandFollower left = new HandFollower(Bodies.SHOULDERS);
        float[] shift = new float[2 * CellFlow.CELLS];
        for (double timeS = 0; timeS < END_S; timeS += STEP_S) {
            float dx = (float) (STEP_S * Math.cos(5 * timeS));
            Arrays.fill(shift, 0);
            for (int cell = 0; cell < CellFlow.CELLS; cell++) {
                KeyPose.Place place = new KeyPose.Place(grid.xPx(cell), grid.yPx(cell));
                shift[cell] = place.distancePx(hand) < Bodies.SHOULDERS_PX ? dx : 0;
            }
            CellFlow.Motion motion = new CellFlow.Motion(timeS - STEP_S, timeS, shift.clone());
            right.accept(motion, grid, Bodies.SHOULDERS_PX);
            left.accept(motion, grid, Bodies.SHOULDERS_PX);
        }
        List<KeyPose> poses = new ArrayList<>();
        for (double timeS = 0; timeS < END_S; timeS++) {
            Bodies body = Bodies.of(Bodies.SHOULDERS, hand);
            poses.add(timeS < FROM_S ? body.at(timeS) : body.at(timeS, visibility, presence));
        }
        Map<Hand, HandFollower> hands = Map.of(Hand.RIGHT, right, Hand.LEFT, left);
        return BowArm.of(PLAYER, hands, poses, new KeyPose.Way(0, 0), dark, crossed)
                .samples();
    }
}
