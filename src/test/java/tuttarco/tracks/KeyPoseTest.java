package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.bow.Instrument;

class KeyPoseTest {
    /** The left hand 100 px to the right of the shoulders' middle, so a violin's strings are 50 px to its right. */
    private static final KeyPose.Place LEFT = new KeyPose.Place(300, 100);

    private static final KeyPose.Place VIOLIN_STRINGS = new KeyPose.Place(250, 100);

    private static KeyPose withRightHand(double xPx, double yPx) {
        return Bodies.of(LEFT, new KeyPose.Place(xPx, yPx)).at(0);
    }

    @Test
    void handsAndShouldersAreWhereThePoseHasThem() {
        KeyPose pose = withRightHand(180, 190);
        assertEquals(LEFT, pose.hand(Hand.LEFT));
        assertEquals(new KeyPose.Place(180, 190), pose.hand(Hand.RIGHT));
        assertEquals(Bodies.SHOULDERS, pose.shoulders());
        // 120 px aside and 90 px below: a triangle of 3-4-5
        assertEquals(150, pose.handsApartPx(), 1e-9);
        assertEquals(Hand.RIGHT, Hand.LEFT.other());
        assertEquals(Hand.LEFT, Hand.RIGHT.other());
    }

    @ParameterizedTest
    @EnumSource(Instrument.class)
    void stringsAreUnderTheChinOrBeforeTheBelly(Instrument instrument) {
        KeyPose.Place expected = instrument.onShoulder() ? VIOLIN_STRINGS : Bodies.BELLY;
        assertEquals(expected, withRightHand(180, 190).strings(instrument, Hand.RIGHT));
        Bodies mirrored = Bodies.of(LEFT, new KeyPose.Place(180, 190)).mirrored();
        assertEquals(
                instrument.onShoulder() ? new KeyPose.Place(150, 100) : Bodies.BELLY,
                mirrored.at(0).strings(instrument, Hand.LEFT));
    }

    /** The knees are 80 px aside; the strings, half as far before the player, are seen 40 px aside. */
    @ParameterizedTest
    @EnumSource(
            value = Instrument.class,
            names = {"CELLO", "BASS", "VIOL"})
    void beforeAPlayerWhoTurnsTheStringsAreAside(Instrument instrument) {
        Bodies turned = Bodies.of(LEFT, new KeyPose.Place(180, 190)).aside(30, 80);
        assertEquals(Bodies.BELLY.plus(40, 0), turned.at(0).strings(instrument, Hand.RIGHT));
        assertEquals(Bodies.BELLY.plus(-40, 0), turned.mirrored().at(0).strings(instrument, Hand.LEFT));
    }

    @Test
    void theFacingIsToldByShouldersAndNose() {
        Bodies front = Bodies.of(LEFT, new KeyPose.Place(180, 190));
        assertEquals(new KeyPose.Way(0, 1), front.at(0).facing());
        assertEquals(new KeyPose.Way(0, -1), front.mirrored().swapped().at(0).facing());
        // the nose is half a shoulder width before the shoulders: 30 px aside of 50
        assertEquals(new KeyPose.Way(0.6, 1), front.aside(30, 80).at(0).facing());
        assertEquals(
                new KeyPose.Way(-0.6, 1), front.aside(30, 80).mirrored().at(0).facing());
        assertEquals(
                new KeyPose.Way(0.3, 1),
                KeyPose.meanFacing(List.of(front.at(0), front.aside(30, 80).at(1))));
    }

    @Test
    void theWayToAHandHasLengthOneFromHalfAShoulderWidthOn() {
        assertWay(-0.6, 0.8, withRightHand(250 - 60, 100 + 80));
        assertWay(-0.6, 0.8, withRightHand(250 - 30, 100 + 40));
        assertWay(-0.3, 0.4, withRightHand(250 - 15, 100 + 20));
        assertWay(0, 0, withRightHand(250, 100));
    }

    private static void assertWay(double x, double y, KeyPose pose) {
        KeyPose.Way way = pose.fromStrings(Instrument.VIOLIN, Hand.RIGHT);
        assertEquals(x, way.x(), 1e-9);
        assertEquals(y, way.y(), 1e-9);
    }

    @Test
    void shouldersSeenFromTheSideAreAsWideAsTheTrunkTells() {
        KeyPose front = withRightHand(180, 190);
        assertEquals(Bodies.SHOULDERS_PX, front.shoulderWidthPx(), 1e-9);
        Bodies side = new Bodies(
                Bodies.SHOULDERS,
                Bodies.HIPS,
                Bodies.SHOULDERS,
                Bodies.SHOULDERS,
                Bodies.HIPS,
                Bodies.HIPS,
                LEFT,
                new KeyPose.Place(180, 190));
        // 0.55 of a trunk of 150 px
        assertEquals(82.5, side.at(0).shoulderWidthPx(), 1e-9);
    }

    @Test
    void betweenPosesValuesLieOnStraightLinesAndOutsideTheyAreLevel() {
        Bodies body = Bodies.of(LEFT, LEFT);
        List<KeyPose> poses = List.of(body.at(1), body.at(2), body.at(4));
        double[] timesS = {0, 1, 1.25, 2, 3, 3.5, 4, 9};
        assertArrayEquals(
                new double[] {8, 8, 7, 4, 5, 5.5, 6, 6}, KeyPose.between(poses, new double[] {8, 4, 6}, timesS), 1e-12);
        assertArrayEquals(
                new double[] {3, 3},
                KeyPose.between(List.of(body.at(1)), new double[] {3}, new double[] {0, 2}),
                1e-12);
    }
}
