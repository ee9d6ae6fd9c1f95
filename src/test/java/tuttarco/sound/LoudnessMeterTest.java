package tuttarco.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoudnessMeterTest {
    /** What the requirements of EBU Tech 3341 allow, LU. */
    private static final double WITHIN_LU = 0.1;

    /** Two channels that are alike, in one. */
    private static final double STEREO_DB = 10 * Math.log10(2);

    private static final int[] RATES = {22_050, 48_000};

    /** Gives the meter the tones in blocks and shows it after each block of 10 ms. */
    private static LoudnessMeter measured(List<Tone> tones, int samplesPerS, Consumer<LoudnessMeter> meanwhile) {
        float[] samples = Tone.samples(tones, 1000, samplesPerS, STEREO_DB);
        LoudnessMeter meter = new LoudnessMeter(samplesPerS);
        for (int from = 0; from < samples.length; from += samplesPerS / 100) {
            float[] block = Arrays.copyOfRange(samples, from, Math.min(samples.length, from + samplesPerS / 100));
            meter.add(block, block.length);
            meanwhile.accept(meter);
        }
        return meter;
    }

    private static LoudnessMeter measured(List<Tone> tones, int samplesPerS) {
        return measured(tones, samplesPerS, meter -> {});
    }

    private static void assertLufs(double expected, OptionalDouble actual) {
        assertEquals(expected, actual.orElseThrow(), WITHIN_LU);
    }

    /**
     * ITU-R BS.1770-4, annex 1: a sine of 997 Hz at full scale in one channel reads -3.01 LKFS. The shelf's slope is bent a
     * little by the bilinear transform at the lowest rate.
     */
    @ParameterizedTest
    @CsvSource({"22050, 0.03", "44100, 0.01", "48000, 0.01"})
    void readsASineOf997HzAtFullScale(int samplesPerS, double withinLu) {
        float[] samples = Tone.samples(List.of(new Tone(5, 0)), 997, samplesPerS, 0);
        LoudnessMeter meter = new LoudnessMeter(samplesPerS);
        meter.add(samples, samples.length);
        assertEquals(-3.01, meter.momentaryLufs().orElseThrow(), withinLu);
        assertEquals(-3.01, meter.shortTermLufs().orElseThrow(), withinLu);
        assertEquals(-3.01, meter.integratedLufs().orElseThrow(), withinLu);
    }

    /** EBU Tech 3341, minimum requirements, cases 1 and 2 (from memory). */
    @Test
    void readsASteadyTone() {
        for (int rate : RATES) {
            for (double lufs : List.of(-23.0, -33.0)) {
                LoudnessMeter meter = measured(List.of(new Tone(20, lufs)), rate);
                assertLufs(lufs, meter.momentaryLufs());
                assertLufs(lufs, meter.shortTermLufs());
                assertLufs(lufs, meter.integratedLufs());
            }
        }
    }

    /** EBU Tech 3341, minimum requirements, cases 3, 4 and 5 (from memory). */
    @Test
    void gatesWhatIsFaint() {
        List<List<Tone>> cases = List.of(
                List.of(new Tone(10, -36), new Tone(60, -23), new Tone(10, -36)),
                List.of(new Tone(10, -72), new Tone(10, -36), new Tone(60, -23), new Tone(10, -36), new Tone(10, -72)),
                List.of(new Tone(20, -26), new Tone(20.1, -20), new Tone(20, -26)));
        for (int rate : RATES) {
            for (List<Tone> tones : cases) {
                assertLufs(-23, measured(tones, rate).integratedLufs());
            }
        }
    }

    /** EBU Tech 3341, minimum requirements, case 9 (from memory): short-term is the same after 3 s. */
    @Test
    void shortTermIsSteadyWhereThePatternFillsIt() {
        List<Tone> pattern = Collections.nCopies(5, List.of(new Tone(1.34, -20), new Tone(1.66, -30))).stream()
                .flatMap(List::stream)
                .toList();
        for (int rate : RATES) {
            List<Double> seen = new ArrayList<>();
            measured(pattern, rate, meter -> meter.shortTermLufs().ifPresent(seen::add));
            assertTrue(seen.size() > 1100, "short-term loudness was seen " + seen.size() + " times");
            seen.forEach(lufs -> assertEquals(-23, lufs, WITHIN_LU));
        }
    }

    /** EBU Tech 3341, minimum requirements, case 12 (from memory): momentary is the same after a second. */
    @Test
    void momentaryIsSteadyWhereThePatternFillsIt() {
        List<Tone> pattern = Collections.nCopies(25, List.of(new Tone(0.18, -20), new Tone(0.22, -30))).stream()
                .flatMap(List::stream)
                .toList();
        for (int rate : RATES) {
            List<Double> seen = new ArrayList<>();
            measured(pattern, rate, meter -> meter.momentaryLufs().ifPresent(seen::add));
            assertTrue(seen.size() > 900, "momentary loudness was seen " + seen.size() + " times");
            seen.subList(100, seen.size()).forEach(lufs -> assertEquals(-23, lufs, WITHIN_LU));
        }
    }

    /** EBU Tech 3341, minimum requirements, cases 10 and 13 (from memory): the highest, wherever the tone begins. */
    @Test
    void findsTheHighestWhereverAToneBegins() {
        for (int rate : RATES) {
            for (int i = 0; i < 20; i++) {
                LoudnessMeter shortTerm =
                        measured(List.of(Tone.silence(0.15 * i), new Tone(3, -23), Tone.silence(1)), rate);
                assertLufs(-23, shortTerm.highestShortTermLufs());
                LoudnessMeter momentary =
                        measured(List.of(Tone.silence(0.02 * i), new Tone(0.4, -23), Tone.silence(1)), rate);
                assertLufs(-23, momentary.highestMomentaryLufs());
            }
        }
    }

    /** EBU Tech 3341, minimum requirements, cases 11 and 14 (from memory): tones that grow from -38 to -19. */
    @Test
    void followsTonesThatGrow() {
        for (int rate : RATES) {
            for (int i = 0; i < 20; i++) {
                double lufs = -38 + i;
                LoudnessMeter shortTerm =
                        measured(List.of(Tone.silence(0.15 * i), new Tone(3, lufs), Tone.silence(3 - 0.15 * i)), rate);
                assertLufs(lufs, shortTerm.highestShortTermLufs());
                LoudnessMeter momentary = measured(
                        List.of(Tone.silence(0.02 * i), new Tone(0.4, lufs), Tone.silence(0.4 - 0.02 * i)), rate);
                assertLufs(lufs, momentary.highestMomentaryLufs());
            }
        }
    }

    @Test
    void saysNothingOfSilenceOrTooLittle() {
        LoudnessMeter silent = measured(List.of(Tone.silence(5)), 22_050);
        assertTrue(silent.integratedLufs().isEmpty());
        assertTrue(silent.highestMomentaryLufs().isEmpty());
        assertEquals(Double.NEGATIVE_INFINITY, silent.momentaryLufs().orElseThrow());
        LoudnessMeter brief = measured(List.of(new Tone(0.39, -23)), 22_050);
        assertTrue(brief.momentaryLufs().isEmpty());
        assertFalse(
                measured(List.of(new Tone(0.41, -23)), 22_050).momentaryLufs().isEmpty());
    }

    /** Two gates by the rule, over all blocks kept, against the meter that keeps classes of them. */
    @Test
    void gatesLikeAListOfAllBlocks() {
        List<Tone> tones = IntStream.range(0, 200)
                .mapToObj(i -> new Tone(0.1, -20 - 0.37 * ((i * 7919) % 97)))
                .toList();
        List<Double> blocks = new ArrayList<>();
        int[] steps = {0};
        LoudnessMeter meter = measured(tones, 48_000, m -> {
            steps[0]++;
            if (steps[0] % 10 == 0) {
                m.momentaryLufs().ifPresent(blocks::add);
            }
        });
        assertTrue(blocks.size() > 190);
        double ungated = Loudness.lufs(mean(blocks, -70));
        assertEquals(
                Loudness.lufs(mean(blocks, ungated - 10)),
                meter.integratedLufs().orElseThrow(),
                0.01);
    }

    private static double mean(List<Double> blocks, double aboveLufs) {
        return blocks.stream()
                .filter(lufs -> lufs > aboveLufs)
                .mapToDouble(Loudness::power)
                .average()
                .orElseThrow();
    }
}
