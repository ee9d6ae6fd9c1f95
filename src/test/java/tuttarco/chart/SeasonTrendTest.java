package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.season.Season;
import tuttarco.season.SeasonFixture;
import tuttarco.season.TakeOnRecord;

class SeasonTrendTest extends ChartContract {
    private static final Season IMPROVING = Season.of(SeasonFixture.improving());

    private static SeasonTrend of(SeasonTrend.Kind kind, Season season) {
        return SeasonTrend.of(season).stream()
                .filter(c -> c.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Override
    Chart chart() {
        return of(SeasonTrend.Kind.SHARE, IMPROVING);
    }

    @Override
    Chart chartNaming(String label) {
        List<TakeOnRecord> takes = IntStream.range(0, 2)
                .mapToObj(t -> SeasonFixture.take(
                        t,
                        Optional.empty(),
                        SeasonFixture.bars(1, 4),
                        List.of(SeasonFixture.player(label, 16, i -> i == t, 5))))
                .toList();
        return of(SeasonTrend.Kind.SHARE, Season.of(takes));
    }

    @Test
    void titleAndLinesSayWhatIsShown() {
        assertEquals("With the marking: the section and Desk 3 inside better", chart().title());
        Chart lag = of(SeasonTrend.Kind.LAG, IMPROVING);
        assertEquals("Changing bow: Desk 4 inside earlier", lag.title());
        assertEquals(
                "With the marking: too few takes to tell a trend",
                chartNaming("Ann").title());
        assertEquals(
                List.of("Player", "take 1", "take 2", "Trend"),
                chartNaming("Ann").table().headings());
        List<String> row = chart().table().rows().get(6);
        assertEquals("Desk 3 inside", row.get(0));
        assertEquals("–", row.get(3), "missing in the third take, not zero");
        assertEquals("better", row.get(8));
    }

    @Test
    void passagesHaveARowEach() {
        Season season = Season.of(SeasonFixture.twoPassages());
        Chart passages = of(SeasonTrend.Kind.PASSAGE, season);
        assertEquals("By passage: bars 7–12 better", passages.title());
        assertEquals(
                List.of("bars 1–6", "bars 7–12"),
                passages.table().rows().stream().map(r -> r.get(0)).toList());
        assertEquals("–", passages.table().rows().get(0).get(7), "not played in the last take");
    }

    @Test
    void aSeasonWithoutFiguresHasNoChart() {
        assertEquals(List.of(), SeasonTrend.of(Season.of(List.of())));
        assertEquals(2, SeasonTrend.of(IMPROVING).size(), "the only passage is what the section is told by");
    }
}
