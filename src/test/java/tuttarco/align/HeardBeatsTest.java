package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.files.InputException;
import tuttarco.score.Part;

/** A synthesised section whose every note's time is known. */
class HeardBeatsTest {
    /** Tones speak in 30 to 70 ms, and have come to half their loudness, 6 dB below it, after half of that; seconds. */
    private static final double HEARD_AFTER_S = 0.025;

    private static final int BARS = 16;

    @TempDir
    Path folder;

    private static float[] silence(double lengthS) {
        return new float[(int) (lengthS * Section.RATE)];
    }

    @ParameterizedTest
    @CsvSource({"1,440,-30", "12,440,-30", "12,431,-10", "12,447,0"})
    void beatsComeBackWithTheirErrors(int players, double a4Hz, double noiseDb) throws Exception {
        Part part = Section.tune(11, BARS);
        DoubleUnaryOperator truth = Section.swaying(2, 0.6);
        float[] recording = silence(truth.applyAsDouble(4 * BARS) + 2);
        Section section = new Section(5, players, a4Hz);
        section.play(part, 0, BARS, truth, recording);
        section.noise(recording, noiseDb);
        Path wav = folder.resolve("section.wav");
        Section.write(recording, wav);

        List<Beat> beats = new HeardBeats(part, wav).beats().beats();

        assertTrue(beats.size() >= 4 * BARS - 4, "beats: " + beats.size());
        int near = 0;
        int withinTwo = 0;
        for (Beat beat : beats) {
            double quarters = 4 * (Integer.parseInt(beat.bar()) - 1) + beat.beat() - 1;
            double errorS = Math.abs(beat.timeS() - truth.applyAsDouble(quarters) - HEARD_AFTER_S);
            near += errorS <= 0.08 ? 1 : 0;
            withinTwo += errorS <= 2 * beat.stderrS().orElseThrow() ? 1 : 0;
        }
        assertTrue(near >= 0.85 * beats.size(), near + " of " + beats.size() + " within 80 ms");
        assertTrue(withinTwo >= 0.85 * beats.size(), withinTwo + " of " + beats.size() + " within two errors");
    }

    @Test
    void aPassageTakenAgainIsHeardTwice() throws Exception {
        Part part = Section.tune(12, BARS);
        DoubleUnaryOperator first = q -> 1 + 0.6 * q;
        // bars 1 to 10, four seconds of nothing, then from bar 7 again
        DoubleUnaryOperator again = q -> 1 + 0.6 * 40 + 4 + 0.6 * (q - 24);
        float[] recording = silence(again.applyAsDouble(4 * BARS) + 2);
        Section section = new Section(6, 6, 440);
        section.play(part, 0, 10, first, recording);
        section.play(part, 6, BARS, again, recording);
        section.noise(recording, -30);
        Path wav = folder.resolve("again.wav");
        Section.write(recording, wav);

        BeatMap map = new HeardBeats(part, wav).beats();
        List<Beat> beats = map.beats();

        assertEquals(2, map.runs().size());
        assertTrue(map.stopped(first.applyAsDouble(40) + 2), "the silence is a stop");
        List<Double> eighth = beats.stream()
                .filter(b -> b.bar().equals("8") && b.beat() == 1)
                .map(Beat::timeS)
                .toList();
        assertEquals(2, eighth.size(), "bar 8 was played twice");
        assertEquals(first.applyAsDouble(28) + HEARD_AFTER_S, eighth.get(0), 0.2);
        assertEquals(again.applyAsDouble(28) + HEARD_AFTER_S, eighth.get(1), 0.2);
        assertTrue(beats.stream().anyMatch(b -> b.bar().equals("15")));
    }

    @Test
    void theWrongPartIsRefusedInOneSentence() throws Exception {
        float[] recording = silence(30);
        Section section = new Section(7, 4, 440);
        section.play(Section.tune(13, 8), 0, 8, q -> 1 + 0.7 * q, recording);
        section.noise(recording, -30);
        Path wav = folder.resolve("other.wav");
        Section.write(recording, wav);
        // another tune in a far key
        int[] scale = {63, 65, 66, 68, 70, 71, 73, 75, 77, 78, 80, 82, 83, 85, 87};
        HeardBeats wrong = new HeardBeats(Section.tune(14, 20, scale), wav);
        assertEquals(
                "The sound of other.wav does not fit the part tune; check that it is the right part, or give the beats"
                        + " as a list.",
                assertThrows(InputException.class, wrong::beats).getMessage());
    }

    @Test
    void aPartWithoutNotesSaysSo() {
        Part mute = new Part("strokes", Section.tune(1, 2).bars(), List.of());
        HeardBeats deaf = new HeardBeats(mute, folder.resolve("any.wav"));
        assertTrue(assertThrows(InputException.class, deaf::beats).getMessage().contains("holds no notes"));
    }
}
