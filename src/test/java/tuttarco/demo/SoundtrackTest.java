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
    private static final double SPEAK_S = 0.025;
    private static final ToneStroke DOWN = new ToneStroke(0.5, 1.5, 0, 1, 440, SPEAK_S);
    private static final ToneStroke UP = new ToneStroke(1.5, 2.5, 1, 0, 440, SPEAK_S);
    private static final Tones.Line LINE = new Tones.Line(Voice.PLAIN, List.of(DOWN, UP));
    private static final Tones ONE = new Tones(List.of(LINE));
    private static final Clicks CLICKS =
            new Clicks(new BeatMap(List.of(new Beat("1", 1, 0.5), new Beat("1", 2, 1.013), new Beat("2", 1, 1.4))));
    private static final Talk TALK = Talk.during(List.of(new Spell(0.4, 1.9, 0)), 3);

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
        assertEquals(rms(heard, 0.95), rms(heard, 1.95), 0.01);
        assertEquals(0, rms(heard, 0.2), 0);
        assertEquals(0, rms(heard, 2.7), 0);
    }

    @Test
    void loudnessFollowsThePlaceAndDipsAtEachChange() {
        assertEquals(0, Tones.loudness(DOWN, 0.5), 1e-12);
        assertEquals(0.5 * (1 - 0.6 * 0.0125), Tones.loudness(DOWN, 0.5 + SPEAK_S / 2), 1e-12);
        assertEquals((1 + Tones.AT_TIP) / 2, Tones.loudness(DOWN, 1), 1e-12);
        assertEquals((1 + Tones.AT_TIP) / 2, Tones.loudness(UP, 2), 1e-12);
        assertEquals(0, Tones.loudness(DOWN, 1.5), 1e-12);
        assertEquals(0, Tones.loudness(UP, 1.5), 1e-12);
    }

    @Test
    void aToneHasItsPitch() {
        float[] heard = ONE.between(0.6, 1.1);
        assertEquals(220, rises(heard), 1, "440 Hz for half a second");
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

    /** No bow, no breath, no noise: what is talked lies within its time, and something is. */
    @Test
    void talkFillsItsTimeAndNoOther() {
        float[] heard = TALK.between(0, 2.5);
        assertEquals(0, peak(heard, 0, (int) (0.4 * RATE)), 0);
        assertEquals(0, peak(heard, (int) Math.ceil(1.9 * RATE), heard.length), 0);
        for (double fromS = 0.6; fromS < 1.6; fromS += 0.25) {
            assertTrue(rms(heard, fromS) > 0.01, "at " + fromS);
        }
    }

    @Test
    void anyStretchIsThatOfTheWhole() {
        for (Soundtrack track : List.of(ONE, CLICKS, TALK, new Together(List.of(ONE, TALK)))) {
            float[] whole = track.between(0, 2);
            assertArrayEquals(whole, inFrames(60, i -> track.between(i / 30.0, (i + 1) / 30.0)));
        }
    }

    @Test
    void thingsHeardTogetherAddUp() {
        float[] one = ONE.between(0, 2);
        float[] talk = TALK.between(0, 2);
        float[] both = new Together(List.of(ONE, TALK)).between(0, 2);
        for (int i = 0; i < both.length; i += 100) {
            assertEquals(one[i] + talk[i], both[i], 1e-6);
        }
    }

    /** In the open air a microphone bends what is loud and adds nothing: its curve is the hyperbolic tangent. */
    @Test
    void theOpenAirAddsNothing() {
        float[] dry = ONE.between(0, 3);
        float[] heard = new Microphone(ONE, Acoustics.OPEN_AIR, 1).until(3);
        assertEquals(dry.length, heard.length);
        for (int i = 0; i < heard.length; i += 100) {
            assertEquals(Math.tanh(dry[i]), heard[i], 1e-6);
        }
    }

    @Test
    void whatIsHeardDoesNotDependOnTheBlocksAndOnlyTheSeedChangesIt() {
        float[] whole = new Microphone(ONE, Acoustics.HALL, 1).until(2);
        Microphone again = new Microphone(ONE, Acoustics.HALL, 1);
        assertArrayEquals(whole, inFrames(60, i -> again.until((i + 1) / 30.0)));
        float[] other = new Microphone(ONE, Acoustics.HALL, 2).until(2);
        assertTrue(rms(whole, 0.1) > 0 && other[RATE / 10] != whole[RATE / 10], "noise is another");
    }

    /**
     * Echoes are said to die away by 60 dB in a time, so in a third of it by 20 dB: as much as all that is still to come is
     * less then (M. Schroeder, New Method of Measuring Reverberation Time, J. Acoust. Soc. Am. 37, 1965).
     */
    @ParameterizedTest
    @CsvSource({"0.5", "1.6"})
    void echoesDieAwayInTheirTime(double echoesS) {
        // so short that it has all pitches
        ToneStroke spark = new ToneStroke(0, 0.002, 0, 0, 440, 0.001);
        Tones sparks = new Tones(List.of(new Tones.Line(Voice.PLAIN, List.of(spark))));
        float[] heard = new Microphone(sparks, new Acoustics(echoesS, Double.NEGATIVE_INFINITY), 1).until(5);
        assertEquals(20, 10 * Math.log10(energyFrom(heard, 0.2) / energyFrom(heard, 0.2 + echoesS / 3)), 3);
    }

    private static double energyFrom(float[] samples, double fromS) {
        double energy = 0;
        for (int i = (int) Math.round(fromS * RATE); i < samples.length; i++) {
            energy += (double) samples[i] * samples[i];
        }
        return energy;
    }

    @Test
    void aRoomIsAsLoudByItselfAsItSays() {
        Clicks silent = new Clicks(new BeatMap(List.of(new Beat("1", 1, 100), new Beat("1", 2, 101))));
        float[] heard = new Microphone(silent, new Acoustics(0, -40), 1).until(20);
        double square = 0;
        for (float sample : heard) {
            square += (double) sample * sample / heard.length;
        }
        // slow noise goes round some two hundred times in that time, so that its power is sure to a tenth or so
        assertEquals(-40, 10 * Math.log10(square), 1);
    }

    @Test
    void sixtyPlayersInStepDoNotClip() {
        Tones sixty = new Tones(Collections.nCopies(60, LINE));
        float[] heard = new Microphone(sixty, Acoustics.HALL, 1).until(3);
        double peak = peak(heard, 0, heard.length);
        assertTrue(peak > 0.9 && peak <= 1, "peak " + peak);
    }

    @Test
    void aSceneSoundsAsItSays() {
        Scene clicking = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA)));
        assertEquals(Optional.of(new Clicks(clicking.tempo().beats())), Soundtrack.of(clicking, Layout.of(clicking)));
    }

    @ParameterizedTest
    @CsvSource({
        "1,1,0,1,440,0.1",
        "1,NaN,0,1,440,0.1",
        "0,1,-0.1,1,440,0.1",
        "0,1,0,1.1,440,0.1",
        "0,1,NaN,1,440,0.1",
        "0,1,0,1,9000,0.1",
        "0,1,0,1,440,0",
        "0,1,0,1,440,NaN"
    })
    void refusesStrokesThatCannotBe(double startS, double endS, double from, double to, double hz, double speakS) {
        assertThrows(IllegalArgumentException.class, () -> new ToneStroke(startS, endS, from, to, hz, speakS));
    }

    private interface Frame {
        float[] samples(int index);
    }

    private static float[] inFrames(int frames, Frame frame) {
        float[] joined = new float[0];
        for (int i = 0; i < frames; i++) {
            float[] block = frame.samples(i);
            float[] longer = new float[joined.length + block.length];
            System.arraycopy(joined, 0, longer, 0, joined.length);
            System.arraycopy(block, 0, longer, joined.length, block.length);
            joined = longer;
        }
        return joined;
    }

    private static int rises(float[] samples) {
        int rises = 0;
        for (int i = 1; i < samples.length; i++) {
            rises += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
        }
        return rises;
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
