package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.signal.Axis;

/**
 * A hand that swings between 0.3 and 1.3 shoulder widths from the strings, known in closed form; the flow is exact, the
 * poses are exact or show something else.
 */
class BodySignTest {
    private static final KeyPose.Way NOBODY = new KeyPose.Way(0, 0);
    private static final double PER_S = 30;
    private static final double END_S = 12;
    private static final double PERIOD_S = 1.6;
    private static final double POSE_EVERY_S = 0.5;

    /** The left hand of a violinist and where bow and strings then meet: half way to the middle of the shoulders. */
    private static final KeyPose.Place LEFT = new KeyPose.Place(300, 100);

    private static final KeyPose.Place STRINGS = new KeyPose.Place(250, 100);
    private static final Axis DOWN = Axis.of(-4, 3);

    private static Player player(Instrument instrument, Optional<Facing> facing) {
        return new Player("player", 1, Place.OUTSIDE, instrument, new SeatBox(0, 0, 400, 400), facing, false);
    }

    private static final Player VIOLINIST = player(Instrument.VIOLIN, Optional.empty());

    /** How far the bow has run from the frog, shoulder widths. */
    private static double run(double timeS) {
        return 0.5 - 0.5 * Math.cos(2 * Math.PI * timeS / PERIOD_S);
    }

    private static double speed(double timeS) {
        return Math.PI / PERIOD_S * Math.sin(2 * Math.PI * timeS / PERIOD_S);
    }

    private static KeyPose.Place hand(KeyPose.Place strings, Axis down, double timeS) {
        double awayPx = Bodies.SHOULDERS_PX * (0.3 + run(timeS));
        return strings.plus(awayPx * down.x(), awayPx * down.y());
    }

    private static Bodies bowing(double timeS) {
        return Bodies.of(LEFT, hand(STRINGS, DOWN, timeS));
    }

    private static List<KeyPose> poses(DoubleFunction<Bodies> body) {
        return poses(END_S, body);
    }

    private static List<KeyPose> poses(double endS, DoubleFunction<Bodies> body) {
        return IntStream.range(0, (int) (endS / POSE_EVERY_S))
                .mapToObj(k -> body.apply(k * POSE_EVERY_S).at(k * POSE_EVERY_S))
                .toList();
    }

    private static double[] timesS(double endS) {
        return IntStream.range(0, (int) (endS * PER_S))
                .mapToDouble(i -> i / PER_S)
                .toArray();
    }

    /** Judged along an axis, of which a share of the hand's speed shows. */
    private static BodySign judge(Player player, Hand hand, List<KeyPose> poses, Axis axis, double share) {
        return judge(player, hand, poses, NOBODY, axis, share);
    }

    private static BodySign judge(
            Player player, Hand hand, List<KeyPose> poses, KeyPose.Way neighbours, Axis axis, double share) {
        double[] timesS = timesS(END_S);
        Axis[] axes = new Axis[timesS.length];
        Arrays.fill(axes, axis);
        double[] along = Arrays.stream(timesS).map(t -> share * speed(t)).toArray();
        BodySign sign = BodySign.judge(player, hand, poses, neighbours, timesS, axes, along);
        assertEquals(timesS.length, sign.downProbability().length);
        assertEquals(timesS.length, sign.reach().length);
        return sign;
    }

    private static void assertDown(BodySign sign) {
        for (double down : sign.downProbability()) {
            assertTrue(down > 0.95 && down <= 1, "down along the axis: " + down);
        }
    }

    private static void assertUp(BodySign sign) {
        for (double down : sign.downProbability()) {
            assertTrue(down < 0.05 && down >= 0, "down along the axis: " + down);
        }
    }

    private static void assertNoIdea(BodySign sign) {
        for (double down : sign.downProbability()) {
            assertEquals(0.5, down, 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"VIOLIN, -4, 3", "VIOLIN, -1, 0", "VIOLIN, -1, 2", "CELLO, -1, 0", "CELLO, -4, 1", "BASS, -1, 0"})
    void downIsAwayFromTheStringsWhicheverWayTheAxisPoints(Instrument instrument, double x, double y) {
        Axis down = Axis.of(x, y);
        KeyPose.Place strings = instrument.onShoulder() ? STRINGS : Bodies.BELLY;
        Player player = player(instrument, Optional.empty());
        List<KeyPose> poses = poses(t -> Bodies.of(LEFT, hand(strings, down, t)));
        assertDown(judge(player, Hand.RIGHT, poses, down, 1));
        assertUp(judge(player, Hand.RIGHT, poses, down.opposite(), -1));
    }

    /** A cellist turned to the picture's right: half of the bow shows, and the hand never gets to the hips' other side. */
    @Test
    void downIsAwayFromTheStringsOfAPlayerWhoTurns() {
        Axis down = Axis.of(-1, 0);
        KeyPose.Place strings = Bodies.BELLY.plus(65, 0);
        Player cellist = player(Instrument.CELLO, Optional.empty());
        List<KeyPose> poses = poses(t -> {
            double awayPx = Bodies.SHOULDERS_PX * (0.3 + run(t)) / 2;
            return Bodies.of(LEFT, strings.plus(-awayPx, 0)).aside(30, 130);
        });
        assertDown(judge(cellist, Hand.RIGHT, poses, down, 0.5));
        assertUp(judge(cellist, Hand.RIGHT, poses, down.opposite(), -0.5));
    }

    @Test
    void aMirroredPictureIsReadLikeThePlainOne() {
        List<KeyPose> plain = poses(BodySignTest::bowing);
        List<KeyPose> mirrored = poses(t -> bowing(t).mirrored());
        Axis mirroredDown = new Axis(-DOWN.x(), DOWN.y());
        BodySign wanted = judge(VIOLINIST, Hand.RIGHT, plain, DOWN, 1);
        BodySign read = judge(VIOLINIST, Hand.LEFT, mirrored, mirroredDown, 1);
        assertDown(read);
        assertUp(judge(VIOLINIST, Hand.LEFT, mirrored, mirroredDown.opposite(), -1));
        assertArrayEquals(wanted.downProbability(), read.downProbability(), 1e-9);
        assertArrayEquals(wanted.reach(), read.reach(), 1e-9);
    }

    /** A hand that rests, that moves across the bow, and that moves against the flow. */
    private static List<List<KeyPose>> handsThatDoNotMoveWithTheFlow() {
        Axis across = new Axis(-DOWN.y(), DOWN.x());
        return List.of(
                poses(t -> bowing(PERIOD_S / 4)),
                poses(t -> Bodies.of(LEFT, hand(STRINGS, across, t))),
                poses(t -> bowing(t + PERIOD_S / 2)));
    }

    @Test
    void posesWhoseHandDoesNotMoveWithTheFlowTellNothing() {
        for (List<KeyPose> poses : handsThatDoNotMoveWithTheFlow()) {
            assertNoIdea(judge(VIOLINIST, Hand.RIGHT, poses, DOWN, 1));
            assertNoIdea(judge(VIOLINIST, Hand.RIGHT, poses, DOWN.opposite(), -1));
        }
    }

    @Test
    void whereThePosesTellNothingADeclaredFacingDecides() {
        Player declared = player(Instrument.VIOLIN, Optional.of(Facing.CAMERA));
        for (List<KeyPose> poses : handsThatDoNotMoveWithTheFlow()) {
            assertDown(judge(declared, Hand.RIGHT, poses, DOWN, 1));
            assertUp(judge(declared, Hand.RIGHT, poses, DOWN.opposite(), -1));
        }
    }

    /** It may be mirrored, or the player left-handed: what was declared is then of no use. */
    @Test
    void aDeclaredFacingSaysNothingOfALeftHandThatBows() {
        Player declared = player(Instrument.VIOLIN, Optional.of(Facing.CAMERA));
        assertNoIdea(judge(declared, Hand.LEFT, poses(t -> bowing(0).mirrored()), DOWN, 1));
    }

    @Test
    void whereThePosesTellNothingTheNeighboursDecide() {
        KeyPose.Way neighbours = new KeyPose.Way(DOWN.x(), DOWN.y());
        for (List<KeyPose> poses : handsThatDoNotMoveWithTheFlow()) {
            assertDown(judge(VIOLINIST, Hand.RIGHT, poses, neighbours, DOWN, 1));
            assertUp(judge(VIOLINIST, Hand.RIGHT, poses, neighbours, DOWN.opposite(), -1));
        }
    }

    @Test
    void aFacingCountsBesideWhatThePosesShow() {
        Axis down = Axis.of(-1, 0);
        List<KeyPose> poses = poses(t -> Bodies.of(LEFT, hand(Bodies.BELLY, down, t)));
        double auto = meanDown(Instrument.CELLO, Optional.empty(), poses, down);
        double right = meanDown(Instrument.CELLO, Optional.of(Facing.CAMERA), poses, down);
        double wrong = meanDown(Instrument.CELLO, Optional.of(Facing.AWAY), poses, down);
        assertTrue(wrong < auto && auto < right, wrong + ", " + auto + ", " + right);
    }

    private static double meanDown(Instrument instrument, Optional<Facing> facing, List<KeyPose> poses, Axis down) {
        BodySign sign = judge(player(instrument, facing), Hand.RIGHT, poses, down, 1);
        return Arrays.stream(sign.downProbability()).average().orElseThrow();
    }

    @Test
    void theMeanWayIsAsLongAsTheSignIsSure() {
        Axis[] axes = {DOWN, DOWN.opposite(), DOWN, DOWN};
        KeyPose.Way sure = new BodySign(new double[] {1, 0, 1, 1}, new double[4]).mean(axes);
        assertEquals(DOWN.x(), sure.x(), 1e-12);
        assertEquals(DOWN.y(), sure.y(), 1e-12);
        KeyPose.Way half = new BodySign(new double[] {0.75, 0.25, 0.75, 0.75}, new double[4]).mean(axes);
        assertEquals(0.5, Math.hypot(half.x(), half.y()), 1e-12);
        assertEquals(new KeyPose.Way(0, 0), new BodySign(new double[] {0.5, 0.5, 0.5, 0.5}, new double[4]).mean(axes));
    }

    /** A cellist who turns from the camera away: the axis stays, down turns to its other end. */
    @Test
    void theSignOfAPlayerWhoTurnsRoundFollowsAndLiesOnStraightLinesBetweenPoses() {
        double endS = 60;
        double turnedS = 30;
        Axis left = Axis.of(-1, 0);
        List<KeyPose> poses = poses(
                endS,
                t -> t < turnedS
                        ? Bodies.of(LEFT, hand(Bodies.BELLY, left, t))
                        : Bodies.of(LEFT, hand(Bodies.BELLY, left, t))
                                .mirrored()
                                .swapped());
        double[] timesS = timesS(endS);
        Axis[] axes = new Axis[timesS.length];
        Arrays.fill(axes, left);
        double[] along = Arrays.stream(timesS)
                .map(t -> t < turnedS ? speed(t) : -speed(t))
                .toArray();
        double[] down = BodySign.judge(
                        player(Instrument.CELLO, Optional.empty()), Hand.RIGHT, poses, NOBODY, timesS, axes, along)
                .downProbability();
        int perPose = (int) (POSE_EVERY_S * PER_S);
        assertEquals(120, poses.size());
        assertEquals(120 * perPose, down.length);
        double largestStep = 0;
        for (int k = 0; k + 1 < poses.size(); k++) {
            double from = down[k * perPose];
            double to = down[(k + 1) * perPose];
            double timeS = k * POSE_EVERY_S;
            assertTrue(timeS > turnedS - 6 || from > 0.95, "down " + from + " at " + timeS);
            assertTrue(timeS < turnedS + 6 || from < 0.05, "down " + from + " at " + timeS);
            largestStep = Math.max(largestStep, Math.abs(to - from));
            for (int i = 0; i < perPose; i++) {
                double share = (double) i / perPose;
                assertEquals((1 - share) * from + share * to, down[k * perPose + i], 1e-9);
            }
        }
        assertTrue(largestStep > 0.01, "there is something to interpolate: " + largestStep);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void reachIsThatOfTheHandAtPosesAndBetweenThem(boolean axisPointsDown) {
        BodySign sign = judge(
                VIOLINIST,
                Hand.RIGHT,
                poses(BodySignTest::bowing),
                axisPointsDown ? DOWN : DOWN.opposite(),
                axisPointsDown ? 1 : -1);
        double[] timesS = timesS(END_S);
        for (int i = 0; i < timesS.length; i++) {
            assertEquals(0.3 + run(timesS[i]), sign.reach()[i], 0.01, "at " + timesS[i] + " s");
        }
    }

    @Test
    void onePoseByItselfTellsNothingOfTheFlow() {
        assertNoIdea(judge(VIOLINIST, Hand.RIGHT, poses(BodySignTest::bowing).subList(0, 1), DOWN, 1));
    }
}
