package tuttarco.playback;

import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import tuttarco.video.ClipSound;

/** The computer's sound output. */
final class SoundCard implements SoundOut {
    private static final int BYTES = Short.BYTES;

    /** Sound that waits to be heard, seconds: enough for a thread to be late, short enough for orders to be followed at once (chosen). */
    private static final double WAITING_S = 0.2;

    private final SourceDataLine line;
    private byte[] bytes = new byte[0];
    private long before;

    private SoundCard(SourceDataLine line) {
        this.line = line;
    }

    /** The usual output, if there is one that is free. */
    static Optional<SoundOut> open() {
        AudioFormat format =
                new AudioFormat(ClipSound.SAMPLES_PER_S, BYTES * Byte.SIZE, ClipSound.CHANNELS, true, false);
        try {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            line.open(format, (int) (WAITING_S * ClipSound.SAMPLES_PER_S * format.getFrameSize()));
            return Optional.of(new SoundCard(line));
        } catch (LineUnavailableException | IllegalArgumentException e) {
            // told to the user by the player's note: there is none, or it is in use
            return Optional.empty();
        }
    }

    @Override
    public void start() {
        line.start();
    }

    @Override
    public void halt() {
        line.stop();
        line.flush();
        before = line.getLongFramePosition();
    }

    @Override
    public double playedS() {
        return Math.max(0, line.getLongFramePosition() - before) / (double) ClipSound.SAMPLES_PER_S;
    }

    @Override
    public int room() {
        return line.available() / (ClipSound.CHANNELS * BYTES);
    }

    @Override
    public void write(float[] block) {
        if (bytes.length != block.length * BYTES) {
            bytes = new byte[block.length * BYTES];
        }
        for (int i = 0; i < block.length; i++) {
            int value = Math.round(Math.max(-1, Math.min(1, block[i])) * Short.MAX_VALUE);
            bytes[BYTES * i] = (byte) value;
            bytes[BYTES * i + 1] = (byte) (value >> Byte.SIZE);
        }
        line.write(bytes, 0, bytes.length);
    }

    @Override
    public void close() {
        line.close();
    }
}
