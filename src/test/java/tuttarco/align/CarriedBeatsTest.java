package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.files.InputException;
import tuttarco.score.Part;

/** Two synthesised sections that play the same, whose every note's time is known. */
class CarriedBeatsTest {
    private static final int BARS = 20;

    @TempDir
    Path folder;

    private Path play(String name, Part part, Section section, DoubleUnaryOperator secondsOf, double noiseDb)
            throws Exception {
        float[] recording = new float[(int) ((secondsOf.applyAsDouble(4 * BARS) + 2) * Section.RATE)];
        section.play(part, 0, BARS, secondsOf, recording);
        section.noise(recording, noiseDb);
        Path wav = folder.resolve(name + ".wav");
        Section.write(recording, wav);
        return wav;
    }

    /** Every beat where it is meant. */
    private static BeatMap beats(DoubleUnaryOperator secondsOf, double stderrS) {
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < 4 * BARS; i++) {
            beats.add(new Beat(
                    Integer.toString(i / 4 + 1),
                    i % 4 + 1,
                    secondsOf.applyAsDouble(i),
                    OptionalDouble.of(stderrS),
                    Beat.LIST));
        }
        return new BeatMap(beats);
    }

    private static double quarters(Beat beat) {
        return 4 * (Integer.parseInt(beat.bar()) - 1) + beat.beat() - 1;
    }

    /** For moments nearly half and twice as quick, out of tune by a third of a semitone, with noise; seeds not used for choosing. */
    @ParameterizedTest
    @CsvSource({"1,1,0.5,440,-30,-30", "12,12,0.7,434,-30,-20", "12,3,0.45,447,-10,-10", "4,8,0.7,440,-20,-10"})
    void beatsComeOverWithTheirErrors(
            int players, int otherPlayers, double quarterS, double a4Hz, double noiseDb, double otherNoiseDb)
            throws Exception {
        Part part = Section.tune(70 + players, BARS);
        DoubleUnaryOperator from = Section.swaying(2, 0.6);
        DoubleUnaryOperator to = q -> 3 + quarterS * (q + 1.5 * Math.sin(q / 6 + 1));
        Path known = play("known", part, new Section(71 + players, players, 440), from, noiseDb);
        Path wanted = play("wanted", part, new Section(72 + players, otherPlayers, a4Hz), to, otherNoiseDb);

        List<Beat> beats =
                new CarriedBeats(() -> beats(from, 0), known, wanted).beats().beats();

        double[] errorsMs = new double[beats.size()];
        int withinTwo = 0;
        for (int i = 0; i < errorsMs.length; i++) {
            Beat beat = beats.get(i);
            assertEquals(Beat.CARRIED, beat.source());
            double errorS = Math.abs(beat.timeS() - to.applyAsDouble(quarters(beat)));
            errorsMs[i] = 1000 * errorS;
            withinTwo += errorS <= 2 * beat.stderrS().orElseThrow() ? 1 : 0;
        }
        Arrays.sort(errorsMs);
        String score = String.format(
                Locale.ROOT,
                "%d to %d players: %d beats, median %.0f ms, 90 %% within %.0f ms, %d within two errors",
                players,
                otherPlayers,
                errorsMs.length,
                errorsMs[errorsMs.length / 2],
                errorsMs[errorsMs.length * 9 / 10],
                withinTwo);
        assertTrue(errorsMs.length >= 4 * BARS - 4, score);
        assertTrue(errorsMs[errorsMs.length / 2] <= 40, score);
        assertTrue(errorsMs[errorsMs.length * 9 / 10] <= 200, score);
        assertTrue(withinTwo >= 0.8 * errorsMs.length, score);
    }

    /** At twice the length an error of 0.1 s is one of 0.2 s, and finding the moment adds to it. */
    @Test
    void theOtherTakesErrorComesAlongInThisOnesTempo() throws Exception {
        Part part = Section.tune(81, BARS);
        DoubleUnaryOperator from = q -> 1 + 0.4 * q;
        DoubleUnaryOperator to = q -> 1 + 0.7 * q;
        Path known = play("known", part, new Section(82, 1, 440), from, -30);
        Path wanted = play("wanted", part, new Section(83, 1, 440), to, -30);
        List<Beat> sure =
                new CarriedBeats(() -> beats(from, 0), known, wanted).beats().beats();
        List<Beat> unsure =
                new CarriedBeats(() -> beats(from, 0.1), known, wanted).beats().beats();
        assertEquals(sure.size(), unsure.size());
        for (int i = 4; i < sure.size() - 4; i++) {
            double added = Math.sqrt(Math.pow(unsure.get(i).stderrS().orElseThrow(), 2)
                    - Math.pow(sure.get(i).stderrS().orElseThrow(), 2));
            assertEquals(0.175, added, 0.04, "beat " + i);
        }
    }

    @Test
    void otherMusicIsRefusedInOneSentence() throws Exception {
        int[] scale = {63, 65, 66, 68, 70, 71, 73, 75, 77, 78, 80, 82, 83, 85, 87};
        DoubleUnaryOperator times = q -> 1 + 0.5 * q;
        Path known = play("known", Section.tune(91, BARS), new Section(92, 4, 440), times, -30);
        Path other = play("other", Section.tune(93, BARS, scale), new Section(94, 4, 440), times, -30);
        CarriedBeats wrong = new CarriedBeats(() -> beats(times, 0), known, other);
        assertEquals(
                "The sound of other.wav does not fit that of known.wav, whose beats it should take over; check that both"
                        + " play the same, or give the beats as a list.",
                assertThrows(InputException.class, wrong::beats).getMessage());
    }

    /** Beats where there is no sound, crowded together or far apart carry nothing over, and nothing breaks. */
    @Test
    void beatsThatCannotBeHeardAreRefused() throws Exception {
        DoubleUnaryOperator times = q -> 1 + 0.4 * q;
        Path known = play("known", Section.tune(95, BARS), new Section(96, 1, 440), times, -30);
        for (double stepS : new double[] {1e-4, 1000}) {
            BeatMap odd = beats(q -> 1 + stepS * (q - 1), 0.01);
            BeatMap far = beats(q -> 50_000 + stepS * q, 0.01);
            assertThrows(InputException.class, () -> new CarriedBeats(() -> far, known, known).beats());
            try {
                BeatMap carried = new CarriedBeats(() -> odd, known, known).beats();
                assertTrue(carried.beats().size() <= 4 * BARS);
            } catch (InputException e) {
                assertTrue(e.getMessage().contains("does not fit"), e.getMessage());
            }
        }
    }
}
