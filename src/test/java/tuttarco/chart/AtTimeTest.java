package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;
import tuttarco.chart.Cell.State;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Fixtures;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** What is shown of players at a time, of the section made by hand that {@code SectionFixture} describes. */
class AtTimeTest {
    private final AnalysedTake take = Fixtures.unified();

    private static Cell cell(AnalysedTake take, String label, double timeS) {
        List<AtTime.Shown> all = take.atTime().at(timeS);
        assertEquals(8, all.size());
        return all.stream()
                .filter(s -> s.player().label().equals(label))
                .findFirst()
                .orElseThrow()
                .cell();
    }

    private Cell cell(String label, double timeS) {
        return cell(take, label, timeS);
    }

    /** Bar 3 begins at second 5; the section bows down there, one player is turned. */
    @Test
    void theSignIsTheBowsAndTheAgreementTheBeats() {
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.DOWN)), cell("Desk 1 outside", 5.25));
        assertEquals(new Cell(State.AGAINST, Optional.of(BowDirection.UP)), cell("Desk 3 inside", 5.25));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.UP)), cell("Desk 1 outside", 5.75));
        assertEquals(new Cell(State.AGAINST, Optional.of(BowDirection.DOWN)), cell("Desk 3 inside", 5.75));
    }

    @Test
    void doubtIsDoubtAndARestingBowShowsNothing() {
        assertEquals(new Cell(State.UNSURE, Optional.empty()), cell("Desk 2 outside", 15.25));
        assertEquals(new Cell(State.UNSEEN, Optional.empty()), cell("Desk 4 inside", 17.25));
        assertEquals(State.EMPTY, cell("Desk 1 outside", 0.5).state());
        assertEquals(State.EMPTY, cell("Desk 1 outside", take.endS() - 0.5).state());
        assertEquals(State.UNSEEN, cell("Desk 1 outside", take.endS() + 1).state());
    }

    /** A stroke within the beat that is judged as a whole, and one before the first beat. */
    @Test
    void theSignTurnsWithinABeat() {
        AnalysedTake quick = bowing(List.of(
                new Stroke(0, 1, StrokeKind.UP, 0.9),
                new Stroke(1, 1.3, StrokeKind.DOWN, 0.9),
                new Stroke(1.3, 1.5, StrokeKind.UP, 0.9)));
        assertEquals(new Cell(State.SHOWN, Optional.of(BowDirection.UP)), cell(quick, "Desk 1 outside", 0.5));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.DOWN)), cell(quick, "Desk 1 outside", 1.1));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.UP)), cell(quick, "Desk 1 outside", 1.4));
    }

    /** Within a tenth of a second a change passes as together; later it is seen late. */
    @Test
    void aChangeALittleAfterTheBeatIsShownWithIt() {
        AnalysedTake late = bowing(List.of(
                new Stroke(0, 1.09, StrokeKind.UP, 0.9),
                new Stroke(1.09, 1.62, StrokeKind.DOWN, 0.9),
                new Stroke(1.62, 2, StrokeKind.UP, 0.9)));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.DOWN)), cell(late, "Desk 1 outside", 1));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.DOWN)), cell(late, "Desk 1 outside", 1.55));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.UP)), cell(late, "Desk 1 outside", 1.65));
    }

    @Test
    void whatWasSetByHandSaysSo() {
        AnalysedTake set = bowing(List.of(
                Stroke.byHand(0, 1, StrokeKind.ABSENT),
                Stroke.byHand(1, 1.3, StrokeKind.UP),
                Stroke.byHand(1.3, 1.5, StrokeKind.STILL),
                new Stroke(1.5, 2, StrokeKind.TREMOLO, 0.9)));
        assertEquals(new Cell(State.ABSENT, Optional.empty(), Stroke.Source.BY_HAND), cell(set, "Desk 1 outside", 0.5));
        assertEquals(
                new Cell(State.WITH, Optional.of(BowDirection.UP), Stroke.Source.BY_HAND),
                cell(set, "Desk 1 outside", 1.1));
        assertEquals(new Cell(State.EMPTY, Optional.empty(), Stroke.Source.BY_HAND), cell(set, "Desk 1 outside", 1.4));
        assertEquals(new Cell(State.UNSURE, Optional.empty()), cell(set, "Desk 1 outside", 1.6));
    }

    /** Where nothing is marked the others are compared with the leader, of whom the bow alone is shown. */
    @Test
    void withoutAMarkingTheLeaderIsNotJudged() {
        AnalysedTake led = Fixtures.withoutPart();
        assertEquals(new Cell(State.SHOWN, Optional.of(BowDirection.DOWN)), cell(led, "Desk 1 outside", 5.25));
        assertEquals(new Cell(State.WITH, Optional.of(BowDirection.DOWN)), cell(led, "Desk 1 inside", 5.25));
        assertEquals(new Cell(State.AGAINST, Optional.of(BowDirection.UP)), cell(led, "Desk 3 inside", 5.25));
    }

    /** The same take in which the first player bows otherwise; what the beats were judged as stays. */
    private AnalysedTake bowing(List<Stroke> strokes) {
        List<Reading> readings = new ArrayList<>(take.readings());
        readings.set(0, new Reading(readings.get(0).player(), strokes));
        return new AnalysedTake(
                take.take(),
                take.clip(),
                take.endS(),
                take.tracks(),
                readings,
                take.bows(),
                take.part(),
                take.comparison(),
                take.unity(),
                take.evenness(),
                take.together(),
                take.corrected(),
                take.sha256(),
                take.settings(),
                take.programVersion(),
                take.notes());
    }
}
