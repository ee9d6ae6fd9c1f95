package tuttarco.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.beats.Beat;
import tuttarco.files.InputException;
import tuttarco.score.Part;

/** Clicks whose every time is known: two bars for nothing, ten at one tempo, then a quicker one; some are missing. */
class ClickBeatsTest {
    private static final int BARS = 14;
    private static final int COUNTED_IN = 8;
    private static final int CLICKS = COUNTED_IN + 4 * BARS;
    private static final int QUICKER_FROM = 48;
    private static final double MISSING = 0.08;

    /** Power of the music where it is as loud as said, against full scale. */
    private static final double MUSIC_RMS = 0.2;

    private static final Part PART = Section.tune(21, BARS);

    @TempDir
    Path folder;

    private static double clickS(int click) {
        return 1 + 0.6 * Math.min(click, QUICKER_FROM) + 0.45 * Math.max(0, click - QUICKER_FROM);
    }

    /** Every second kind of metronome: a beep of 30 ms, higher on first beats, or a knock of 3 ms, louder on first beats. */
    private static void click(float[] into, int click, boolean beep, Random random) {
        int from = (int) Math.ceil(clickS(click) * Section.RATE);
        boolean strong = click % 4 == 0;
        int length = beep ? (int) (0.03 * Section.RATE) : 60;
        for (int i = 0; i < length; i++) {
            double beeping =
                    (1 - (double) i / length) * Math.sin(2 * Math.PI * (strong ? 1500 : 1000) * i / Section.RATE);
            double knocking = (strong ? 1.2 : 0.84) * random.nextGaussian() * Math.exp(-i / 20.0);
            into[from + i] += (float) (0.5 * (beep ? beeping : knocking));
        }
    }

    private Path recording(boolean beep, double music, double noise) throws IOException {
        Random random = new Random(4);
        float[] samples = new float[(int) ((clickS(CLICKS) + 1) * Section.RATE)];
        if (music > 0) {
            float[] played = new float[samples.length];
            new Section(3, 12, 440).play(PART, 0, BARS, q -> quarterS(q), played);
            double gain = music * MUSIC_RMS / Section.rms(played);
            for (int i = 0; i < samples.length; i++) {
                samples[i] += (float) (gain * played[i]);
            }
        }
        for (int i = 0; i < CLICKS; i++) {
            if (i == 0 || i == CLICKS - 1 || random.nextDouble() > MISSING) {
                click(samples, i, beep, random);
            }
        }
        for (int i = 0; i < samples.length; i++) {
            samples[i] += (float) (noise * random.nextGaussian());
        }
        Path wav = folder.resolve("clicks.wav");
        Section.write(samples, wav);
        return wav;
    }

    private static double quarterS(double quarters) {
        int click = COUNTED_IN + (int) Math.floor(quarters);
        return clickS(click) + (quarters - Math.floor(quarters)) * (clickS(click + 1) - clickS(click));
    }

    @ParameterizedTest
    @CsvSource({
        "true,0,0",
        "true,0.5,0",
        "true,1,0",
        "true,0,0.1",
        "true,0.5,0.06",
        "false,0,0",
        "false,0.5,0",
        "false,1,0",
        "false,0.5,0.06"
    })
    void everyBeatIsFoundWithItsError(boolean beep, double music, double noise) throws Exception {
        Path wav = recording(beep, music, noise);
        List<Beat> beats = new ClickBeats(PART, wav, Optional.empty(), List.of(new Beat("5", 3, clickS(26) + 0.1)))
                .beats()
                .beats();
        assertEquals(4 * BARS, beats.size());
        int within = 0;
        for (int i = 0; i < beats.size(); i++) {
            Beat beat = beats.get(i);
            assertEquals(Integer.toString(1 + i / 4), beat.bar());
            assertEquals(1 + i % 4, beat.beat());
            double errorS = Math.abs(beat.timeS() - clickS(COUNTED_IN + i));
            assertTrue(errorS < 0.02, beat + ": " + errorS);
            within += errorS <= 2 * beat.stderrS().orElseThrow() ? 1 : 0;
        }
        assertTrue(
                within >= 0.9 * beats.size(),
                within + " within two standard errors of " + beats.get(0).stderrS());
    }

    @Test
    void theFirstClickMayBeNumberedInstead() throws Exception {
        List<Beat> beats = new ClickBeats(PART, recording(true, 0, 0), Optional.of("3"), List.of())
                .beats()
                .beats();
        assertEquals("3", beats.get(0).bar());
        assertEquals(1, beats.get(0).beat());
        assertEquals(clickS(0), beats.get(0).timeS(), 0.01);
        assertEquals(4 * (BARS - 2), beats.size());
    }

    private static void assertRefused(String expected, ClickBeats beats) {
        InputException e = assertThrows(InputException.class, beats::beats);
        assertTrue(e.getMessage().startsWith(expected), e.getMessage());
    }

    @Test
    void clicksThatCannotBeNumberedAreRefused() throws Exception {
        Path wav = recording(true, 0, 0);
        assertRefused(
                "The part has no bar 99 for the first click;", new ClickBeats(PART, wav, Optional.of("99"), List.of()));
        Beat none = new Beat("2", 7, clickS(10));
        assertRefused(
                "The part has no bar 2 beat 7, which an anchor names;",
                new ClickBeats(PART, wav, Optional.empty(), List.of(none)));
        Beat between = new Beat("2", 1, clickS(12) + 0.3);
        assertRefused(
                "There is no click near the anchor bar 2 beat 1 at ",
                new ClickBeats(PART, wav, Optional.empty(), List.of(between)));
        Beat late = new Beat("2", 1, clickS(13));
        assertRefused("The anchor bar 2 beat 1 at ", new ClickBeats(PART, wav, Optional.of("1"), List.of(late)));
        assertRefused(
                "Fewer than two of the clicks",
                new ClickBeats(PART, wav, Optional.empty(), List.of(new Beat("14", 4, clickS(0)))));
    }

    @ParameterizedTest
    @CsvSource({"1,0", "12,0", "0,0.1"})
    void soundWithoutClicksIsRefused(int players, double noise) throws Exception {
        float[] samples = new float[40 * Section.RATE];
        if (players > 0) {
            new Section(9, players, 440).play(PART, 0, BARS, q -> 1 + 0.6 * q, samples);
        }
        Random random = new Random(2);
        for (int i = 0; i < samples.length; i++) {
            samples[i] += (float) (noise * random.nextGaussian());
        }
        Path wav = folder.resolve("music.wav");
        Section.write(samples, wav);
        assertRefused(
                "No regular clicks can be heard in music.wav;", new ClickBeats(PART, wav, Optional.of("1"), List.of()));
    }
}
