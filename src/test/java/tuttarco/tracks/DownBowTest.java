package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;

/** In a down-bow the bow hand, the right one, leaves the strings (common practice, no source). */
class DownBowTest {
    @ParameterizedTest
    @EnumSource(Instrument.class)
    void facingTheCameraTheRightHandIsOnThePicturesLeftAndLeavesThere(Instrument instrument) {
        DownBow down = DownBow.of(instrument, Facing.CAMERA);
        assertTrue(down.leadsLeft());
        assertFalse(down.leadsRight());
    }

    @ParameterizedTest
    @EnumSource(Instrument.class)
    void seenFromBehindItIsTheOtherWayRound(Instrument instrument) {
        assertTrue(DownBow.of(instrument, Facing.AWAY).leadsRight());
    }

    @Test
    void violinAndViolaBowsSlopeDownTowardsTheHand() {
        assertTrue(DownBow.of(Instrument.VIOLIN, Facing.CAMERA).y() > 0.3);
        assertTrue(DownBow.of(Instrument.VIOLA, Facing.LEFT).y() > 0.3);
        assertEquals(0, DownBow.of(Instrument.CELLO, Facing.CAMERA).y(), 0.1);
    }

    /** The viol's bow is held underhand, but down-bow still is frog to tip (common practice, no source). */
    @Test
    void theViolsHandLeavesTheStringsInADownBowToo() {
        assertEquals(DownBow.of(Instrument.CELLO, Facing.CAMERA), DownBow.of(Instrument.VIOL, Facing.CAMERA));
    }

    @Test
    void aCelloInProfileShowsLittleOfItsBow() {
        assertTrue(DownBow.of(Instrument.CELLO, Facing.LEFT).visibleShare() < 0.3);
        assertTrue(DownBow.of(Instrument.CELLO, Facing.CAMERA).visibleShare() > 0.9);
    }
}
