package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.files.InputException;

class SoundTrackTest {
    /** A click's first sample, seconds. */
    private static final double CLICK_S = 1.25;

    @TempDir
    Path folder;

    /** Writes 16-bit PCM with a given number of channels, every channel alike. */
    private static void wav(Path file, int rateHz, int channels, double lengthS, DoubleUnaryOperator sound)
            throws IOException {
        int count = (int) Math.round(lengthS * rateHz);
        byte[] bytes = new byte[2 * channels * count];
        for (int i = 0; i < count * channels; i++) {
            int value = (int) Math.round(32_767 * sound.applyAsDouble((double) (i / channels) / rateHz));
            bytes[2 * i] = (byte) value;
            bytes[2 * i + 1] = (byte) (value >> 8);
        }
        AudioFormat format = new AudioFormat(rateHz, 16, channels, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(bytes), format, count),
                AudioFileFormat.Type.WAVE,
                file.toFile());
    }

    private static float[] all(SoundTrack track, int blockLength) {
        float[] all = new float[10 * SoundTrack.SAMPLES_PER_S];
        float[] block = new float[blockLength];
        int length = 0;
        for (int count = track.read(block); count > 0; count = track.read(block)) {
            System.arraycopy(block, 0, all, length, count);
            length += count;
        }
        return Arrays.copyOf(all, length);
    }

    @ParameterizedTest
    @CsvSource({"22050,1", "44100,1", "48000,1", "44100,2"})
    void aToneKeepsItsHeightAndItsTimeAtAnyRate(int rateHz, int channels) throws Exception {
        // two channels alike are mixed at 3 dB below each, as powers (common practice)
        double loudest = 0.5 * Math.sqrt(channels);
        Path file = folder.resolve("tone.wav");
        wav(file, rateHz, channels, 2, t -> 0.5 * Math.sin(2 * Math.PI * 440 * t));
        try (SoundTrack track = SoundTrack.open(file)) {
            assertEquals(0, track.startS(), 0);
            float[] heard = all(track, 1000);
            assertEquals(2 * SoundTrack.SAMPLES_PER_S, heard.length, 64);
            for (int i = 2000; i < 40_000; i++) {
                double expected = loudest * Math.sin(2 * Math.PI * 440 * i / SoundTrack.SAMPLES_PER_S);
                assertEquals(expected, heard[i], 0.01, "sample " + i);
            }
            assertEquals(Optional.empty(), track.trouble());
        }
    }

    @Test
    void theBlocksLengthDoesNotMatter() throws Exception {
        Path file = folder.resolve("tone.wav");
        wav(file, 44_100, 1, 1, t -> Math.sin(2 * Math.PI * 300 * t * t));
        try (SoundTrack small = SoundTrack.open(file);
                SoundTrack large = SoundTrack.open(file)) {
            float[] whole = all(large, 100_000);
            assertTrue(whole.length > 20_000);
            assertArrayEquals(whole, all(small, 37));
        }
    }

    /** AAC begins with samples of its own, which must not shift the sound against the picture. */
    @Test
    void aClickInAClipComesAtItsTimeInThePicture() throws Exception {
        Path file = folder.resolve("click.mp4");
        int rate = 44_100;
        float[] sound = new float[2 * rate];
        for (int i = 0; i < 40; i++) {
            sound[(int) Math.round(CLICK_S * rate) + i] = i % 2 == 0 ? 0.9f : 0.5f;
        }
        try (ClipWriter writer = ClipWriter.open(file, 64, 64, 25, 100_000, Optional.of(SoundFormat.mono(rate)))) {
            writeWithSound(writer, sound, rate);
        }
        try (SoundTrack track = SoundTrack.open(file)) {
            float[] heard = all(track, 4096);
            int loudest = 0;
            for (int i = 0; i < heard.length; i++) {
                loudest = Math.abs(heard[i]) > Math.abs(heard[loudest]) ? i : loudest;
            }
            assertEquals(CLICK_S, track.startS() + (double) loudest / SoundTrack.SAMPLES_PER_S, 0.003);
        }
    }

    private static void writeWithSound(ClipWriter writer, float[] sound, int rate) throws Exception {
        BufferedImage picture = new BufferedImage(64, 64, BufferedImage.TYPE_3BYTE_BGR);
        int frames = 50;
        for (int f = 0; f < frames; f++) {
            writer.frame(f / 25.0, picture);
            writer.sound(Arrays.copyOfRange(sound, f * rate / 25, (f + 1) * rate / 25));
        }
        writer.finish();
    }

    @Test
    void aClipWithoutSoundSaysSo() throws Exception {
        Path file = folder.resolve("silent.mkv");
        TestClips.write(file, List.of(0.0, 0.1, 0.2), t -> TestClips.plain(64, 48, 90));
        InputException e = assertThrows(InputException.class, () -> SoundTrack.open(file));
        assertEquals(
                "silent.mkv has no sound to hear beats in; give them as a list or a steady tempo.", e.getMessage());
    }

    @Test
    void aFileThatIsNoRecordingSaysSo() throws Exception {
        Path file = folder.resolve("text.wav");
        Files.writeString(file, "RIFF but then only words");
        assertThrows(InputException.class, () -> SoundTrack.open(file));
        assertThrows(InputException.class, () -> SoundTrack.open(folder.resolve("nowhere.wav")));
    }
}
