package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.StrokeKind;

/** Names are replaced by places wherever they stand. */
class ByDeskTest {
    private static final UUID ID = new UUID(1, 2);

    private static Player player(String label, int desk, Place place) {
        return new Player(label, desk, place, Instrument.VIOLIN, new SeatBox(0, 0, 9, 9), Optional.empty(), false);
    }

    private final ByDesk byDesk = new ByDesk(List.of(
            player("Ann", 1, Place.OUTSIDE),
            player("Anna", 1, Place.INSIDE),
            player("Bo", 2, Place.INSIDE),
            player("Cy", 2, Place.INSIDE)));

    private static CorrectionLog log(Correction correction, String note) {
        return new CorrectionLog(
                List.of(new LogEntry.Done(ID, Instant.EPOCH, correction, Map.of())), List.of(note), Optional.empty());
    }

    @Test
    void twoAtOnePlaceAreToldApart() {
        assertEquals("Desk 1 outside", byDesk.label("Ann"));
        assertEquals("Desk 2 inside", byDesk.label("Bo"));
        assertEquals("Desk 2 inside 2", byDesk.label("Cy"));
        assertEquals("Somebody", byDesk.label("Dee"));
    }

    @Test
    void correctionsAndNotesNameNobody() {
        assertEquals(
                log(new Correction.StrokeSet("Desk 1 inside", 1, 2, StrokeKind.UP), "Desk 1 inside, Desk 1 outside"),
                byDesk.of(log(new Correction.StrokeSet("Anna", 1, 2, StrokeKind.UP), "Anna, Ann")));
        assertEquals(
                log(new Correction.ChangeMoved("Desk 2 inside", 1, 2), ""),
                byDesk.of(log(new Correction.ChangeMoved("Bo", 1, 2), "")));
        assertEquals(
                log(new Correction.Absent("Somebody", 1, 2), ""),
                byDesk.of(log(new Correction.Absent("Dee", 1, 2), "")));
        assertEquals(
                log(new Correction.BeatMoved("1", 1, 1, 2), ""),
                byDesk.of(log(new Correction.BeatMoved("1", 1, 1, 2), "")));
    }
}
