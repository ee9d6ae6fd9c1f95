package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tuttarco.compare.Divergence.Against;

class PlayedBarsTest extends ChartContract {
    /** Bars 1 to 4 of player 6, who is turned in bars 3 and 4. */
    @Override
    Chart chart() {
        return of(SectionFixture.unified(), 5, 0, 15);
    }

    @Override
    Chart chartNaming(String label) {
        return of(SectionFixture.named(label), 5, 0, 15);
    }

    private static PlayedBars of(SectionFixture section, int player, int first, int last) {
        return PlayedBars.beside(
                "bars-1", section.comparison, Against.MARKING, section.players.get(player), first, last);
    }

    @Test
    void barsAreShownWholeHoweverFewOfTheirBeatsAreMeant() {
        PlayedBars bars = of(SectionFixture.unified(), 5, 9, 10);
        assertEquals("Bar 3", bars.where());
        assertEquals(4, bars.table().rows().size());
        assertTrue(bars.whole());
    }

    @Test
    void ofALongStretchTheFirstBarsAreShown() {
        PlayedBars bars = of(SectionFixture.unified(), 5, 8, 40);
        assertEquals("Bars 3–6", bars.where());
        assertFalse(bars.whole());
        assertEquals(3 * 16, bars.cells().size());
    }

    @Test
    void whoCannotSeeItHearsIt() {
        assertEquals(
                "Bar 3: marked down; up; down; up. you up, against; down, against; up, against; down, against. "
                        + "leader down, with; up, with; down, with; up, with.",
                of(SectionFixture.unified(), 5, 8, 11).spoken());
    }

    @Test
    void theLeaderStandsBesideNobodyButTheMarking() {
        assertEquals(
                "Bar 1: marked down; up; down; up. you down, with; up, with; down, with; up, with.",
                of(SectionFixture.unified(), 0, 0, 3).spoken());
    }

    @Test
    void withoutAPartTheLeaderStandsAbove() {
        SectionFixture section = SectionFixture.withoutPart();
        assertEquals(
                "Bar 3: leader down; up; down; up. you up, against; down, against; up, against; down, against.",
                PlayedBars.beside("bars-1", section.comparison, Against.LEADER, section.players.get(5), 8, 11)
                        .spoken());
    }

    @Test
    void whereEverybodyIsFreeNothingIsWithOrAgainst() {
        SectionFixture section = SectionFixture.free();
        assertEquals(
                "Bar 1: marked down; up; down; up. you up; down; up; down.",
                PlayedBars.free("bars-1", section.comparison, true, section.players.get(1), 0, 3)
                        .spoken());
    }
}
