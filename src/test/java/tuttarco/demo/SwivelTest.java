package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;

class SwivelTest {
    private static final Swivel QUARTER = new Swivel(90, new Spell(10, 16, 2));

    @Test
    void thePlayerTurnsAsideAndBack() {
        assertEquals(0, QUARTER.deg(9), 1e-12);
        assertEquals(0, QUARTER.deg(10), 1e-12);
        assertEquals(45, QUARTER.deg(11), 1e-12);
        assertEquals(90, QUARTER.deg(12), 1e-12);
        assertEquals(90, QUARTER.deg(14), 1e-12);
        assertEquals(45, QUARTER.deg(15), 1e-12);
        assertEquals(0, QUARTER.deg(17), 1e-12);
    }

    /** The cubic 3u² - 2u³ is fastest in its middle, by half more than on average. */
    @Test
    void theTurnIsSmooth() {
        double fastest = 0;
        for (double timeS = 9; timeS < 17; timeS += 0.01) {
            fastest = Math.max(fastest, Math.abs(QUARTER.deg(timeS + 0.01) - QUARTER.deg(timeS)) / 0.01);
        }
        assertEquals(1.5 * 90 / 2, fastest, 0.1);
    }

    @Test
    void aShortWhileIsAThirdWayInAndAThirdWayOut() {
        assertEquals(1, new Spell(0, 3, 5).wayS(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new Spell(1, 1, 0.5));
    }

    /** In the fixture a bar takes 1.2 seconds after a second of silence. */
    @Test
    void theChestTurnsAboutTheChairInTheBarsGiven() {
        Cast cast = new Cast(Instrument.CELLO, Facing.CAMERA, new Deviation.Swivels(-90, 2, 3));
        Performer performer =
                Layout.of(SceneFixture.of(List.of(cast))).performers().get(0);
        assertEquals(Math.toRadians(180), performer.axes(2.1).azimuthRad(), 1e-12);
        assertEquals(Math.toRadians(90), performer.axes(3.4).azimuthRad(), 1e-12);
        assertEquals(Math.toRadians(180), performer.axes(4.7).azimuthRad(), 1e-12);
        assertEquals(performer.axes(0).floor(), performer.axes(3.4).floor());
    }
}
