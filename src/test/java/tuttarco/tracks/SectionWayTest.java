package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

class SectionWayTest {
    private static final KeyPose.Way NONE = new KeyPose.Way(0, 0);
    private static final KeyPose.Way LEFT = new KeyPose.Way(-1, 0);

    private static Player player(String label, Instrument instrument) {
        return new Player(label, 1, Place.OUTSIDE, instrument, new SeatBox(0, 0, 100, 100), Optional.empty(), false);
    }

    private static final Player IDA = player("Ida", Instrument.VIOLIN);
    private static final Player JON = player("Jon", Instrument.VIOLIN);
    private static final Player KIT = player("Kit", Instrument.VIOLIN);

    @Test
    void aPlayerHasNothingFromHimselfNorFromOtherInstruments() {
        SectionWay section = new SectionWay();
        assertEquals(NONE, section.besides(IDA));
        section.add(IDA, LEFT);
        section.add(player("Cleo", Instrument.CELLO), LEFT);
        assertEquals(NONE, section.besides(IDA));
    }

    @Test
    void twoNeighboursWhoAgreeAreAsClearAsCanBeAndOneIsHalf() {
        SectionWay section = new SectionWay();
        section.add(JON, LEFT);
        assertEquals(new KeyPose.Way(-0.5, 0), section.besides(IDA));
        section.add(KIT, LEFT);
        assertEquals(LEFT, section.besides(IDA));
        section.add(player("Lou", Instrument.VIOLIN), LEFT);
        assertEquals(LEFT, section.besides(IDA));
    }

    @Test
    void neighboursWhoDifferLeaveLittle() {
        SectionWay section = new SectionWay();
        section.add(JON, LEFT);
        section.add(KIT, new KeyPose.Way(0.5, 0.5));
        assertEquals(new KeyPose.Way(-0.25, 0.25), section.besides(IDA));
    }
}
