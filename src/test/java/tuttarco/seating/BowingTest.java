package tuttarco.seating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** Made-up arms and readings of twelve seconds, whose strokes are known. */
class BowingTest {
    private static final double LENGTH_S = 12;
    private static final double FRAME_S = 1 / 30.0;

    private static ArmTrack track(int xPx, int sidePx, DoubleUnaryOperator velocity) {
        List<ArmSample> samples = new ArrayList<>();
        for (double timeS = 0; timeS < LENGTH_S; timeS += FRAME_S) {
            samples.add(new ArmSample.ByFlow(timeS, velocity.applyAsDouble(timeS), 0.03, 1));
        }
        SeatBox seat = new SeatBox(xPx, 0, sidePx, sidePx);
        Player player = new Player("x", 1, Place.OUTSIDE, Instrument.VIOLIN, seat, Optional.empty(), false);
        return new ArmTrack(player, 0, LENGTH_S, samples);
    }

    /** Strokes in turn of one length and speed until a time; then the arm rests. */
    private static Bowing bowing(double strokeS, double speed, double untilS, double confidence) {
        ArmTrack track = track(0, 100, t -> t >= untilS ? 0 : Math.floor(t / strokeS) % 2 == 0 ? speed : -speed);
        List<Stroke> strokes = new ArrayList<>();
        int turns = (int) Math.round(untilS / strokeS);
        for (int i = 0; i < turns; i++) {
            StrokeKind kind = i % 2 == 0 ? StrokeKind.DOWN : StrokeKind.UP;
            strokes.add(new Stroke(i * strokeS, (i + 1) * strokeS, kind, confidence));
        }
        if (turns * strokeS < LENGTH_S - 1e-6) {
            strokes.add(new Stroke(turns * strokeS, LENGTH_S, StrokeKind.STILL, 0.95));
        }
        return Bowing.of(track, new Reading(track.player(), strokes));
    }

    @Test
    void downAndUpInTurnIsBowing() {
        assertEquals(Bowing.CLEAR, bowing(0.6, 0.6, LENGTH_S, 0.95));
        assertEquals(Bowing.CLEAR, bowing(3, 0.4, LENGTH_S, 0.95), "four slow strokes");
        assertEquals(Bowing.CLEAR, bowing(0.6, 0.6, 7.2, 0.95), "a rest of two fifths");
    }

    @Test
    void whatIsTooShortInTimeOrWayIsNot() {
        assertEquals(Bowing.NONE, bowing(0.2, 2, LENGTH_S, 0.95), "clapping");
        assertEquals(Bowing.NONE, bowing(0.3, 0.4, LENGTH_S, 0.95), "plucking: 0.12 shoulder widths");
        assertEquals(Bowing.NONE, bowing(1.2, 0.1, LENGTH_S, 0.95), "breathing: 0.12 shoulder widths");
    }

    @Test
    void fewStrokesOrDoubtfulOnesAreNot() {
        assertEquals(Bowing.NONE, bowing(4, 0.4, LENGTH_S, 0.95), "three strokes");
        assertEquals(Bowing.NONE, bowing(0.6, 0.6, LENGTH_S, 0.7));
        assertEquals(Bowing.NONE, bowing(0.6, 0.6, 3.6, 0.95), "a third of the time is less than 0.35");
        assertEquals(Bowing.UNSURE, bowing(0.6, 0.6, 4.8, 0.95), "two fifths of the time");
    }

    private static Candidate candidate(ArmTrack track) {
        return new Candidate(new Person(List.of()), track, Bowing.CLEAR);
    }

    /** A sine and one a quarter of a period later do not correlate at all; an eighth later they do at 0.707. */
    @Test
    void oneArmInTwoSeatsIsTheLargerSeats() {
        DoubleUnaryOperator sine = t -> Math.sin(Math.PI * t);
        Candidate large = candidate(track(0, 100, sine));
        Candidate inside = candidate(track(50, 70, t -> -0.5 * sine.applyAsDouble(t)));
        Candidate beside = candidate(track(70, 70, sine));
        Candidate otherTime = candidate(track(20, 70, t -> sine.applyAsDouble(t - 0.5)));
        assertTrue(large.sameArm(inside));
        assertFalse(large.sameArm(beside), "three sevenths of the seat in common");
        assertFalse(large.sameArm(otherTime));
        assertEquals(
                List.of(large, beside, otherTime).stream().map(Candidate::seat).toList(),
                SeatFinder.withoutDoubles(List.of(beside, otherTime, large, inside)).stream()
                        .map(Candidate::seat)
                        .sorted((a, b) -> b.widthPx() == a.widthPx() ? b.xPx() - a.xPx() : b.widthPx() - a.widthPx())
                        .toList());
    }
}
