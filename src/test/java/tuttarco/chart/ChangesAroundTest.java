package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;
import tuttarco.compare.ChangeScatter;
import tuttarco.compare.ChangeScatter.Change;
import tuttarco.compare.ChangeScatter.InBar;
import tuttarco.compare.Scope;
import tuttarco.seats.Player;

class ChangesAroundTest extends ChartContract {
    private static final List<Player> PLAYERS = SectionFixture.clean(16, 8).players;

    /** Each player 10 ms later than the one before; the third is not seen. */
    private static Change change(List<Player> players, BowDirection to, double timeS) {
        Map<Player, Double> lagsMs = new HashMap<>();
        for (int i = 0; i < players.size(); i++) {
            if (i != 2) {
                lagsMs.put(players.get(i), 10.0 * i);
            }
        }
        return new Change(to, timeS, lagsMs);
    }

    private static ChangesAround of(boolean led, List<Player> players) {
        return new ChangesAround(new ChangeScatter(
                led,
                100,
                players,
                List.of(
                        new InBar(
                                new Scope.InBar("3", 8, 11, 5),
                                81.4,
                                List.of(change(players, BowDirection.UP, 5.5), change(players, BowDirection.DOWN, 6))),
                        new InBar(
                                new Scope.InBar("17", 64, 67, 33),
                                40,
                                List.of(change(players, BowDirection.UP, 33.5))))));
    }

    @Override
    Chart chart() {
        return of(true, PLAYERS);
    }

    @Override
    Chart chartNaming(String label) {
        return of(true, SectionFixture.named(label).players);
    }

    @Test
    void titleSaysWhereAndHowFar() {
        assertEquals("Changes lie widest apart in bar 3 (81 ms), bar 17 (40 ms)", chart().title());
        assertTrue(chart().help().contains("right of the leader's change"));
        assertTrue(of(false, PLAYERS).help().contains("right of the median change"));
    }

    @Test
    void tableTellsTheSame() {
        assertEquals(
                List.of("Player", "Bar 3, up, 0:05.5", "Bar 3, down, 0:06.0", "Bar 17, up, 0:33.5"),
                chart().table().headings());
        assertEquals(
                List.of("Desk 2 outside", "–", "–", "–"), chart().table().rows().get(2));
        assertEquals(
                List.of("Desk 8 inside", "+150", "+150", "+150"),
                chart().table().rows().get(15));
    }

    /** Beside a margin of 16 px on either side. */
    @Test
    void fitsOnAPageOfNineHundredPixels() {
        assertTrue(chart().widthPx() <= 900 - 2 * 16);
    }

    @Test
    void refusesNoBars() {
        ChangeScatter nowhere = new ChangeScatter(true, 100, PLAYERS, List.of());
        assertThrows(IllegalArgumentException.class, () -> new ChangesAround(nowhere));
    }
}
