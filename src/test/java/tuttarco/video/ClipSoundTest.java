package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClipSoundTest {
    private static final double TONE_HZ = 440;

    /** A tone that begins every half second and dies away, so that a place in it is known. */
    private static double plucked(double timeS) {
        double sinceS = timeS % 0.5;
        return 0.6 * Math.exp(-8 * sinceS) * Math.sin(2 * Math.PI * TONE_HZ * sinceS);
    }

    @TempDir
    Path folder;

    private ClipSound sound(double soundS) throws Exception {
        Path file = NumberedClip.write(
                folder.resolve("sound.mp4"), NumberedClip.evenly(120, 30), Optional.of(ClipSoundTest::plucked), soundS);
        try (Clip clip = Clip.open(file)) {
            return ClipSound.open(clip.facts()).orElseThrow();
        }
    }

    private static float[] read(ClipSound sound, int samples) {
        float[] block = new float[samples * ClipSound.CHANNELS];
        sound.read(block, 0, samples);
        return block;
    }

    /** Where a second sound lies later than the first, samples, at most so many; by the largest correlation. */
    private static int lag(float[] heard, double fromS, int most) {
        int samples = heard.length / ClipSound.CHANNELS;
        int best = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int lag = -most; lag <= most; lag++) {
            double sum = 0;
            for (int i = 0; i < samples; i++) {
                sum += heard[i * ClipSound.CHANNELS] * plucked(fromS + (double) (i - lag) / ClipSound.SAMPLES_PER_S);
            }
            if (sum > highest) {
                highest = sum;
                best = lag;
            }
        }
        return best;
    }

    @Test
    void anyPlaceIsFoundToTheSample() throws Exception {
        Random random = new Random(1);
        try (ClipSound sound = sound(4)) {
            float[] start = read(sound, 24_000);
            int atStart = lag(start, 0, 100);
            for (int i = 0; i < 20; i++) {
                long at = 10_000L + random.nextInt(150_000);
                sound.seek(at);
                assertEquals(at, sound.at());
                float[] heard = read(sound, 24_000);
                assertEquals(at + 24_000, sound.at());
                assertEquals(atStart, lag(heard, (double) at / ClipSound.SAMPLES_PER_S, 100), "from sample " + at);
            }
            // the writer's coder may shift the whole by less than one of its blocks of 1024
            assertTrue(Math.abs(atStart) < 100, atStart + " samples");
        }
    }

    @Test
    void whatIsReadInBlocksIsWhatIsReadAtOnce() throws Exception {
        try (ClipSound sound = sound(4)) {
            sound.seek(48_000);
            float[] atOnce = read(sound, 30_000);
            sound.seek(48_000);
            for (int i = 0; i < 30; i++) {
                float[] block = read(sound, 1000);
                for (int j = 0; j < block.length; j++) {
                    assertEquals(atOnce[i * block.length + j], block[j], 1e-6, "block " + i);
                }
            }
        }
    }

    @Test
    void afterItsEndThereIsSilence() throws Exception {
        try (ClipSound sound = sound(2)) {
            sound.seek(3 * 48_000);
            for (float sample : read(sound, 48_000)) {
                assertEquals(0, sample, 0);
            }
            sound.seek(-480);
            float[] before = read(sound, 2400);
            for (int i = 0; i < 480 - 100; i++) {
                assertEquals(0, before[i * ClipSound.CHANNELS], 0);
            }
            double loudest = 0;
            for (float sample : before) {
                loudest = Math.max(loudest, Math.abs(sample));
            }
            assertTrue(loudest > 0.2, "then it sounds");
        }
    }

    @Test
    void aClipWithoutSoundHasNone() throws Exception {
        Path file = NumberedClip.write(folder.resolve("silent.mp4"), NumberedClip.evenly(10, 30), Optional.empty(), 0);
        try (Clip clip = Clip.open(file)) {
            assertTrue(ClipSound.open(clip.facts()).isEmpty());
        }
    }

    /** What goes in at a time comes out at that time over the speed, and as high as it was. */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 0.75, 1})
    void slowedSoundKeepsItsPitchAndItsPlace(double speed) {
        int rate = ClipSound.SAMPLES_PER_S;
        int bursts = 8;
        int outSamples = (int) (bursts * rate / speed);
        float[] out = new float[outSamples * ClipSound.CHANNELS];
        try (SlowedSound slowed = new SlowedSound(speed)) {
            int got = 0;
            for (int at = 0; got < outSamples; at += 1024) {
                float[] block = new float[1024 * ClipSound.CHANNELS];
                for (int i = 0; i < 1024; i++) {
                    double timeS = (double) (at + i) / rate;
                    // half a second of tone in the middle of every second
                    boolean sounds = timeS % 1 >= 0.25 && timeS % 1 < 0.75;
                    float sample = sounds ? (float) (0.5 * Math.sin(2 * Math.PI * TONE_HZ * timeS)) : 0;
                    block[2 * i] = sample;
                    block[2 * i + 1] = sample;
                }
                slowed.put(block);
                got += slowed.take(out, got, outSamples - got);
            }
        }
        for (int burst = 0; burst < bursts; burst++) {
            double beginsS = edgeS(out, (burst + 0.25) / speed, true);
            double endsS = edgeS(out, (burst + 0.75) / speed, false);
            assertEquals((burst + 0.25) / speed, beginsS, 0.04, "burst " + burst + " begins");
            assertEquals((burst + 0.75) / speed, endsS, 0.04, "burst " + burst + " ends");
            assertEquals(TONE_HZ, hertz(out, beginsS + 0.05, endsS - 0.05), 6, "burst " + burst);
        }
    }

    /** Where the loudness passes the half nearest to a time, seconds. */
    private static double edgeS(float[] out, double nearS, boolean rising) {
        int rate = ClipSound.SAMPLES_PER_S;
        double bestS = Double.POSITIVE_INFINITY;
        for (double s = nearS - 0.2; s < nearS + 0.2; s += 0.001) {
            boolean before = loud(out, (int) ((s - 0.003) * rate));
            boolean after = loud(out, (int) (s * rate));
            if (before != rising && after == rising && Math.abs(s - nearS) < Math.abs(bestS - nearS)) {
                bestS = s;
            }
        }
        return bestS;
    }

    private static boolean loud(float[] out, int from) {
        double sum = 0;
        int count = ClipSound.SAMPLES_PER_S * 3 / 1000;
        for (int i = from; i < from + count && i < out.length / 2; i++) {
            sum += out[2 * Math.max(0, i)] * out[2 * Math.max(0, i)];
        }
        return Math.sqrt(sum / count) > 0.17;
    }

    private static double hertz(float[] out, double fromS, double toS) {
        int from = (int) (fromS * ClipSound.SAMPLES_PER_S);
        int to = (int) (toS * ClipSound.SAMPLES_PER_S);
        int rises = 0;
        for (int i = from + 1; i < to; i++) {
            if (out[2 * i - 2] < 0 && out[2 * i] >= 0) {
                rises++;
            }
        }
        return rises / (toS - fromS);
    }
}
