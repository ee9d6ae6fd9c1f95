package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class JudgementTest {
    private static Verdict verdict(List<Stroke> reference, List<Stroke> played, double startS, double endS) {
        Reference to = Reference.of(reference, CompareSettings.DEFAULT);
        return Judgement.of(to, played, startS, endS, CompareSettings.DEFAULT).verdict();
    }

    private static List<Stroke> downThenUp(double startS, double changeS, double endS) {
        return List.of(new Stroke(startS, changeS, StrokeKind.DOWN, 1), new Stroke(changeS, endS, StrokeKind.UP, 1));
    }

    /** A beat of 0.16 s right after the change: 95 ms of it are still the old stroke. */
    @Test
    void aChangeWithinTheToleranceIsTogether() {
        assertEquals(Verdict.WITH, verdict(downThenUp(0, 1, 2), downThenUp(0, 1.095, 2), 1, 1.16));
        assertEquals(Verdict.WITH, verdict(downThenUp(0, 1, 2), downThenUp(0, 0.905, 2), 0.84, 1));
        assertEquals(Verdict.AGAINST, verdict(downThenUp(0, 1, 2), downThenUp(0, 1.2, 2), 1, 1.2));
    }

    /** The shorter stroke takes 0.2 s, so the tolerance is a quarter of that, 50 ms, on both sides of the change. */
    @Test
    void theToleranceIsAQuarterOfTheShorterStroke() {
        List<Stroke> cores =
                Reference.of(downThenUp(0, 1, 1.2), CompareSettings.DEFAULT).cores();
        assertEquals(2, cores.size());
        assertEquals(0.1, cores.get(0).startS(), 1e-12);
        assertEquals(0.95, cores.get(0).endS(), 1e-12);
        assertEquals(1.05, cores.get(1).startS(), 1e-12);
        assertEquals(1.15, cores.get(1).endS(), 1e-12);
    }

    @Test
    void aMomentOfOppositionIsNotEnough() {
        List<Stroke> marked = List.of(new Stroke(0.4, 0.5, StrokeKind.DOWN, 1));
        List<Stroke> opposed = List.of(new Stroke(0, 1, StrokeKind.UP, 1));
        assertEquals(Verdict.UNSURE, verdict(marked, opposed, 0, 0.5));
        List<Stroke> longer = List.of(new Stroke(0.3, 0.5, StrokeKind.DOWN, 1));
        assertEquals(Verdict.AGAINST, verdict(longer, opposed, 0, 0.5));
    }

    /** Judged are 0.8 s; of them 0.45 or 0.35 s are read. */
    @Test
    void halfOfTheTimeMustBeRead() {
        List<Stroke> marked = List.of(new Stroke(0, 1, StrokeKind.DOWN, 1));
        assertEquals(Verdict.WITH, verdict(marked, readFrom(0.45), 0, 1));
        assertEquals(Verdict.UNSEEN, verdict(marked, readFrom(0.55), 0, 1));
    }

    private static List<Stroke> readFrom(double timeS) {
        return List.of(new Stroke(0, timeS, StrokeKind.UNSEEN, 1), new Stroke(timeS, 1, StrokeKind.DOWN, 1));
    }

    /** Of one second 0.8 are judged, from 0.1 on: absent from the beginning to a time, then with or unseen. */
    @Test
    void whoeverWasNotThereIsNeitherAgainstNorInDoubt() {
        List<Stroke> marked = List.of(new Stroke(0, 1, StrokeKind.DOWN, 1));
        assertEquals(Verdict.REST, verdict(marked, absentUntil(1, StrokeKind.DOWN), 0, 1));
        assertEquals(Verdict.REST, verdict(marked, absentUntil(0.55, StrokeKind.DOWN), 0, 1));
        assertEquals(Verdict.WITH, verdict(marked, absentUntil(0.45, StrokeKind.DOWN), 0, 1));
        assertEquals(Verdict.AGAINST, verdict(marked, absentUntil(0.45, StrokeKind.UP), 0, 1));
        assertEquals(Verdict.UNSEEN, verdict(marked, absentUntil(0.45, StrokeKind.UNSEEN), 0, 1));
        assertEquals(Verdict.UNSURE, verdict(marked, absentUntil(0.45, StrokeKind.UNSURE), 0, 1));
        assertEquals(Verdict.REST, verdict(absentUntil(1, StrokeKind.DOWN), marked, 0, 1), "a leader who is not there");
    }

    private static List<Stroke> absentUntil(double timeS, StrokeKind then) {
        Stroke absent = Stroke.byHand(0, timeS, StrokeKind.ABSENT);
        return timeS == 1 ? List.of(absent) : List.of(absent, new Stroke(timeS, 1, then, 1));
    }

    @Test
    void whatWasPlayedIsByHandWhereMostOfItWasSet() {
        Stroke read = new Stroke(0, 1, StrokeKind.UP, 0.5);
        Stroke still = new Stroke(1, 1.5, StrokeKind.STILL, 1);
        Stroke set = Stroke.byHand(1.5, 3, StrokeKind.UP);
        List<Stroke> strokes = List.of(read, still, set);
        assertEquals(new Played(StrokeKind.UP, 1.25 / 1.75, Stroke.Source.READ), Played.most(strokes, 0, 2.25));
        assertEquals(new Played(StrokeKind.UP, 2 / 2.5, Stroke.Source.BY_HAND), Played.most(strokes, 0, 3));
    }
}
