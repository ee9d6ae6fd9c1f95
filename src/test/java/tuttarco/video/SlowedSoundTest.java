package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where notes begin in slowed sound: at their time divided by the speed. */
class SlowedSoundTest {
    private static final int NOTES = 8;
    private static final double EVERY_S = 1.013;
    private static final double NOTE_S = 0.3;

    /** Both channels of 20 ms. */
    private static final int BLOCK = ClipSound.SAMPLES_PER_S / 50 * ClipSound.CHANNELS;

    /** Less than half of what sound and picture may be apart, 40 ms; seconds. */
    private static final double APART_S = 0.018;

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
    void notesBeginAtTheirTimeOnAverage(double speed) {
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
                double dueS = note * EVERY_S / speed;
                int sample = (int) ((dueS - 0.3) * ClipSound.SAMPLES_PER_S);
                while (Math.abs(heard[ClipSound.CHANNELS * sample]) < 0.4) {
                    sample++;
                }
                lateS += ((double) sample / ClipSound.SAMPLES_PER_S - dueS) / NOTES;
            }
        }
        assertEquals(0, lateS, APART_S);
    }
}
