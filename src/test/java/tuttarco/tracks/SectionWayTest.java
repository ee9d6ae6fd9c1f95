package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

class SectionWayTest {
    private static final KeyPose.Way NONE = new KeyPose.Way(0, 0);
    private static final KeyPose.Way LEFT = new KeyPose.Way(-1, 0);
    private static final KeyPose.Way TO_CAMERA = new KeyPose.Way(0, 1);

    private static Player player(String label, Instrument instrument) {
        return new Player(label, 1, Place.OUTSIDE, instrument, new SeatBox(0, 0, 100, 100), Optional.empty(), false);
    }

    private static final Player IDA = player("Ida", Instrument.VIOLIN);
    private static final Player JON = player("Jon", Instrument.VIOLIN);
    private static final Player KIT = player("Kit", Instrument.VIOLIN);

    /** A section of which one player, Ida, faces the camera and shows nothing of her arm. */
    private static SectionWay sectionOfIda() {
        SectionWay section = new SectionWay();
        section.add(IDA, new SectionWay.Seen(TO_CAMERA, NONE));
        return section;
    }

    private static SectionWay.Seen facingCamera(KeyPose.Way downBow) {
        return new SectionWay.Seen(TO_CAMERA, downBow);
    }

    @Test
    void aPlayerHasNothingFromHimselfNorFromOtherInstruments() {
        SectionWay section = new SectionWay();
        section.add(IDA, facingCamera(LEFT));
        assertEquals(NONE, section.besides(IDA));
        section.add(player("Cleo", Instrument.CELLO), facingCamera(LEFT));
        assertEquals(NONE, section.besides(IDA));
    }

    @Test
    void twoNeighboursWhoAgreeAreAsClearAsCanBeAndOneIsHalf() {
        SectionWay section = sectionOfIda();
        section.add(JON, facingCamera(LEFT));
        assertEquals(new KeyPose.Way(-0.5, 0), section.besides(IDA));
        section.add(KIT, facingCamera(LEFT));
        assertEquals(LEFT, section.besides(IDA));
        section.add(player("Lou", Instrument.VIOLIN), facingCamera(LEFT));
        assertEquals(LEFT, section.besides(IDA));
    }

    @Test
    void neighboursWhoDifferLeaveLittle() {
        SectionWay section = sectionOfIda();
        section.add(JON, facingCamera(LEFT));
        section.add(KIT, facingCamera(new KeyPose.Way(0.5, 0.5)));
        assertEquals(new KeyPose.Way(-0.25, 0.25), section.besides(IDA));
    }

    /** Half as much as one who faces alike is the cosine of 60 degrees; how long the facing was seen says nothing. */
    @ParameterizedTest
    @CsvSource({"0, 0.3, -0.5", "60, 1, -0.25", "-60, 2, -0.25", "90, 1, 0", "135, 1, 0", "180, 1, 0"})
    void aNeighbourCountsAsFarAsBothFaceAlike(double turnedDeg, double length, double wanted) {
        double turned = Math.toRadians(turnedDeg);
        SectionWay section = sectionOfIda();
        section.add(
                JON, new SectionWay.Seen(new KeyPose.Way(length * Math.sin(turned), length * Math.cos(turned)), LEFT));
        assertEquals(wanted, section.besides(IDA).x(), 1e-12);
    }

    @Test
    void aNeighbourWhoFacesElsewhereTakesNothingFromThoseWhoFaceAlike() {
        SectionWay section = sectionOfIda();
        section.add(JON, facingCamera(LEFT));
        section.add(KIT, facingCamera(LEFT));
        section.add(
                player("Lou", Instrument.VIOLIN), new SectionWay.Seen(new KeyPose.Way(0, -1), new KeyPose.Way(1, 0)));
        assertEquals(LEFT, section.besides(IDA));
    }

    @Test
    void whereNoFacingWasSeenNobodyIsAsked() {
        SectionWay section = sectionOfIda();
        section.add(JON, new SectionWay.Seen(NONE, LEFT));
        assertEquals(NONE, section.besides(IDA));
    }
}
