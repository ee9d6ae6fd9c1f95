package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.compare.BowSharing;
import tuttarco.compare.SharedBow;
import tuttarco.compare.SharedBow.Amount;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.EndsKnown;
import tuttarco.compare.SharedBow.TooFewLengths;
import tuttarco.compare.SharedBow.TooFewPlaces;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

class BowByPlayerTest extends ChartContract {
    private static final List<Player> PLAYERS = SectionFixture.clean(16, 8).players;
    private static final Amount HALF = new Amounts(18, 0.46, new Interval(0.42, 0.52), true);
    private static final Amount AS_MUCH = new Amounts(22, 0.97, new Interval(0.9, 1.04), false);

    private static Chart of(List<SharedBow> players) {
        return new BowByPlayer(new BowSharing(players));
    }

    private static SharedBow player(int index, Amount amount) {
        return new SharedBow(PLAYERS.get(index), amount, new TooFewPlaces(2));
    }

    @Override
    Chart chart() {
        return of(PLAYERS.stream()
                .map(p -> new SharedBow(
                        p,
                        p.equals(PLAYERS.get(15)) ? HALF : AS_MUCH,
                        new EndsKnown(8, List.of(), new Interval(0, 0.32), false)))
                .toList());
    }

    @Override
    Chart chartNaming(String label) {
        return of(List.of(new SharedBow(SectionFixture.named(label).players.get(0), HALF, new TooFewPlaces(0))));
    }

    @Test
    void titleSaysWhatIsShown() {
        assertEquals("Desk 8 inside takes about half the leader's bow or less", chart().title());
        assertEquals(
                "2 players take about half the leader's bow or less",
                of(List.of(player(1, HALF), player(2, HALF))).title());
        assertEquals(
                "Nobody is shown to take half the leader's bow or less",
                of(List.of(player(1, AS_MUCH), player(2, new TooFewLengths(3)))).title());
        assertEquals(
                "Too few strokes measured to say who takes less bow",
                of(List.of(player(2, new TooFewLengths(3)))).title());
    }

    @Test
    void tableTellsTheSame() {
        assertEquals(
                List.of("Desk 8 inside", "18", "46 %", "42 to 52 %", "half or less", "8", "0 % (0 to 32 %)"),
                chart().table().rows().get(15));
        assertEquals("not shown", chart().table().rows().get(0).get(4));
        assertEquals(
                List.of("Desk 2 outside", "3", "–", "–", "too few measured", "2", "too few placed"),
                of(List.of(player(2, new TooFewLengths(3)))).table().rows().get(0));
    }

    @Test
    void refusesNobody() {
        assertThrows(IllegalArgumentException.class, () -> of(List.of()));
    }
}
