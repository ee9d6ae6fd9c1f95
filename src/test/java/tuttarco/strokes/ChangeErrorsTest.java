package tuttarco.strokes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.Body;
import tuttarco.tracks.Hand;

class ChangeErrorsTest {
    /** Standard deviation of a uniform distribution over a frame: closed form. */
    private static final double FRAME_SD_S = Tracks.FRAME_S / Math.sqrt(12);

    private static final double NOISE = 0.03;
    private static final double STROKE_S = 1;
    private static final double SPEED = 0.8;

    private static double sine(double timeS) {
        return SPEED * Math.sin(Math.PI * timeS / STROKE_S);
    }

    /** Slope of the sine's chord from 80 ms before a crossing to 80 ms after. */
    private static final double SLOPE = sine(0.08) / 0.08;

    @Test
    void theErrorOfACrossingIsNoiseOverSlope() {
        ChangeErrors errors = new ChangeErrors(Tracks.byBody(4, NOISE, ChangeErrorsTest::sine, t -> 1));
        double expectedS = Math.hypot(FRAME_SD_S, 2.3 * NOISE / SLOPE);
        assertEquals(0.0294, expectedS, 0.0001);
        assertEquals(expectedS, errors.standardErrorS(2), 0.001);
    }

    /** The crossings that the reader finds scatter as their standard errors say. */
    @Test
    void crossingsScatterAsTheirErrorsSay() {
        Random random = new Random(17);
        SummaryStatistics off = new SummaryStatistics();
        SummaryStatistics stated = new SummaryStatistics();
        for (int run = 0; run < 400; run++) {
            double offset = 2.3 * NOISE * random.nextGaussian();
            ArmTrack track = Tracks.byBody(4, NOISE, t -> sine(t) + offset, t -> 1);
            Reading reading = new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT).read(track);
            List<Bow> near = Bows.of(track, reading).bows().stream()
                    .filter(b -> Math.abs(b.stroke().startS() - 2) < STROKE_S / 2)
                    .toList();
            assertEquals(1, near.size(), reading.strokes().toString());
            Bow third = near.get(0);
            off.addValue(third.stroke().startS() - 2);
            stated.addValue(((Edge.Change) third.start()).standardErrorS());
        }
        // what lies between the frames is interpolated here, so that only the noise is left
        double noiseAloneS = Math.sqrt(stated.getMean() * stated.getMean() - FRAME_SD_S * FRAME_SD_S);
        // a standard deviation from 400 runs has a standard error of 1 / sqrt(800), 3.5 %
        assertEquals(1, off.getStandardDeviation() / noiseAloneS, 0.12);
    }

    @Test
    void besideATimeUnseenOnlyTheFrameIsKnown() {
        List<ArmSample> samples = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double timeS = (i + 0.5) * Tracks.FRAME_S;
            samples.add(
                    i < 30
                            ? new ArmSample.ByBody(timeS, 0.5, NOISE, 1, 1)
                            : new ArmSample.Lost(timeS, ArmSample.Reason.TOO_DARK));
        }
        ChangeErrors errors = new ChangeErrors(new ArmTrack(Tracks.PLAYER, 0, 2, samples));
        assertEquals(FRAME_SD_S, errors.standardErrorS(1), 1e-9);
    }

    /** A bow that starts evenly from rest: 50 ms after the start the start lies 50 ms away. */
    @Test
    void besideARestTheVelocityTellsHowFarOffTheStartMayBe() {
        double startS = 1.0;
        ChangeErrors errors = new ChangeErrors(Tracks.byBody(2, 1e-6, t -> Math.max(0, t - startS), t -> 1));
        double chord = 0.13 / 0.16;
        assertEquals(Math.hypot(FRAME_SD_S, 0.05 / chord), errors.standardErrorS(1.05), 0.002);
    }

    @Test
    void noErrorIsLargerThanWhereChangesAreLookedFor() {
        ChangeErrors errors = new ChangeErrors(Tracks.byBody(2, NOISE, t -> 0.3, t -> 1));
        assertEquals(0.5 / Math.sqrt(12), errors.standardErrorS(1), 1e-9);
        ChangeErrors nothing = new ChangeErrors(Tracks.byBody(2, 0, t -> 0, t -> 1));
        assertEquals(0.5 / Math.sqrt(12), nothing.standardErrorS(1), 1e-9);
    }

    @Test
    void theClipsEndsAreNoChanges() {
        ArmTrack track = Tracks.byBody(4, NOISE, ChangeErrorsTest::sine, t -> 1);
        List<Bow> bows = Bows.of(track, new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT).read(track))
                .bows();
        assertEquals(4, bows.size());
        assertEquals(new Edge.ClipEnd(), bows.get(0).start());
        assertEquals(new Edge.ClipEnd(), bows.get(3).end());
        for (int i = 1; i < 4; i++) {
            assertTrue(bows.get(i).start() instanceof Edge.Change);
            assertEquals(bows.get(i - 1).end(), bows.get(i).start());
        }
    }

    /** A quarter of the picture, four times the error. */
    @Test
    void whatAllChangesShareGoesDownWithTheSquareOfTheFiguresSize() {
        assertEquals(4, sharedS(10) / sharedS(20), 1e-9);
        assertEquals(0.012, sharedS(20), 1e-9);
        ArmTrack byFlow = Tracks.byFlow(2, 0.1, t -> 1);
        assertEquals(sharedS(byFlow.shoulderWidthPx()), new ChangeErrors(byFlow).sharedS(), 1e-12);
    }

    private static double sharedS(double shoulderWidthPx) {
        Body body = new Body(Hand.RIGHT, shoulderWidthPx);
        return new ChangeErrors(new ArmTrack(Tracks.PLAYER, 0, 1, List.of(), Optional.of(body))).sharedS();
    }
}
