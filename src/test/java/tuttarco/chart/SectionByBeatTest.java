package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.compare.BarAgreement;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.Bowing;

class SectionByBeatTest extends ChartContract {
    @Override
    Chart chart() {
        return marking(SectionFixture.unified());
    }

    @Override
    Chart chartNaming(String label) {
        return marking(SectionFixture.named(label));
    }

    private static Chart marking(SectionFixture fixture) {
        return new SectionByBeat(fixture.comparison, Against.MARKING, Bowing.UNIFIED);
    }

    @Test
    void titleSaysWhoTurnedWhere() {
        assertEquals("Desk 3 inside turned in bars 3–4", chart().title());
    }

    @Test
    void titleOfACleanTakeSaysSo() {
        assertEquals(
                "Wherever the bows could be read, they went with the marking",
                marking(SectionFixture.clean(4, 16)).title());
    }

    @Test
    void titleOfAnUnseenSectionClaimsNothing() {
        assertEquals(
                "No bow could be compared with the marking",
                marking(SectionFixture.nothingSeen()).title());
    }

    @Test
    void freeBowingIsNoFault() {
        Chart free = new SectionByBeat(SectionFixture.free().comparison, Against.MARKING, Bowing.FREE);
        assertEquals("Bowed freely: 1 stretch apart from the marking", free.title());
    }

    @Test
    void besideTheLeaderTheLeaderIsShown() {
        SectionFixture fixture = SectionFixture.withoutPart();
        Chart chart = new SectionByBeat(fixture.comparison, Against.LEADER, Bowing.UNIFIED);
        assertEquals("Desk 3 inside went against the leader in bars 3–4", chart.title());
        List<String> row = chart.table().rows().get(8);
        assertEquals(List.of("3", "1", "0:05.0", "down", "down, with"), row.subList(0, 5));
        assertEquals("up, against", row.get(8));
    }

    /** On the last beat of the rest the leader sets the bow anew; where nothing is marked that is as good a stroke as any. */
    @Test
    void whereThePartRestsTheLeaderShowsNothing() {
        assertEquals("", ledAtTheRest(SectionFixture.unified().comparison.bars()));
        assertEquals("up", ledAtTheRest(List.of()));
    }

    private static String ledAtTheRest(List<BarAgreement> bars) {
        Comparison told = SectionFixture.unified().comparison;
        List<List<BeatReading>> readings = new ArrayList<>(told.beatReadings());
        List<BeatReading> leader = new ArrayList<>(readings.get(0));
        BeatReading rest = leader.get(23);
        leader.set(
                23,
                new BeatReading(
                        rest.player(),
                        23,
                        rest.beat(),
                        rest.marked(),
                        StrokeKind.UP,
                        rest.confidence(),
                        rest.source(),
                        rest.verdict(),
                        rest.leaderVerdict()));
        readings.set(0, leader);
        Comparison setAnew =
                new Comparison(told.players(), told.beats(), readings, bars, told.divergences(), told.lags());
        Chart chart = new SectionByBeat(setAnew, Against.LEADER, Bowing.UNIFIED);
        return chart.table().rows().get(23).get(3);
    }

    @Test
    void tableSaysEveryState() {
        List<List<String>> rows = chart().table().rows();
        assertEquals(48, rows.size());
        assertEquals("down", rows.get(8).get(3));
        assertEquals("up, against", rows.get(8).get(9));
        assertEquals("unsure", rows.get(28).get(6));
        assertEquals("", rows.get(22).get(4));
        assertEquals("unseen", rows.get(32).get(11));
    }

    @Test
    void twelvePlayersOverSixteenBarsTakeTwoSystems() {
        BeatMap beats = SectionFixture.clean(12, 64).beats;
        assertEquals(16, BarRun.of(beats).size());
        Systems systems = Systems.of(beats, 12, 13);
        assertEquals(2, systems.systems().size());
        assertEquals(8, systems.systems().get(0).size());
    }

    @Test
    void sixtyPlayersOverFiftyBarsFitAPicture() throws Exception {
        Chart large = marking(SectionFixture.clean(60, 200));
        assertTrue(large.widthPx() <= 1500, large.widthPx() + " px wide");
        assertTrue(large.heightPx() <= 6000, large.heightPx() + " px high");
        String svg = ChartFiles.svg(large);
        parsed(svg);
        assertTrue(svg.length() < 200_000, svg.length() + " letters");
    }

    @Test
    void aBarLongerThanASystemKeepsTogether() {
        BeatMap beats = new BeatMap(IntStream.range(0, 44)
                .mapToObj(b -> new Beat(b < 40 ? "1" : "2", b % 40 + 1, b))
                .toList());
        assertEquals(2, Systems.of(beats, 4, 5).systems().size());
    }

    @Test
    void afterAStopALineBeginsWithItsTime() throws Exception {
        SectionFixture again = SectionFixture.takenAgain();
        List<List<String>> systems = Systems.of(again.beats, 8, 9).systems().stream()
                .map(bars -> bars.stream().map(BarRun::bar).toList())
                .toList();
        assertEquals(List.of(List.of("1", "2", "3", "4", "5", "6", "7", "8"), List.of("7", "8", "9", "10")), systems);
        Chart chart = marking(again);
        assertEquals("Desk 3 inside turned in bars 3–4 (0:05.0)", chart.title());
        assertEquals(List.of("7", "1", "0:17.0"), chart.table().rows().get(32).subList(0, 3));
    }

    /** Player 3 was set to go down on beat 5, and player 4 was not there on beats 6 and 7. */
    @Test
    void whatWasSetByHandSaysSo() {
        Comparison told = SectionFixture.unified().comparison;
        List<List<BeatReading>> readings = new ArrayList<>(told.beatReadings());
        readings.set(3, byHand(readings.get(3), List.of(5), StrokeKind.DOWN, Verdict.WITH));
        readings.set(4, byHand(readings.get(4), List.of(6, 7), StrokeKind.ABSENT, Verdict.REST));
        Chart chart = new SectionByBeat(
                new Comparison(told.players(), told.beats(), readings, told.bars(), told.divergences(), told.lags()),
                Against.MARKING,
                Bowing.UNIFIED);
        int names = 4;
        assertEquals("down, with, by hand", chart.table().rows().get(5).get(names + 3));
        assertEquals("absent, by hand", chart.table().rows().get(6).get(names + 4));
        assertEquals("absent, by hand", chart.table().rows().get(7).get(names + 4));
        Chart read = new SectionByBeat(told, Against.MARKING, Bowing.UNIFIED);
        assertEquals(read.heightPx() + SectionPlot.KEY_PX, chart.heightPx(), "a line more in the key");
        assertTrue(chart.help().contains("set by hand"), chart.help());
        assertFalse(read.help().contains("by hand"), read.help());
        assertTrue(ChartFiles.svg(chart).contains("not there, as set by hand"));
    }

    private static List<BeatReading> byHand(
            List<BeatReading> player, List<Integer> beats, StrokeKind played, Verdict verdict) {
        return player.stream()
                .map(r -> beats.contains(r.beatIndex())
                        ? new BeatReading(
                                r.player(),
                                r.beatIndex(),
                                r.beat(),
                                r.marked(),
                                played,
                                1,
                                Stroke.Source.BY_HAND,
                                verdict,
                                verdict)
                        : r)
                .toList();
    }
}
