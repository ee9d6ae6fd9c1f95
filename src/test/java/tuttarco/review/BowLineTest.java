package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.chart.SectionFixture;
import tuttarco.report.Fixtures;

/** Strokes of half a second from second 1, one a beat: see {@code SectionFixture}. */
class BowLineTest {
    private final BowLine line =
            BowLine.of(Fixtures.unified(), "Desk 1 outside").orElseThrow();

    @Test
    void whatIsNotReadHasNoLine() {
        assertEquals(Optional.empty(), BowLine.of(Fixtures.unified(), "Nobody"));
    }

    @Test
    void aChangeMovesBetweenItsNeighboursOnly() {
        Mark change = line.nearest(Mark.Kind.CHANGE, 1.6).orElseThrow();
        assertEquals(1.5, change.timeS());
        assertEquals(1 + Mark.LEAST_S, change.within(-3), 1e-9);
        assertEquals(2 - Mark.LEAST_S, change.within(99), 1e-9);
        assertEquals(1.51, MarkMove.none(change).to(1.51).toS());
        assertEquals(
                "Change at 0:01.5, 10 ms later", MarkMove.none(change).to(1.51).spoken());
        assertEquals("Change at 0:01.5", MarkMove.none(change).spoken());
    }

    @Test
    void beatsMoveToo() {
        List<Mark> beats = line.marks(Mark.Kind.BEAT);
        assertEquals(48, beats.size());
        assertEquals(1, beats.get(0).timeS());
        assertEquals(Mark.LEAST_S, beats.get(0).earliestS(), 1e-9);
        assertEquals(1.5 - Mark.LEAST_S, beats.get(0).latestS(), 1e-9);
        assertEquals(
                "Beat at 0:01.0, 100 ms earlier",
                MarkMove.none(beats.get(0)).to(0.9).spoken());
    }

    @Test
    void keysGoFromOneToTheNext() {
        assertEquals(1.5, line.next(Mark.Kind.CHANGE, 1, false).orElseThrow().timeS());
        assertEquals(2, line.next(Mark.Kind.CHANGE, 1.5, false).orElseThrow().timeS());
        assertEquals(1, line.next(Mark.Kind.CHANGE, 1.5, true).orElseThrow().timeS());
        assertEquals(Optional.empty(), line.next(Mark.Kind.CHANGE, 1, true));
    }

    /** A stroke takes {@link SectionFixture#TRAVEL}; the curve begins at 0 and down-bows and up-bows alternate. */
    @Test
    void theCurveGoesAsFarAsAStrokeTakes() {
        assertEquals(SectionFixture.TRAVEL, line.mostTravel(), 0.1 * SectionFixture.TRAVEL);
    }
}
