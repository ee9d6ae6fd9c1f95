package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
}
