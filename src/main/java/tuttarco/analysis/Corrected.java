package tuttarco.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.corrections.CorrectedBeats;
import tuttarco.corrections.CorrectedReadings;
import tuttarco.corrections.Correction;
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
        return new Corrected(readings.readings(), bows(read.section(), readings), beats.beats(), applied, notes);
    }

    private static List<Bows> bows(SectionReading section, CorrectedReadings corrected) {
        Set<Correction.Touched> touched = corrected.applied().stream()
                .map(done -> done.correction().touches())
                .collect(Collectors.toSet());
        List<Bows> bows = new ArrayList<>();
        for (int i = 0; i < section.readings().size(); i++) {
            Reading read = section.readings().get(i);
            bows.add(
                    touched.contains(new Correction.Touched.OnePlayer(
                                    read.player().label()))
                            ? Bows.corrected(
                                    section.tracks().get(i),
                                    read,
                                    corrected.readings().get(i))
                            : section.bows().get(i));
        }
        return bows;
    }
}
