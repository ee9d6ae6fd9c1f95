package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.strokes.StrokeKind;

class CorrectionWordsTest {
    private static List<LogEntry.Done> readingsAndBeats(int readings, int beats) {
        return Stream.concat(
                        IntStream.range(0, readings)
                                .mapToObj(i -> Logged.done(i, new Correction.Absent("Nora", i, i + 1))),
                        IntStream.range(0, beats)
                                .mapToObj(i -> Logged.done(100 + i, new Correction.BeatMoved("1", 1, i, i + 1))))
                .toList();
    }

    @Test
    void theSumIsASentence() {
        assertEquals(Optional.empty(), CorrectionWords.sum(List.of()));
        assertEquals(Optional.of("1 reading was corrected by hand."), CorrectionWords.sum(readingsAndBeats(1, 0)));
        assertEquals(Optional.of("3 readings were corrected by hand."), CorrectionWords.sum(readingsAndBeats(3, 0)));
        assertEquals(Optional.of("1 beat was corrected by hand."), CorrectionWords.sum(readingsAndBeats(0, 1)));
        assertEquals(
                Optional.of("1 reading and 2 beats were corrected by hand."),
                CorrectionWords.sum(readingsAndBeats(1, 2)));
    }

    @Test
    void theOldValueIsToldTheLongestFirst() {
        LogEntry.Done done = new LogEntry.Done(
                Logged.id(1),
                Logged.at(1),
                new Correction.StrokeSet("Nora", 1, 2, StrokeKind.UP),
                Map.of(StrokeKind.DOWN, 0.25, StrokeKind.UNSURE, 0.75));
        assertEquals(Optional.of("was unsure and down"), CorrectionWords.was(done));
        assertEquals("Nora, 1.00 to 2.00 s: up", CorrectionWords.of(done.correction()));
        LogEntry.Done moved = Logged.done(1, new Correction.ChangeMoved("Nora", 1, 1.25));
        assertEquals(Optional.empty(), CorrectionWords.was(moved));
        assertEquals("Nora: the change at 1.00 s moved to 1.25 s", CorrectionWords.of(moved.correction()));
    }

    @Test
    void theBeatItBeginsAtIsToldWhereThereIsOne() {
        Optional<BeatMap> beats = Optional.of(new BeatMap(List.of(new Beat("7", 1, 1), new Beat("7", 2, 2))));
        assertEquals(
                "Nora, bar 7 beat 2 (1.95 to 2.50 s): up",
                CorrectionWords.of(new Correction.StrokeSet("Nora", 1.95, 2.5, StrokeKind.UP), beats));
        assertEquals(
                "Nora, bar 7 beat 1 (1.20 to 2.00 s): absent",
                CorrectionWords.of(new Correction.Absent("Nora", 1.2, 2), beats));
        assertEquals(
                "Nora: the change at bar 7 beat 1 (1.00 s) moved to 1.25 s",
                CorrectionWords.of(new Correction.ChangeMoved("Nora", 1, 1.25), beats));
        assertEquals(
                "Nora: the change at 9.00 s moved to 9.25 s",
                CorrectionWords.of(new Correction.ChangeMoved("Nora", 9, 9.25), beats));
    }
}
