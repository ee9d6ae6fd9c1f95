package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
