package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where notes lie in slowed sound: around their time divided by the speed. */
class SlowedSoundTest {
    private static final int NOTES = 8;
    private static final double EVERY_S = 1.013;
    private static final double NOTE_S = 0.3;

    /** Both channels of 20 ms. */
    private static final int BLOCK = ClipSound.SAMPLES_PER_S / 50 * ClipSound.CHANNELS;

    /** Half of what the notes sound at. */
    private static final double LOUD = 0.4;

    /** How much the two may differ, seconds. */
    private static final double APART_S = 0.035;

    /** As far as sound and picture may be apart, seconds; below half the speed, where the filter runs twice, so much of the clip. */
    private static final double FARTHEST_S = 0.04;

    private static final double FARTHEST_CLIP_S = 0.017;

    private static float[] notes() {
        float[] sound = new float[(int) ((NOTES + 1.5) * EVERY_S * ClipSound.SAMPLES_PER_S) * ClipSound.CHANNELS];
        for (int i = 0; i < sound.length / ClipSound.CHANNELS; i++) {
            double timeS = (double) i / ClipSound.SAMPLES_PER_S;
            int note = (int) (timeS / EVERY_S);
            double sinceS = timeS - note * EVERY_S;
            if (note >= 1 && sinceS < NOTE_S) {
                float value = (float) (0.8 * Math.sin(2 * Math.PI * (440 + 37 * note) * sinceS));
                sound[ClipSound.CHANNELS * i] = value;
                sound[ClipSound.CHANNELS * i + 1] = value;
            }
        }
        return sound;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.35, 0.5, 0.6, 0.75, 0.9})
    void notesBeginAsMuchEarlyAsTheyEndLate(double speed) {
        double earlyS = 0;
        double lateS = 0;
        try (SlowedSound slowed = new SlowedSound(speed)) {
            float[] notes = notes();
            float[] heard =
                    new float[(int) ((NOTES + 1) * EVERY_S / speed * ClipSound.SAMPLES_PER_S) * ClipSound.CHANNELS];
            int taken = 0;
            for (int from = 0; from + BLOCK <= notes.length; from += BLOCK) {
                slowed.put(Arrays.copyOfRange(notes, from, from + BLOCK));
                taken += slowed.take(heard, taken, heard.length / ClipSound.CHANNELS - taken);
            }
            for (int note = 1; note <= NOTES; note++) {
                double fromS = note * EVERY_S / speed;
                double toS = (note * EVERY_S + NOTE_S) / speed;
                int first = sample(fromS - 0.3);
                while (Math.abs(heard[ClipSound.CHANNELS * first]) < LOUD) {
                    first++;
                }
                int last = sample(toS + 0.3);
                while (Math.abs(heard[ClipSound.CHANNELS * last]) < LOUD) {
                    last--;
                }
                earlyS += (fromS - seconds(first)) / NOTES;
                lateS += (seconds(last) - toS) / NOTES;
            }
        }
        assertEquals(earlyS, lateS, APART_S, "early " + earlyS + " s, late " + lateS + " s");
        assertTrue(
                Math.max(earlyS, lateS) < Math.max(FARTHEST_S, FARTHEST_CLIP_S / speed),
                "early " + earlyS + " s, late " + lateS + " s");
    }

    private static int sample(double timeS) {
        return (int) (timeS * ClipSound.SAMPLES_PER_S);
    }

    private static double seconds(int sample) {
        return (double) sample / ClipSound.SAMPLES_PER_S;
    }
}
