package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
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
import tuttarco.seats.Names;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;

/** Names are replaced by places wherever they stand. */
class CalledTest {
    private static final UUID ID = new UUID(1, 2);

    private static Player player(String label, int desk, Place place) {
        return new Player(label, desk, place, Instrument.VIOLIN, new SeatBox(0, 0, 9, 9), Optional.empty(), false);
    }

    private static Take take(Player... players) {
        return new Take(
                Path.of("a.take.json"),
                "A",
                Path.of("a.mp4"),
                List.of(players),
                Optional.empty(),
                new BeatsGiven.Missing(),
                Bowing.UNIFIED);
    }

    private final Called called =
            new Called(Names.BY_DESK, List.of(take(player("Ann", 1, Place.OUTSIDE), player("Anna", 1, Place.INSIDE))));

    private static CorrectionLog log(Correction correction) {
        return new CorrectionLog(
                List.of(new LogEntry.Done(ID, Instant.EPOCH, correction, Map.of())),
                List.of("line 3 was cut off"),
                Optional.empty());
    }

    @Test
    void correctionsNameNobody() {
        assertEquals(
                log(new Correction.StrokeSet("Desk 1 inside", 1, 2, StrokeKind.UP)),
                called.log(log(new Correction.StrokeSet("Anna", 1, 2, StrokeKind.UP))));
        assertEquals(
                log(new Correction.ChangeMoved("Desk 1 outside", 1, 2)),
                called.log(log(new Correction.ChangeMoved("Ann", 1, 2))));
        assertEquals(log(new Correction.Absent("Somebody", 1, 2)), called.log(log(new Correction.Absent("Dee", 1, 2))));
        assertEquals(
                log(new Correction.BeatMoved("1", 1, 1, 2)), called.log(log(new Correction.BeatMoved("1", 1, 1, 2))));
    }

    @Test
    void namesThatAreShownStay() {
        Called shown = new Called(Names.SHOWN, List.of(take(player("Ann", 1, Place.OUTSIDE))));
        assertEquals("Ann", shown.label("Ann"));
        assertEquals(Optional.empty(), shown.note());
        CorrectionLog log = log(new Correction.Absent("Ann", 1, 2));
        assertEquals(log, shown.log(log));
    }

    /** Ann and Bo change places; Cy sat where Ann sits now. */
    @Test
    void whoChangesPlacesKeepsTheNameOfTheLast() {
        Called both = new Called(
                Names.BY_DESK,
                List.of(
                        take(
                                player("Ann", 1, Place.OUTSIDE),
                                player("Bo", 1, Place.INSIDE),
                                player("Cy", 2, Place.INSIDE)),
                        take(player("Bo", 1, Place.OUTSIDE), player("Ann", 2, Place.INSIDE))));
        assertEquals("Desk 2 inside", both.label("Ann"));
        assertEquals("Desk 1 outside", both.label("Bo"));
        assertEquals("Desk 2 inside 2", both.label("Cy"));
        assertEquals(true, both.note().isPresent());
        assertEquals(Optional.empty(), called.note());
    }
}
