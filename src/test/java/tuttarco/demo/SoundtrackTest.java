package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;

/** Down-bows decay and up-bows grow (common practice: the frog is the strong end of the bow). */
class SoundtrackTest {
    private static final int RATE = Soundtrack.FORMAT.samplesPerS();
    private static final ToneStroke DOWN = new ToneStroke(0.5, 1.5, 0, 1, 440);
    private static final ToneStroke UP = new ToneStroke(1.5, 2.5, 1, 0, 440);
    private static final Tones ONE = new Tones(List.of(List.of(DOWN, UP)));
    private static final Clicks CLICKS =
            new Clicks(new BeatMap(List.of(new Beat("1", 1, 0.5), new Beat("1", 2, 1.013), new Beat("2", 1, 1.4))));

    @Test
    void aDownBowDecaysAndAnUpBowGrows() {
        float[] heard = ONE.between(0, 3);
        assertEquals(3 * RATE, heard.length);
        // tenths of a second, without the first and last, in which the tone speaks and ends
        for (int i = 2; i < 9; i++) {
            assertTrue(rms(heard, 0.5 + 0.1 * i) < rms(heard, 0.4 + 0.1 * i), "down at tenth " + i);
            assertTrue(rms(heard, 1.5 + 0.1 * i) > rms(heard, 1.4 + 0.1 * i), "up at tenth " + i);
        }
        // the middle of the bow sounds the same either way
        assertEquals(rms(heard, 0.95), rms(heard, 1.95), 0.02);
        assertEquals(0, rms(heard, 0.2), 0);
        assertEquals(0, rms(heard, 2.7), 0);
    }

    @Test
    void loudnessFollowsThePlaceAndDipsAtEachChange() {
        assertEquals(0, Tones.loudness(DOWN, 0.5), 1e-12);
        assertEquals(0.5 * (1 - 0.6 * 0.0125), Tones.loudness(DOWN, 0.5 + Tones.SPEAK_S / 2), 1e-12);
        assertEquals((1 + Tones.AT_TIP) / 2, Tones.loudness(DOWN, 1), 1e-12);
        assertEquals((1 + Tones.AT_TIP) / 2, Tones.loudness(UP, 2), 1e-12);
        assertEquals(0, Tones.loudness(DOWN, 1.5), 1e-12);
        assertEquals(0, Tones.loudness(UP, 1.5), 1e-12);
    }

    @Test
    void aToneHasItsPitch() {
        float[] heard = ONE.between(0.6, 1.1);
        int rises = 0;
        for (int i = 1; i < heard.length; i++) {
            rises += heard[i - 1] < 0 && heard[i] >= 0 ? 1 : 0;
        }
        assertEquals(220, rises, 1, "440 Hz for half a second");
    }

    @Test
    void clicksBeginOnTheBeatsAndLastTheirLength() {
        float[] heard = CLICKS.between(0, 2);
        for (Beat beat : CLICKS.beats().beats()) {
            int first = (int) Math.ceil(beat.timeS() * RATE);
            int end = (int) Math.ceil((beat.timeS() + Clicks.LENGTH_S) * RATE);
            assertTrue(peak(heard, first, first + 60) > 0.7, beat.spoken());
            assertEquals(0, peak(heard, first - 1000, first), 0, beat.spoken());
            assertEquals(0, peak(heard, end, end + 1000), 0, beat.spoken());
        }
    }

    @ParameterizedTest
    @CsvSource({"0.5,1500", "1.013,1000", "1.4,1500"})
    void theFirstBeatOfABarIsHigher(double timeS, double hz) {
        float[] heard = CLICKS.between(timeS, timeS + Clicks.LENGTH_S);
        int turns = 0;
        for (int i = 1; i < heard.length; i++) {
            turns += heard[i - 1] < 0 != heard[i] < 0 ? 1 : 0;
        }
        assertEquals(2 * hz * Clicks.LENGTH_S, turns, 2);
    }

    @Test
    void beatsCloserThanAClickDoNotAddUp() {
        BeatMap close = new BeatMap(List.of(new Beat("1", 1, 0), new Beat("1", 2, 0.002), new Beat("1", 3, 0.004)));
        assertTrue(peak(new Clicks(close).between(0, 0.1), 0, RATE / 10) <= 0.8);
    }

    @Test
    void sixtyPlayersInStepDoNotClip() {
        float[] heard = new Tones(Collections.nCopies(60, List.of(DOWN, UP))).between(0, 3);
        double peak = peak(heard, 0, heard.length);
        assertTrue(peak > 0.9 && peak <= 1, "peak " + peak);
    }

    @Test
    void anyStretchIsThatOfTheWhole() {
        for (Soundtrack track : List.of(ONE, CLICKS)) {
            float[] whole = track.between(0, 2);
            float[] joined = new float[whole.length];
            int at = 0;
            for (int frame = 0; frame < 60; frame++) {
                float[] block = track.between(frame / 30.0, (frame + 1) / 30.0);
                System.arraycopy(block, 0, joined, at, block.length);
                at += block.length;
            }
            assertEquals(whole.length, at);
            assertArrayEquals(whole, joined);
        }
    }

    @Test
    void aSceneSoundsAsItSays() {
        Scene clicking = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA)));
        assertEquals(Optional.of(new Clicks(clicking.tempo().beats())), Soundtrack.of(clicking, Layout.of(clicking)));
    }

    @ParameterizedTest
    @CsvSource({"1,1,0,1,440", "1,NaN,0,1,440", "0,1,-0.1,1,440", "0,1,0,1.1,440", "0,1,NaN,1,440", "0,1,0,1,9000"})
    void refusesStrokesThatCannotBe(double startS, double endS, double from, double to, double hz) {
        assertThrows(IllegalArgumentException.class, () -> new ToneStroke(startS, endS, from, to, hz));
    }

    /** Root mean square over a tenth of a second. */
    private static double rms(float[] samples, double fromS) {
        int from = (int) Math.round(fromS * RATE);
        double sum = 0;
        for (int i = from; i < from + RATE / 10; i++) {
            sum += samples[i] * samples[i];
        }
        return Math.sqrt(sum / (RATE / 10));
    }

    private static double peak(float[] samples, int from, int to) {
        double peak = 0;
        for (int i = from; i < to; i++) {
            peak = Math.max(peak, Math.abs(samples[i]));
        }
        return peak;
    }
}
