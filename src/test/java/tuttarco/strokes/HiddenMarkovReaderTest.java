package tuttarco.strokes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

class HiddenMarkovReaderTest extends StrokeReaderContract {
    /** So noisy that a sample tells nothing, shoulder widths per second. */
    private static final double NOTHING_TOLD = 1000;

    private static final double CLEAR = 0.03;

    /** Little more than the slowest bowing, shoulder widths per second. */
    private static final double FAINT = 0.16;

    @Override
    StrokeReader reader() {
        return new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT);
    }

    /** A bow that clearly runs down for 2 s, then so long tells nothing, then runs down for 2 s more. */
    private List<Stroke> downWithAGap(double gapS) {
        List<ArmSample> samples = new ArrayList<>();
        double endS = 4 + gapS;
        for (double timeS = Tracks.FRAME_S / 2; timeS < endS; timeS += Tracks.FRAME_S) {
            boolean gap = timeS > 2 && timeS < 2 + gapS;
            samples.add(new ArmSample.ByBody(timeS, gap ? 0 : 0.6, gap ? NOTHING_TOLD : CLEAR, 1, 1));
        }
        return reader().read(new ArmTrack(Tracks.PLAYER, 0, endS, samples)).strokes();
    }

    /**
     * With changes at random, one in 0.7 s, the bow runs down in the middle of a gap of T between two down-bows with
     * a^2 / (a^2 + b^2), a = (1 + e^(-T/0.7)) / 2, b = 1 - a: 0.86 for 0.6 s.
     */
    @Test
    void aShortGapLeavesTheStrokeWhole() {
        List<Stroke> strokes = downWithAGap(0.6);
        assertEquals(1, strokes.size(), strokes.toString());
        assertEquals(StrokeKind.DOWN, strokes.get(0).kind());
    }

    /** Likewise 0.51 for 3 s; from 0.54 s after the gap's start to 0.54 s before its end it is below 0.6. */
    @Test
    void inALongGapNobodyKnows() {
        List<Stroke> strokes = downWithAGap(3);
        assertEquals(
                List.of(StrokeKind.DOWN, StrokeKind.UNSURE, StrokeKind.DOWN),
                strokes.stream().map(Stroke::kind).toList(),
                strokes.toString());
        double openS = 0.7 / 2 * Math.log(1 / (2 * 0.6 - 1));
        assertEquals(2 + openS, strokes.get(1).startS(), 0.1);
        assertEquals(5 - openS, strokes.get(1).endS(), 0.1);
        assertTrue(strokes.get(1).confidence() < 0.6, strokes.toString());
    }

    /** Four clear strokes, then nothing that moves, in so much noise. */
    private StrokeKind lastOfStrokesThenNothing(double noise) {
        List<ArmSample> samples = new ArrayList<>();
        for (double timeS = Tracks.FRAME_S / 2; timeS < 8; timeS += Tracks.FRAME_S) {
            boolean rests = timeS > 4;
            double way = Math.floor(timeS) % 2 == 0 ? 1 : -1;
            samples.add(new ArmSample.ByBody(timeS, rests ? 0 : way * 0.6, rests ? noise : CLEAR, 1, 1));
        }
        List<Stroke> strokes =
                reader().read(new ArmTrack(Tracks.PLAYER, 0, 8, samples)).strokes();
        return strokes.get(strokes.size() - 1).kind();
    }

    /** The slowest bowing is a tenth of a shoulder width a second. */
    @Test
    void aRestIsClaimedOnlyWhereTheSlowestBowingWouldBeSeen() {
        assertEquals(StrokeKind.STILL, lastOfStrokesThenNothing(CLEAR));
        assertEquals(StrokeKind.STILL, lastOfStrokesThenNothing(0.09));
        assertEquals(StrokeKind.UNSURE, lastOfStrokesThenNothing(0.11));
    }

    /** Four clear strokes, then for as long strokes so faint that none is told from the noise, yet too many for a rest. */
    @Test
    void faintStrokesAreNoRest() {
        ArmTrack track = Tracks.byBody(12, 0.09, t -> t < 4 ? wave(t, 0.6) : wave(2 * t, FAINT), t -> 1);
        List<Stroke> strokes = reader().read(track).strokes();
        assertEquals(StrokeKind.UNSURE, strokes.get(strokes.size() - 1).kind(), strokes.toString());
        assertTrue(
                strokes.stream().allMatch(s -> s.kind() != StrokeKind.STILL || s.confidence() >= 0.5),
                strokes.toString());
    }

    private static double wave(double time, double height) {
        return Math.floor(time) % 2 == 0 ? height : -height;
    }
}
