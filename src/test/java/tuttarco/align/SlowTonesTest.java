package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.score.Part;

/** Tones that take longer and longer to speak are timed where they are half as loud as they become; seeds not used for choosing. */
class SlowTonesTest {
    private static final int BARS = 16;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"0.02,1", "0.05,1", "0.1,1", "0.15,1", "0.02,12", "0.05,12", "0.1,12", "0.15,12"})
    void tonesAreTimedAtHalfTheirLoudness(double speaksS, int players) throws Exception {
        List<Double> errorsMs = new ArrayList<>();
        int withinTwo = 0;
        for (double noiseDb : new double[] {-40, -10}) {
            long seed = Math.round(500 + 1000 * speaksS + players + noiseDb);
            Part part = Section.tune(seed, BARS);
            DoubleUnaryOperator truth = Section.swaying(2, 0.6);
            float[] recording = new float[(int) ((truth.applyAsDouble(4 * BARS) + 2) * Section.RATE)];
            Section section = new Section(seed + 1, players, 440, speaksS, speaksS);
            section.play(part, 0, BARS, truth, recording);
            section.noise(recording, noiseDb);
            Path wav = folder.resolve("slow.wav");
            Section.write(recording, wav);
            PartChords chords = PartChords.of(part);
            SoundFeatures sound = SoundFeatures.of(wav);
            for (Passage passage : new PassageFinder(chords).passages(sound)) {
                Passage close = new PassageTimer(chords, sound).timed(passage);
                for (Onset onset : new OnsetTimer(chords, sound).onsets(close)) {
                    int stretch = chords.stretchAt(onset.quarters());
                    if (chords.onsets()[stretch]) {
                        double startS = truth.applyAsDouble(onset.quarters());
                        double lastsS = truth.applyAsDouble(chords.endQuarters(stretch)) - startS;
                        // a short tone speaks within half its length
                        double errorS = onset.timeS() - startS - Math.min(speaksS, lastsS / 2) / 2;
                        errorsMs.add(1000 * errorS);
                        withinTwo += Math.abs(errorS) <= 2 * onset.stderrS() ? 1 : 0;
                    }
                }
            }
        }
        double[] errors = errorsMs.stream().mapToDouble(e -> e).toArray();
        double[] sizes = errorsMs.stream().mapToDouble(Math::abs).toArray();
        double bias = StatUtils.percentile(errors, 50);
        String score = String.format(
                Locale.ROOT,
                "%d players speaking in %.0f ms: %d onsets, bias %.1f ms, error: median %.0f ms, 90 %% within %.0f ms; %.1f %%"
                        + " within two errors",
                players,
                1000 * speaksS,
                errors.length,
                bias,
                StatUtils.percentile(sizes, 50),
                StatUtils.percentile(sizes, 90),
                100.0 * withinTwo / errors.length);
        System.out.println(score);
        assertTrue(errors.length >= 80, score);
        // players lie 20 ms from each other, the mean of twelve 6 ms from the beat
        assertTrue(Math.abs(bias) <= (players == 1 ? 5 : 12), score);
        assertTrue(withinTwo >= 0.9 * errors.length, score);
    }
}
