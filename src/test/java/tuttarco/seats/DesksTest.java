package tuttarco.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;

class DesksTest {
    /** A player 100 px from hips to rim; the seat's left edge tells who it is. */
    private static Desks.Spot spot(int xPx, int yPx) {
        return new Desks.Spot(new SeatBox(xPx, yPx, 10, 10), xPx, yPx, 100);
    }

    private static List<Integer> order(List<Player> players) {
        return players.stream().map(p -> p.seat().xPx()).toList();
    }

    /** Two rows; the near one is lower in the picture and not quite level. */
    private static final List<Desks.Spot> ROWS =
            List.of(spot(500, 200), spot(300, 420), spot(100, 400), spot(310, 210), spot(700, 390));

    @Test
    void rowsGoFromNearToFarAndPlayersTwoByTwoFromTheLeadersSide() {
        List<Player> players = Desks.of(ROWS, LeaderSide.LEFT, Instrument.VIOLA);
        assertEquals(List.of(100, 300, 700, 310, 500), order(players));
        assertEquals(
                List.of("Desk 1 outside", "Desk 1 inside", "Desk 2 outside", "Desk 2 inside", "Desk 3 outside"),
                players.stream().map(Player::label).toList());
        assertEquals(List.of(1, 1, 2, 2, 3), players.stream().map(Player::desk).toList());
    }

    @Test
    void fromTheRightTheRowsAreReversed() {
        assertEquals(List.of(700, 300, 100, 500, 310), order(Desks.of(ROWS, LeaderSide.RIGHT, Instrument.VIOLA)));
    }

    @Test
    void theFirstAloneLeadsAndFacingIsLeftToBeSeen() {
        List<Player> players = Desks.of(ROWS, LeaderSide.LEFT, Instrument.VIOLA);
        assertEquals(
                List.of(true, false, false, false, false),
                players.stream().map(Player::leader).toList());
        assertTrue(players.stream().allMatch(p -> p.facing().equals(Optional.empty())));
        assertTrue(players.stream().allMatch(p -> p.instrument() == Instrument.VIOLA));
    }

    @Test
    void nobodyNeedsNoDesk() {
        assertEquals(List.of(), Desks.of(List.of(), LeaderSide.LEFT, Instrument.VIOLIN));
    }
}
