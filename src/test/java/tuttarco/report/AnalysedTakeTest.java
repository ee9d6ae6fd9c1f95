package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.compare.BeatReading;
import tuttarco.season.TakeOnRecord;

class AnalysedTakeTest {
    @Test
    void whatIsKeptOnRecordIsWhatWasRead() {
        AnalysedTake take = Fixtures.unified();
        TakeOnRecord kept = take.onRecord(Optional.empty());
        assertEquals("Autumn serenade, letter B", kept.title());
        assertEquals(take.comparison().beats().beats().size(), kept.beats().size());
        for (int i = 0; i < kept.players().size(); i++) {
            List<BeatReading> readings = take.comparison().beatReadings().get(i);
            assertEquals(readings.get(0).player().label(), kept.players().get(i).label());
            assertEquals(
                    readings.stream().map(BeatReading::verdict).toList(),
                    kept.players().get(i).verdicts());
            assertEquals(
                    readings.stream().map(BeatReading::played).toList(),
                    kept.players().get(i).played());
        }
        assertEquals(
                take.together().timing().lags().stream().map(l -> l.changes()).toList(),
                kept.players().stream()
                        .filter(p -> !p.leader())
                        .map(p -> p.lags().size())
                        .toList());
        assertEquals(take.evenness().orElseThrow().bars(), kept.evenness());
    }

    /** Half an hour after midnight in Berlin it is still the day before in New York; what the take says goes first. */
    @Test
    void aTakesDayIsItsOwnOrItsClips() {
        AnalysedTake take = Fixtures.unified();
        assertEquals(Optional.empty(), take.day(ZoneId.of("Europe/Berlin")));
        AnalysedTake filmed = Fixtures.filmed(Instant.parse("2026-11-25T23:30:00Z"), Optional.empty());
        assertEquals(Optional.of(LocalDate.of(2026, 11, 26)), filmed.day(ZoneId.of("Europe/Berlin")));
        assertEquals(Optional.of(LocalDate.of(2026, 11, 25)), filmed.day(ZoneId.of("America/New_York")));
        LocalDate said = LocalDate.of(2026, 11, 24);
        AnalysedTake dated = Fixtures.filmed(Instant.parse("2026-11-25T23:30:00Z"), Optional.of(said));
        assertEquals(Optional.of(said), dated.day(ZoneId.of("Europe/Berlin")));
    }
}
