package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.report.Fixtures;

/** Twelve bars of four beats of half a second from second 1, eight players: see {@code SectionFixture}. */
class SectionTableTest {
    private final SectionTable table = new SectionTable(Fixtures.unified());

    @Test
    void theMarkedRowComesFirstAndThenThePlayers() {
        assertEquals(9, table.rows().size());
        assertEquals("Marked", table.rows().get(0).name());
        assertEquals(Optional.of(1), table.rowOf("Desk 1 outside"));
        assertEquals(Optional.of(6), table.rowOf("Desk 3 inside"));
        assertEquals(Optional.empty(), table.rowOf("Nobody"));
        assertEquals(48, table.beatCount());
        assertEquals(12, table.bars().size());
        assertEquals(8, new SectionTable(Fixtures.withoutPart()).rows().size());
    }

    @Test
    void cellsAreSpokenAsWellAsShown() {
        assertEquals("Desk 3 inside, bar 3 beat 1: up, against", table.spoken(6, 8));
        assertEquals("Desk 1 outside, bar 3 beat 1: down, with", table.spoken(1, 8));
        assertEquals("Marked, bar 3 beat 2: up", table.spoken(0, 9));
        assertEquals("Desk 4 inside, bar 9 beat 1: unseen", table.spoken(8, 32));
        assertEquals("Marked, bar 6 beat 3: rests", table.spoken(0, 22));
        assertEquals("bar 3 beat 1 to bar 4 beat 4", table.spoken(new ChosenBeats(15, 8)));
        assertEquals("bar 3 beat 1", table.spoken(ChosenBeats.one(8)));
    }

    @Test
    void keysGoFromBeatToBeatAndStayInside() {
        assertEquals(9, table.moved(8, 1));
        assertEquals(0, table.moved(8, -9));
        assertEquals(47, table.moved(8, 1000));
        assertEquals(47, table.moved(8, Integer.MAX_VALUE));
    }

    @Test
    void keysGoFromBarToBar() {
        assertEquals(12, table.movedBars(8, 1));
        assertEquals(12, table.movedBars(11, 1));
        assertEquals(8, table.movedBars(11, -1));
        assertEquals(4, table.movedBars(8, -1));
        assertEquals(0, table.movedBars(0, -1));
        assertEquals(44, table.movedBars(46, 1));
    }

    @Test
    void keysGoFromPlayerToPlayer() {
        assertEquals(
                "Desk 1 inside",
                table.movedRows(Optional.of("Desk 1 outside"), 1).label());
        assertEquals(
                "Desk 1 outside",
                table.movedRows(Optional.of("Desk 1 outside"), -1).label());
        assertEquals(
                "Desk 4 inside",
                table.movedRows(Optional.of("Desk 4 inside"), 1).label());
        assertEquals("Desk 1 outside", table.movedRows(Optional.empty(), 1).label());
    }

    @Test
    void chosenBeatsSoundFromTheFirstToTheEndOfTheLast() {
        assertEquals(new Stretch(5, 5.5), table.stretch(ChosenBeats.one(8)));
        assertEquals(new Stretch(5, 9), table.stretch(new ChosenBeats(15, 8)));
        assertEquals(new Stretch(5, 7), table.barsOf(ChosenBeats.one(9)));
        assertEquals(new Stretch(5, 9), table.barsOf(new ChosenBeats(11, 12)));
        assertEquals(new Stretch(23, 25), table.barsOf(ChosenBeats.one(47)));
    }

    @Test
    void theBeatAtATimeIsTheLastThatBegan() {
        assertEquals(0, table.beatNear(0));
        assertEquals(8, table.beatNear(5));
        assertEquals(8, table.beatNear(5.499));
        assertEquals(47, table.beatNear(99));
    }

    @Test
    void whatIsChosenStaysWhileTheClipIsInIt() {
        ChosenBeats spot = new ChosenBeats(15, 8);
        assertEquals(spot, spot.following(12));
        assertEquals(ChosenBeats.one(16), spot.following(16));
        assertEquals(new ChosenBeats(15, 20), spot.upTo(20));
    }
}
