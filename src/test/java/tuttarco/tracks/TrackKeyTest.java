package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

class TrackKeyTest {
    private static final SeatBox SEAT = new SeatBox(0, 0, 100, 100);
    private static final SeatBox OTHER_SEAT = new SeatBox(0, 0, 100, 101);
    private static final Player IDA = player("Ida", Instrument.VIOLIN, SEAT, Optional.of(Facing.CAMERA));
    private static final Player JON = player("Jon", Instrument.VIOLIN, OTHER_SEAT, Optional.empty());
    private static final List<Player> BOTH = List.of(IDA, JON);

    private static Player player(String label, Instrument instrument, SeatBox seat, Optional<Facing> facing) {
        return new Player(label, 1, Place.OUTSIDE, instrument, seat, facing, false);
    }

    private static String key(List<Player> players) {
        return TrackKey.of("video", "flow", players).orElseThrow();
    }

    @Test
    void namesDesksAndTheLeaderAreNothingToATrack() {
        Player lea = new Player("Lea", 2, Place.INSIDE, Instrument.VIOLIN, SEAT, Optional.of(Facing.CAMERA), true);
        assertEquals(key(BOTH), key(List.of(lea, JON)));
    }

    static Stream<List<Player>> others() {
        return Stream.of(
                List.of(JON, IDA),
                List.of(IDA),
                List.of(IDA, JON, JON),
                List.of(player("Ida", Instrument.VIOLA, SEAT, Optional.of(Facing.CAMERA)), JON),
                List.of(player("Ida", Instrument.VIOLIN, OTHER_SEAT, Optional.of(Facing.CAMERA)), JON),
                List.of(player("Ida", Instrument.VIOLIN, SEAT, Optional.of(Facing.LEFT)), JON),
                List.of(player("Ida", Instrument.VIOLIN, SEAT, Optional.empty()), JON));
    }

    @ParameterizedTest
    @MethodSource("others")
    void whatATrackDependsOnMakesAnotherKey(List<Player> players) {
        assertNotEquals(key(BOTH), key(players));
    }

    @Test
    void anotherClipOrTrackerMakesAnotherKey() {
        assertNotEquals(Optional.of(key(BOTH)), TrackKey.of("other video", "flow", BOTH));
        assertNotEquals(Optional.of(key(BOTH)), TrackKey.of("video", "body", BOTH));
    }
}
