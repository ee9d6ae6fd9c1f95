package tuttarco.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.corrections.CorrectedBeats;
import tuttarco.corrections.CorrectedReadings;
import tuttarco.corrections.Corrections;
import tuttarco.corrections.LogEntry;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;

/**
 * What was read of a take with corrections laid over it.
 *
 * @param bows measured anew only of players whose strokes were corrected
 * @param beats empty where the leader's strokes are all there is to go by
 * @param applied the corrections that found their place, in the order in which they were made
 * @param notes those that did not, a sentence each
 */
record Corrected(
        List<Reading> readings,
        List<Bows> bows,
        Optional<BeatMap> beats,
        List<LogEntry.Done> applied,
        List<String> notes) {
    static Corrected of(Uncorrected read, Corrections corrections) {
        CorrectedReadings readings = CorrectedReadings.of(read.section().readings(), corrections);
        CorrectedBeats beats = CorrectedBeats.of(read.told().map(BeatSource.Told::beats), corrections);
        List<LogEntry.Done> applied = corrections.inForce().stream()
                .filter(done ->
                        readings.applied().contains(done) || beats.applied().contains(done))
                .toList();
        List<String> notes = new ArrayList<>(readings.notes());
        notes.addAll(beats.notes());
        return new Corrected(
                readings.readings(), bows(read.section(), readings.readings()), beats.beats(), applied, notes);
    }

    private static List<Bows> bows(SectionReading section, List<Reading> readings) {
        List<Bows> bows = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading read = section.readings().get(i);
            bows.add(
                    readings.get(i) == read
                            ? section.bows().get(i)
                            : Bows.corrected(section.tracks().get(i), read, readings.get(i)));
        }
        return bows;
    }
}
