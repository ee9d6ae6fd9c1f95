package tuttarco.corrections;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;

/**
 * Beats with corrections laid over them, whatever their source: a moved beat alone gets another time, between its neighbours.
 *
 * @param beats empty where there are none but the leader's strokes
 * @param applied the corrections that found their place
 * @param notes those that did not, a sentence each
 */
public record CorrectedBeats(Optional<BeatMap> beats, List<LogEntry.Done> applied, List<String> notes) {
    public CorrectedBeats {
        applied = List.copyOf(applied);
        notes = List.copyOf(notes);
    }

    /** Lays those of the corrections that are about beats over the beats of a source. */
    public static CorrectedBeats of(Optional<BeatMap> told, Corrections corrections) {
        Optional<BeatMap> beats = told;
        List<LogEntry.Done> applied = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (LogEntry.Done done : corrections.inForce()) {
            if (done.correction() instanceof Correction.BeatMoved move) {
                Optional<BeatMap> moved = beats.flatMap(map -> moved(map, move));
                if (moved.isPresent()) {
                    beats = moved;
                    applied.add(done);
                } else {
                    notes.add(CorrectedReadings.leftOut(
                            done, "there is no such beat, or others lie between its time and the new one"));
                }
            }
        }
        return new CorrectedBeats(beats, applied, notes);
    }

    private static Optional<BeatMap> moved(BeatMap map, Correction.BeatMoved move) {
        List<Beat> beats = new ArrayList<>(map.beats());
        Optional<Integer> meant = IntStream.range(0, beats.size())
                .filter(i ->
                        beats.get(i).bar().equals(move.bar()) && beats.get(i).beat() == move.beat())
                .boxed()
                .min(Comparator.comparingDouble(i -> Math.abs(beats.get(i).timeS() - move.fromS())));
        if (meant.isEmpty()) {
            return Optional.empty();
        }
        int index = meant.get();
        boolean after = index == 0 || beats.get(index - 1).timeS() < move.toS();
        boolean before =
                index + 1 == beats.size() || move.toS() < beats.get(index + 1).timeS();
        if (!after || !before) {
            return Optional.empty();
        }
        beats.set(index, new Beat(move.bar(), move.beat(), move.toS(), OptionalDouble.of(Beat.TAPPED_S), Beat.BY_HAND));
        return Optional.of(new BeatMap(beats, map.runs()));
    }
}
