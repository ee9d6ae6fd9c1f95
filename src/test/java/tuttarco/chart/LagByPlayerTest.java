package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.PlayerTiming.Measured;
import tuttarco.compare.Timing;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

class LagByPlayerTest extends ChartContract {
    private static final List<Player> PLAYERS = SectionFixture.clean(16, 8).players;

    private static PlayerTiming player(Player player, double medianMs, Claim claim) {
        Measured lag = new Measured(medianMs, 30, new Interval(medianMs - 12, medianMs + 12), 25, 0.01);
        return new PlayerTiming(player, 31, Optional.of(lag), claim);
    }

    private static Chart of(List<PlayerTiming> players) {
        return new LagByPlayer(new Timing(true, List.of(), players));
    }

    private static Chart with(Claim last) {
        return of(PLAYERS.stream()
                .map(p -> p.equals(PLAYERS.get(15)) ? player(p, 150, last) : player(p, 3, Claim.NONE))
                .toList());
    }

    @Override
    Chart chart() {
        return with(Claim.LATE);
    }

    @Override
    Chart chartNaming(String label) {
        return of(List.of(player(SectionFixture.named(label).players.get(0), -60, Claim.EARLY)));
    }

    @Test
    void titleSaysWhatIsShown() {
        assertEquals("Desk 8 inside changes late: +150 ms", chart().title());
        assertEquals("Nobody is shown to change late or early", with(Claim.NONE).title());
        assertEquals(
                "1 player late, 2 players early in changing bow",
                of(List.of(
                                player(PLAYERS.get(1), 60, Claim.LATE),
                                player(PLAYERS.get(2), -60, Claim.EARLY),
                                player(PLAYERS.get(3), -60, Claim.EARLY)))
                        .title());
        Chart few = of(List.of(new PlayerTiming(PLAYERS.get(1), 2, Optional.empty(), Claim.TOO_FEW)));
        assertEquals("Too few changes to say who is late", few.title());
        assertEquals(
                List.of("Desk 1 inside", "2", "–", "–", "–", "–", "too few changes"),
                few.table().rows().get(0));
    }

    @Test
    void tableTellsTheSame() {
        assertEquals(
                List.of("Desk 8 inside", "31", "+150 ms", "+138 to +162 ms", "30 ms", "25 ms", "late"),
                chart().table().rows().get(15));
        assertEquals("not shown", chart().table().rows().get(0).get(6));
    }

    @Test
    void refusesNobody() {
        assertThrows(IllegalArgumentException.class, () -> of(List.of()));
    }
}
