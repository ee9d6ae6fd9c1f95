package tuttarco.demo;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import tuttarco.video.SoundFormat;

/** Writes sound without a picture, one channel of 16-bit samples. */
final class WaveFile {
    private static final int BYTES = Short.BYTES;

    private WaveFile() {}

    /** Writes samples from -1 to 1. */
    static void write(float[] samples, SoundFormat format, Path file) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(BYTES * samples.length).order(ByteOrder.LITTLE_ENDIAN);
        for (float sample : samples) {
            bytes.putShort((short) Math.round(sample * Short.MAX_VALUE));
        }
        AudioFormat pcm = new AudioFormat(format.samplesPerS(), BYTES * Byte.SIZE, 1, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(bytes.array()), pcm, samples.length),
                AudioFileFormat.Type.WAVE,
                file.toFile());
    }
}
