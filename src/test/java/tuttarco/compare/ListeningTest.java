package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.sound.LevelCurve;
import tuttarco.stats.PairedDifference;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class ListeningTest {
    private static final int RATE = 22_050;
    private static final double BAR_S = 2;

    private static Reading strokes(double firstS, double lengthS, int count) {
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(new Stroke(0, firstS, StrokeKind.STILL, 1));
        for (int i = 0; i < count; i++) {
            strokes.add(new Stroke(
                    firstS + i * lengthS, firstS + (i + 1) * lengthS, i % 2 == 0 ? StrokeKind.DOWN : StrokeKind.UP, 1));
        }
        return Bows.reading(Bows.leader(), strokes);
    }

    private static BeatMap bars(int bars) {
        return new BeatMap(IntStream.range(0, 4 * bars)
                .mapToObj(i -> new Beat(Integer.toString(1 + i / 4), 1 + i % 4, 1 + i * BAR_S / 4))
                .toList());
    }

    /** A tone of 997 Hz, at which K-weighted is as unweighted, whose gain, dB, is a function of time, seconds. */
    private static LevelCurve tone(double lengthS, DoubleUnaryOperator gainDb) {
        float[] samples = new float[(int) (lengthS * RATE)];
        for (int i = 0; i < samples.length; i++) {
            double timeS = (double) i / RATE;
            double amplitude = 0.1 * Math.pow(10, gainDb.applyAsDouble(timeS) / 20);
            samples[i] = (float) (amplitude * Math.sin(2 * Math.PI * 997 * timeS));
        }
        LevelCurve.Gathering level = new LevelCurve.Gathering(RATE, 0);
        level.add(samples, samples.length);
        return level.curve();
    }

    /** Whether a time lies within 60 ms of a change of strokes of a second from 1 s on, early by as much as given. */
    private static boolean nearChange(double timeS, double lateS) {
        double since = (timeS - lateS) - Math.rint(timeS - lateS);
        return Math.abs(since) < 0.06;
    }

    @Test
    void aDipIsAsDeepAsItIs() {
        for (double lateS : List.of(-0.03, 0.0, 0.03)) {
            LevelCurve level = tone(12, timeS -> nearChange(timeS, lateS) ? -12 : 0);
            Evenness evenness = Listening.to(level, List.of(strokes(1, 1, 10)), bars(5));
            assertEquals(9, evenness.changes());
            assertEquals(12, evenness.dipLu().orElseThrow(), 0.3);
            assertEquals(0, evenness.amidStrokesLu().orElseThrow(), 0.3);
            assertEquals(5, evenness.bars().size());
            evenness.bars().forEach(b -> assertEquals(12, b.dipLu().orElseThrow(), 0.3));
        }
    }

    @Test
    void steadySoundIsEven() {
        Evenness evenness = Listening.to(tone(12, timeS -> 0), List.of(strokes(1, 1, 10)), bars(5));
        assertEquals(0, evenness.dipLu().orElseThrow(), 0.1);
        evenness.bars().forEach(b -> {
            assertEquals(0, b.spreadLu().orElseThrow(), 0.05);
            assertEquals(-23.01, b.momentaryLufs().orElseThrow(), 0.05);
        });
    }

    /** A level that climbs 4 dB a bar: its deviation is that of a straight line, the rise over the root of twelve. */
    @Test
    void aSwellSpreads() {
        Evenness evenness = Listening.to(tone(12, timeS -> 2 * timeS), List.of(strokes(1, 1, 10)), bars(5));
        assertEquals(5, evenness.bars().size());
        evenness.bars()
                .forEach(b -> assertEquals(4 / Math.sqrt(12), b.spreadLu().orElseThrow(), 0.1));
        assertEquals(0, evenness.dipLu().orElseThrow(), 0.3);
    }

    @Test
    void nothingIsSaidOfSilenceOrShortStrokes() {
        Evenness silent =
                Listening.to(tone(12, timeS -> Double.NEGATIVE_INFINITY), List.of(strokes(1, 1, 10)), bars(5));
        assertEquals(0, silent.changes());
        assertTrue(silent.integratedLufs().isEmpty());
        assertEquals(5, silent.bars().size());
        silent.bars()
                .forEach(b -> assertTrue(b.spreadLu().isEmpty() && b.dipLu().isEmpty()));
        Evenness quick = Listening.to(tone(12, timeS -> 0), List.of(strokes(1, 0.25, 40)), bars(5));
        assertTrue(quick.dipLu().isEmpty());
        assertTrue(quick.amidStrokesLu().isEmpty());
    }

    @Test
    void withoutBarsOnlyTheWholeIsTold() {
        BeatMap strokes = new BeatMap(IntStream.range(0, 10)
                .mapToObj(i -> Beat.ofLeader(i + 1, 1 + i))
                .toList());
        Evenness evenness = Listening.to(tone(12, timeS -> 0), List.of(strokes(1, 1, 10)), strokes);
        assertEquals(List.of(), evenness.bars());
        assertEquals(9, evenness.changes());
    }

    private static List<BarEvenness> bars(List<Double> spreads) {
        return IntStream.range(0, spreads.size())
                .mapToObj(i -> new BarEvenness(
                        Integer.toString(i + 1),
                        4 * i,
                        OptionalDouble.of(-20),
                        OptionalDouble.of(spreads.get(i)),
                        OptionalDouble.empty(),
                        0))
                .toList();
    }

    /** Bars are paired by number: the order of a take and bars that the other lacks don't matter. */
    @Test
    void takesAreComparedByBar() {
        List<BarEvenness> first = bars(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 99.0));
        List<BarEvenness> second = new ArrayList<>(bars(List.of(1.5, 2.6, 3.4, 4.5, 5.5, 6.5)));
        Collections.reverse(second);
        PairedDifference spread = EvennessComparing.spread(first, second).orElseThrow();
        assertEquals(6, spread.pairs());
        assertEquals(0.5, spread.mean(), 1e-12);
        assertTrue(spread.pValue() < 0.001);
        assertTrue(EvennessComparing.dips(first, second).isEmpty());
        assertTrue(EvennessComparing.spread(first, second.subList(0, 5)).isEmpty());
    }

    /** The interval holds the truth in 95 of 100 pairs of takes that differ by half a LU. */
    @Test
    void theIntervalHoldsWhatIsTrue() {
        Random random = new Random(3);
        int held = 0;
        for (int i = 0; i < 1000; i++) {
            List<Double> first = random.doubles(16, 1, 4).boxed().toList();
            List<Double> second =
                    first.stream().map(f -> f + 0.5 + random.nextGaussian()).toList();
            PairedDifference found =
                    EvennessComparing.spread(bars(first), bars(second)).orElseThrow();
            held += found.interval().low() <= 0.5 && 0.5 <= found.interval().high() ? 1 : 0;
        }
        assertTrue(held >= 930 && held <= 970, "held " + held + " times");
    }
}
