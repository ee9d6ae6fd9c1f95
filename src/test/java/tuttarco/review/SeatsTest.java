package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

class SeatsTest {
    /** Players in two rows of two in the picture, added from the front left on. */
    private static final List<SeatBox> ROWS = List.of(
            new SeatBox(0, 200, 100, 80),
            new SeatBox(200, 205, 100, 80),
            new SeatBox(0, 50, 100, 80),
            new SeatBox(200, 45, 100, 80));

    static Seats four() {
        Seats seats = new Seats(List.of(), List.of());
        for (SeatBox seat : ROWS) {
            seats = seats.added(seat, Instrument.VIOLA);
        }
        return seats;
    }

    private static List<String> labels(Seats seats) {
        return seats.players().stream().map(Player::label).toList();
    }

    private static List<Integer> order(Seats seats) {
        return seats.players().stream().map(p -> ROWS.indexOf(p.seat())).toList();
    }

    private static List<Integer> leaders(Seats seats) {
        return IntStream.range(0, seats.players().size())
                .filter(i -> seats.players().get(i).leader())
                .boxed()
                .toList();
    }

    @Test
    void whoIsAddedSitsAtTheFirstFreePlaceAndTheFirstLeads() {
        assertEquals(List.of("Desk 1 outside", "Desk 1 inside", "Desk 2 outside", "Desk 2 inside"), labels(four()));
        assertEquals(List.of(0), leaders(four()));
        Seats gap = four().without(1).added(new SeatBox(9, 9, 20, 20), Instrument.VIOLA);
        assertEquals(List.of("Desk 1 outside", "Desk 1 inside", "Desk 2 outside", "Desk 2 inside"), labels(gap));
        assertEquals(9, gap.players().get(1).seat().xPx());
    }

    @Test
    void oneLeadsAtTheMost() {
        Seats led = four().led(2, true);
        assertEquals(List.of(2), leaders(led));
        assertEquals(List.of(), leaders(led.led(2, false)));
        assertEquals(List.of(2), leaders(led.led(1, false)));
    }

    @Test
    void whoSitsDownWhereSomebodySitsChangesPlacesWithThem() {
        Seats swapped = four().sitting(0, 2, Place.INSIDE);
        assertEquals(List.of(3, 1, 2, 0), order(swapped));
        assertEquals(labels(four()), labels(swapped));
        assertEquals(List.of(3), leaders(swapped));
    }

    @Test
    void playersAreNumberedInTheOrderGivenAndTheOthersFollow() {
        assertEquals(List.of(3, 2, 1, 0), order(four().numbered(List.of(3, 2, 1, 0))));
        Seats two = four().numbered(List.of(2, 0));
        assertEquals(List.of(2, 0, 1, 3), order(two));
        assertEquals(labels(four()), labels(two));
        assertEquals(List.of(0), leaders(two));
    }

    @Test
    void numberedByPlaceTheRowInFrontComesFirstFromTheLeadersSide() {
        Seats mixed = four().numbered(List.of(3, 1, 0, 2)).led(0, false);
        assertEquals(List.of(0, 1, 2, 3), order(mixed.numberedByPlace(LeaderSide.LEFT)));
        assertEquals(List.of(1, 0, 3, 2), order(mixed.numberedByPlace(LeaderSide.RIGHT)));
    }

    @Test
    void numberedByPlaceTheLeaderStaysFirstWhereverHeOrSheSits() {
        Seats led = four().led(3, true).numberedByPlace(LeaderSide.LEFT);
        assertEquals(List.of(3, 0, 1, 2), order(led));
        assertEquals(List.of(0), leaders(led));
    }

    @Test
    void givenNamesStayAndNamesByTheDeskFollowTheDesk() {
        Seats named = four().named(0, "Ida").numbered(List.of(1, 0, 2, 3));
        assertEquals(List.of("Desk 1 outside", "Ida", "Desk 2 outside", "Desk 2 inside"), labels(named));
    }

    @Test
    void nobodyIsCalledAsSomebodyElseIs() {
        Seats named = four().named(0, "Desk 3 outside").added(new SeatBox(9, 9, 20, 20), Instrument.VIOLA);
        assertEquals(
                List.of("Desk 3 outside", "Desk 1 inside", "Desk 2 outside", "Desk 2 inside", "Desk 3 outside (2)"),
                labels(named));
    }

    @Test
    void whoMayBeAPlayerIsOneWhenTaken() {
        SeatBox doubt = new SeatBox(300, 100, 50, 50);
        SeatBox other = new SeatBox(360, 100, 50, 50);
        Seats seats = new Seats(four().players(), List.of(doubt, other));
        Seats taken = seats.taken(0, Instrument.VIOLIN);
        assertEquals(List.of(other), taken.doubtful());
        assertEquals(doubt, taken.players().get(4).seat());
        assertEquals(Instrument.VIOLIN, taken.players().get(4).instrument());
        assertEquals(6, seats.allTaken(Instrument.VIOLIN).players().size());
        assertEquals(List.of(doubt), seats.withoutDoubt(1).doubtful());
    }

    @Test
    void whateverIsDoneTheyMakeATake() {
        Random random = new Random(6);
        Seats seats = four();
        for (int i = 0; i < 2000; i++) {
            int count = seats.players().size();
            int chosen = random.nextInt(count);
            SeatBox seat = new SeatBox(random.nextInt(300), random.nextInt(300), 50, 50);
            seats = switch (random.nextInt(count < 3 ? 5 : count > 12 ? 7 : 8)) {
                case 0, 1 -> seats.added(seat, Instrument.VIOLIN);
                case 2 -> seats.sitting(chosen, 1 + random.nextInt(4), Place.values()[random.nextInt(2)]);
                case 3 -> seats.led(chosen, random.nextBoolean());
                case 4 -> seats.numbered(List.of(chosen));
                case 5 -> seats.without(chosen);
                case 6 -> seats.numberedByPlace(LeaderSide.RIGHT).without(0);
                default -> seats.named(chosen, "Player " + i);
            };
            Draft draft = Draft.ofVideo(Path.of("v.mp4")).withPlayers(seats.players());
            assertEquals(Optional.of(seats.players()), draft.take().map(t -> t.players()));
        }
        assertTrue(seats.players().size() > 1);
    }
}
