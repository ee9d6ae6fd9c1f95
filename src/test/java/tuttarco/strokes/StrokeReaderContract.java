package tuttarco.strokes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** What every stroke reader does, on tracks whose strokes are known in closed form. */
abstract class StrokeReaderContract {
    private static final Player PLAYER = new Player(
            "player",
            1,
            Place.OUTSIDE,
            Instrument.VIOLIN,
            new SeatBox(0, 0, 100, 100),
            Optional.of(Facing.CAMERA),
            false);
    private static final double NOISE = 0.03;

    abstract StrokeReader reader();

    private static ArmTrack track(double endS, double framesPerS, double sign, DoubleUnaryOperator velocity) {
        Random random = new Random(3);
        List<ArmSample> samples = new ArrayList<>();
        for (int i = 0; (i + 0.5) / framesPerS < endS; i++) {
            double timeS = (i + 0.5) / framesPerS;
            samples.add(new ArmSample.ByFlow(
                    timeS, velocity.applyAsDouble(timeS) + 0.2 * NOISE * random.nextGaussian(), NOISE, sign));
        }
        return new ArmTrack(PLAYER, 0, endS, samples);
    }

    private static List<StrokeKind> kinds(Reading reading) {
        return reading.strokes().stream().map(Stroke::kind).toList();
    }

    private static void assertCovers(Reading reading, double endS) {
        List<Stroke> strokes = reading.strokes();
        assertTrue(!strokes.isEmpty());
        assertEquals(0, strokes.get(0).startS(), 1e-9);
        assertEquals(endS, strokes.get(strokes.size() - 1).endS(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 3})
    void strokesOfAnyLengthAreReadWithTheirChanges(double strokeS) {
        double endS = 8 * strokeS;
        Reading reading = reader().read(track(endS, 30, 1, t -> 0.4 * Math.sin(Math.PI * t / strokeS)));
        assertEquals(8, reading.strokes().size(), reading.strokes().toString());
        assertCovers(reading, endS);
        for (int k = 0; k < 8; k++) {
            Stroke stroke = reading.strokes().get(k);
            assertEquals(k % 2 == 0 ? StrokeKind.DOWN : StrokeKind.UP, stroke.kind());
            assertTrue(stroke.confidence() > 0.9, stroke.toString());
            assertEquals(k * strokeS, stroke.startS(), 0.02, "start of stroke " + k);
        }
    }

    @Test
    void changesAreFinerThanAFrame() {
        double offsetS = 0.0123;
        Reading reading = reader().read(track(4, 30, 1, t -> 0.4 * Math.sin(Math.PI * (t - offsetS))));
        double worstS = 0;
        assertTrue(reading.strokes().size() >= 4);
        for (Stroke stroke : reading.strokes()
                .subList(reading.strokes().size() - 3, reading.strokes().size())) {
            double phase = stroke.startS() - offsetS;
            worstS = Math.max(worstS, Math.abs(phase - Math.rint(phase)));
        }
        assertTrue(worstS < 0.008, "off by " + worstS + " s, a quarter of a frame");
    }

    @Test
    void aRestBetweenStrokesIsStill() {
        Reading reading = reader().read(track(6, 30, 1, t -> t < 2 ? 0.4 : t < 4 ? 0 : -0.4));
        assertEquals(List.of(StrokeKind.DOWN, StrokeKind.STILL, StrokeKind.UP), kinds(reading));
        assertEquals(2, reading.strokes().get(1).startS(), 0.07);
        assertEquals(4, reading.strokes().get(1).endS(), 0.07);
    }

    @Test
    void anArmThatNeverBowsIsStill() {
        assertEquals(List.of(StrokeKind.STILL), kinds(reader().read(track(5, 30, 1, t -> 0))));
    }

    @Test
    void withAnUnknownSignNoDirectionIsClaimed() {
        Reading reading = reader().read(track(4, 30, 0.5, t -> 0.4 * Math.sin(Math.PI * t)));
        assertCovers(reading, 4);
        for (Stroke stroke : reading.strokes()) {
            assertEquals(StrokeKind.UNSURE, stroke.kind());
            assertEquals(0.5, stroke.confidence(), 0.05);
        }
    }

    @Test
    void whereTheSignIsLostNoDirectionIsClaimedAnyMore() {
        List<ArmSample> samples = new ArrayList<>();
        for (ArmSample sample :
                track(8, 30, 1, t -> 0.4 * Math.sin(Math.PI * t)).samples()) {
            ArmSample.Seen seen = (ArmSample.Seen) sample;
            samples.add(
                    new ArmSample.ByBody(seen.timeS(), seen.velocity(), seen.noise(), seen.timeS() < 4 ? 1 : 0.5, 1));
        }
        Reading reading = reader().read(new ArmTrack(PLAYER, 0, 8, samples));
        assertCovers(reading, 8);
        assertEquals(8, reading.strokes().size(), reading.strokes().toString());
        for (int k = 0; k < 8; k++) {
            Stroke stroke = reading.strokes().get(k);
            StrokeKind known = k % 2 == 0 ? StrokeKind.DOWN : StrokeKind.UP;
            assertEquals(k < 4 ? known : StrokeKind.UNSURE, stroke.kind(), stroke.toString());
            assertEquals(k < 4 ? 1 : 0.5, stroke.confidence(), 0.06, stroke.toString());
        }
    }

    @Test
    void confidenceIsNoHigherThanThatOfTheSign() {
        Reading reading = reader().read(track(4, 30, 0.8, t -> 0.4 * Math.sin(Math.PI * t)));
        assertEquals(4, reading.strokes().size());
        for (Stroke stroke : reading.strokes()) {
            assertTrue(stroke.confidence() <= 0.8 + 1e-9 && stroke.confidence() > 0.7, stroke.toString());
        }
    }

    @Test
    void whatIsLostIsUnseenAndTheRestIsStillRead() {
        List<ArmSample> samples = new ArrayList<>();
        for (ArmSample sample : track(6, 30, 1, t -> t < 3 ? 0.4 : -0.4).samples()) {
            boolean hidden = sample.timeS() > 2 && sample.timeS() < 4;
            samples.add(hidden ? new ArmSample.Lost(sample.timeS(), ArmSample.Reason.TOO_DARK) : sample);
        }
        Reading reading = reader().read(new ArmTrack(PLAYER, 0, 6, samples));
        assertEquals(List.of(StrokeKind.DOWN, StrokeKind.UNSEEN, StrokeKind.UP), kinds(reading));
        assertEquals(2, reading.strokes().get(1).startS(), 0.02);
        assertCovers(reading, 6);
    }

    @Test
    void aTrackWithoutSamplesIsUnseen() {
        Reading reading = reader().read(new ArmTrack(PLAYER, 0, 3, List.of()));
        assertEquals(List.of(StrokeKind.UNSEEN), kinds(reading));
        assertCovers(reading, 3);
    }

    @Test
    void aShortGlitchIsNoStroke() {
        Reading reading = reader().read(track(4, 30, 1, t -> t > 1 && t < 1.05 ? -0.1 : 0.4));
        assertEquals(List.of(StrokeKind.DOWN), kinds(reading));
    }
}
