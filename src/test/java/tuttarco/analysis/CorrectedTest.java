package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Verdict;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.report.AnalysedTake;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** What a correction touches, and what it leaves as it was. */
class CorrectedTest {
    private final Uncorrected read = ReadByHand.take(Path.of("."), List.of("Ida", "Jon", "Kim", "Lea"), 20, 1);

    private AnalysedTake judged(Correction... corrections) throws Exception {
        List<LogEntry> entries = new ArrayList<>();
        for (Correction correction : corrections) {
            entries.add(new LogEntry.Done(new UUID(1, entries.size()), Instant.EPOCH, correction, Map.of()));
        }
        return Analysis.standard("test").judged(read, new CorrectionLog(entries, List.of(), Optional.of("ab")));
    }

    private static List<BeatReading> beats(AnalysedTake take, String label) {
        return take.comparison().beatReadings().stream()
                .filter(beats -> beats.get(0).player().label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void onlyWhoIsCorrectedIsMeasuredAnew() throws Exception {
        AnalysedTake take = judged(new Correction.StrokeSet("Jon", 5, 6, StrokeKind.STILL));
        for (int i = 0; i < 4; i++) {
            assertSame(read.section().tracks().get(i), take.tracks().get(i));
            if (i == 1) {
                assertNotSame(read.section().bows().get(i), take.bows().get(i));
            } else {
                assertSame(read.section().readings().get(i), take.readings().get(i));
                assertSame(read.section().bows().get(i), take.bows().get(i));
            }
        }
        assertEquals("ab", take.sha256().get("corrections"));
        BeatReading set = beats(take, "Jon").get(5);
        assertEquals(Stroke.Source.BY_HAND, set.source());
        assertEquals(StrokeKind.STILL, set.played());
        assertEquals(Verdict.UNSURE, set.leaderVerdict());
        assertEquals(
                1,
                take.comparison().beatReadings().stream()
                        .flatMap(List::stream)
                        .filter(b -> b.source() == Stroke.Source.BY_HAND)
                        .count());
        assertTrue(
                take.notes().contains("1 reading was corrected by hand."),
                take.notes().toString());
    }

    @Test
    void whatWasNotThereCountsForNothing() throws Exception {
        AnalysedTake take = judged(new Correction.Absent("Jon", 4, 8));
        for (int beat = 0; beat < 20; beat++) {
            boolean absent = beat >= 4 && beat < 8;
            BeatReading reading = beats(take, "Jon").get(beat);
            assertEquals(
                    absent ? StrokeKind.ABSENT : beats(take, "Kim").get(beat).played(), reading.played());
            assertEquals(absent ? Verdict.REST : Verdict.WITH, reading.leaderVerdict());
        }
    }

    /** Times at which a change was read keep their error; of those that a person set it is not known. */
    @Test
    void aMovedChangeIsByHandAndTheOthersAreAsTheyWere() throws Exception {
        AnalysedTake take = judged(new Correction.ChangeMoved("Jon", 5, 5.25));
        List<Bow> before = read.section().bows().get(1).bows();
        List<Bow> after = take.bows().get(1).bows();
        assertEquals(before.size(), after.size());
        for (int i = 0; i < before.size(); i++) {
            if (i == 5) {
                assertInstanceOf(Edge.ByHand.class, after.get(i).start());
                assertEquals(5.25, after.get(i).stroke().startS());
            } else {
                assertEquals(before.get(i).start(), after.get(i).start());
            }
        }
        assertEquals(after.get(4).end(), after.get(5).start());
        assertEquals(Stroke.Source.READ, after.get(5).stroke().source(), "which way it goes was read");
    }

    @Test
    void aMovedBeatLeavesEveryReading() throws Exception {
        AnalysedTake take = judged(new Correction.BeatMoved("2", 2, 5, 5.5));
        for (int i = 0; i < 4; i++) {
            assertSame(read.section().readings().get(i), take.readings().get(i));
            assertSame(read.section().bows().get(i), take.bows().get(i));
        }
        assertEquals(5.5, take.comparison().beats().beats().get(5).timeS());
        assertEquals("by hand", take.comparison().beats().beats().get(5).source());
        assertTrue(
                take.notes().contains("1 beat was corrected by hand."),
                take.notes().toString());
    }

    @Test
    void appliedCorrectionsComeInTheOrderInWhichTheyWereMade() throws Exception {
        Correction beat = new Correction.BeatMoved("2", 2, 5, 5.5);
        Correction stroke = new Correction.StrokeSet("Jon", 5, 6, StrokeKind.STILL);
        Correction stray = new Correction.Absent("Gone", 1, 2);
        AnalysedTake take = judged(stroke, stray, beat);
        assertEquals(
                List.of(stroke, beat),
                take.corrected().stream().map(LogEntry.Done::correction).toList());
        assertEquals(
                1, take.notes().stream().filter(n -> n.contains("left out")).count());
    }
}
