package tuttarco.strokes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
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
import tuttarco.video.Shot;

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

    private static ArmTrack cut(ArmTrack track, Shot... later) {
        List<Shot> shots = new ArrayList<>(List.of(Shot.FIRST));
        shots.addAll(List.of(later));
        return new ArmTrack(track.player(), track.startS(), track.endS(), track.samples(), Optional.empty(), shots);
    }

    @Test
    void aStrokeThatGoesOnAfterACutIsAnotherStroke() {
        ArmTrack track = track(4, 30, 1, t -> 0.4);
        Reading reading = reader().read(cut(track, new Shot(2.345, Shot.View.FIRST)));
        assertEquals(List.of(StrokeKind.DOWN, StrokeKind.DOWN), kinds(reading));
        assertEquals(2.345, reading.strokes().get(1).startS(), 1e-12);
        assertCovers(reading, 4);
    }

    /** The velocity crosses zero at 2.4 s, but the hand that comes up is another shot's. */
    @Test
    void aChangeAtACutLiesAtTheCut() {
        ArmTrack track = track(5, 30, 1, t -> Math.max(-0.4, Math.min(0.4, 4 * (2.4 - t))));
        Reading reading = reader().read(cut(track, new Shot(2.5, Shot.View.FIRST)));
        List<Stroke> later =
                reading.strokes().stream().filter(s -> s.startS() >= 2.5).toList();
        assertEquals(2.5, later.get(0).startS(), 1e-12);
        assertEquals(StrokeKind.UP, later.get(0).kind());
        assertCovers(reading, 5);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noStrokeSpansACut(long seed) {
        Random random = new Random(seed);
        double[] cutsS = IntStream.range(0, 6)
                .mapToDouble(i -> 2 * i + 0.1 + 1.8 * random.nextDouble())
                .toArray();
        Shot[] shots =
                Arrays.stream(cutsS).mapToObj(s -> new Shot(s, Shot.View.FIRST)).toArray(Shot[]::new);
        ArmTrack track = track(
                12,
                25,
                1,
                t -> 0.4
                        * Math.sin(
                                5 * t + Arrays.stream(cutsS).filter(c -> c < t).sum()));
        Reading reading = reader().read(cut(track, shots));
        assertCovers(reading, 12);
        assertTrue(reading.strokes().size() > 12, reading.toString());
        for (double cutS : cutsS) {
            for (Stroke stroke : reading.strokes()) {
                assertTrue(cutS <= stroke.startS() || cutS >= stroke.endS(), cutS + " within " + stroke);
            }
        }
    }

    @Test
    void whatAnotherViewHidesIsUnseenFromCutToCut() {
        List<ArmSample> samples = new ArrayList<>();
        for (ArmSample sample : track(6, 30, 1, t -> 0.4).samples()) {
            boolean elsewhere = sample.timeS() > 2.01 && sample.timeS() < 4.09;
            samples.add(elsewhere ? new ArmSample.Lost(sample.timeS(), ArmSample.Reason.OTHER_VIEW) : sample);
        }
        Reading reading = reader().read(cut(
                new ArmTrack(PLAYER, 0, 6, samples),
                new Shot(2.01, Shot.View.DISSOLVE),
                new Shot(3, Shot.View.OTHER),
                new Shot(4.09, Shot.View.FIRST)));
        assertEquals(List.of(StrokeKind.DOWN, StrokeKind.UNSEEN, StrokeKind.DOWN), kinds(reading));
        assertEquals(2.01, reading.strokes().get(1).startS(), 1e-12);
        assertEquals(4.09, reading.strokes().get(1).endS(), 1e-12);
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
