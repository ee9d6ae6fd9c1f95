package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmSample.Reason;
import tuttarco.tracks.ArmTrack;

/** What is said of players who are not seen. */
class UnseenTest {
    private static final Player PLAYER = new Player(
            "Desk 2 inside", 2, Place.INSIDE, Instrument.VIOLA, new SeatBox(0, 0, 90, 90), Optional.empty(), false);

    @Test
    void aPlayerWhoIsAlwaysSeenIsNotMentioned() {
        assertEquals(List.of(), Unseen.notes(List.of(track(100, 0, 0))));
    }

    @Test
    void aGlimpseLostIsNotMentioned() {
        assertEquals(List.of(), Unseen.notes(List.of(track(100, 9, 0))));
    }

    @Test
    void oneReasonIsToldWithTheTime() {
        assertEquals(
                List.of("Desk 2 inside is not seen for 2.0 of 10.0 s: the bow hand is hidden."),
                Unseen.notes(List.of(track(100, 20, 0))));
    }

    @Test
    void severalReasonsComeLongestFirst() {
        assertEquals(
                List.of("Desk 2 inside is not seen for 7.0 of 10.0 s:"
                        + " the bow hand is outside the picture (4.0 s), the bow hand is hidden (3.0 s)."),
                Unseen.notes(List.of(track(100, 30, 40))));
    }

    /** Ten samples a second: first hidden ones, then such outside the picture, then seen ones. */
    private static ArmTrack track(int samples, int hidden, int outside) {
        List<ArmSample> all = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            double timeS = i / 10.0;
            all.add(
                    i < hidden
                            ? new ArmSample.Lost(timeS, Reason.HIDDEN)
                            : i < hidden + outside
                                    ? new ArmSample.Lost(timeS, Reason.OUT_OF_PICTURE)
                                    : new ArmSample.ByFlow(timeS, 1, 0.1, 1));
        }
        return new ArmTrack(PLAYER, 0, samples / 10.0, all);
    }
}
