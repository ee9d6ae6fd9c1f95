package tuttarco.playback;

import java.util.Optional;
import java.util.function.LongSupplier;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import tuttarco.video.ClipSound;

/**
 * The computer's sound output. One that is taken away while it plays no longer says how much was heard; playing then goes on
 * unheard by the computer's clock.
 */
final class SoundCard implements SoundOut {
    private static final int BYTES = Short.BYTES;
    private static final int FRAME_BYTES = BYTES * ClipSound.CHANNELS;

    /** Sound that waits to be heard, seconds: enough for a thread to be late, short enough for orders to be followed at once (chosen). */
    private static final double WAITING_S = 0.2;

    /** An output that has sound and plays no more of it for so long is gone, seconds: some buffers of any device (chosen). */
    private static final double GONE_S = 1;

    /** The same for one that has not begun yet, seconds: a sound server took up to 1.8 s to wake (four starts, 2026-11-26). */
    private static final double ASLEEP_S = 5;

    /**
     * Outputs tell in steps what they have played; in between it is told by the computer's clock, for so long, seconds (the steps
     * of ALSA and a sound server were 20 ms, a tenth of what waits, 2026-11-26).
     */
    private static final double STEP_S = WAITING_S / 10;

    private final SourceDataLine line;
    private final LongSupplier clockNs;
    private byte[] bytes = new byte[0];
    private long before;

    /**
     * Guarded by this: whether it runs; samples since it was halted that were given, that the line last told it had played and when it
     * first told them, and that were told on.
     */
    private boolean running;

    private long given;
    private long lastPlayed;
    private long playedOnNs;
    private long toldOn;
    private boolean gone;

    /**
     * @param line open
     * @param clockNs counts nanoseconds
     */
    SoundCard(SourceDataLine line, LongSupplier clockNs) {
        this.line = line;
        this.clockNs = clockNs;
    }

    /** The usual output, if there is one that is free. */
    static Optional<SoundOut> open() {
        AudioFormat format =
                new AudioFormat(ClipSound.SAMPLES_PER_S, BYTES * Byte.SIZE, ClipSound.CHANNELS, true, false);
        try {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            line.open(format, (int) (WAITING_S * ClipSound.SAMPLES_PER_S * format.getFrameSize()));
            return Optional.of(new SoundCard(line, System::nanoTime));
        } catch (LineUnavailableException | IllegalArgumentException e) {
            // told to the user by the player's note: there is none, or it is in use
            return Optional.empty();
        }
    }

    @Override
    public synchronized void start() {
        line.start();
        running = true;
        playedOnNs = clockNs.getAsLong();
    }

    @Override
    public synchronized void halt() {
        line.stop();
        line.flush();
        before = line.getLongFramePosition();
        running = false;
        given = 0;
        lastPlayed = 0;
        toldOn = 0;
    }

    @Override
    public double playedS() {
        return (double) played() / ClipSound.SAMPLES_PER_S;
    }

    /** Samples played since it was halted, never fewer than before; where the output is gone, as many as would have been by now. */
    private synchronized long played() {
        toldOn = Math.max(toldOn, playedByNow());
        return toldOn;
    }

    private long playedByNow() {
        double sinceS = (clockNs.getAsLong() - playedOnNs) / 1e9;
        if (gone) {
            return running ? lastPlayed + samples(sinceS) : 0;
        }
        long now = Math.max(0, line.getLongFramePosition() - before);
        if (now != lastPlayed || given <= now) {
            playedOn(now);
            return now;
        }
        if (running && sinceS > (now == 0 ? ASLEEP_S : GONE_S)) {
            gone = true;
            playedOn(toldOn);
            return toldOn;
        }
        return running && now > 0 ? Math.min(given, now + samples(Math.min(sinceS, STEP_S))) : now;
    }

    private void playedOn(long samples) {
        lastPlayed = samples;
        playedOnNs = clockNs.getAsLong();
    }

    private static long samples(double seconds) {
        return (long) (seconds * ClipSound.SAMPLES_PER_S);
    }

    @Override
    public synchronized int room() {
        return gone
                ? (int) Math.max(0, WAITING_S * ClipSound.SAMPLES_PER_S - (given - played()))
                : line.available() / FRAME_BYTES;
    }

    @Override
    public synchronized void write(float[] block) {
        given += block.length / ClipSound.CHANNELS;
        if (gone) {
            return;
        }
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
    public synchronized Optional<String> trouble() {
        return gone
                ? Optional.of(
                        "Nothing is heard any more, because the sound output is gone; open the take again to hear it"
                                + " through another.")
                : Optional.empty();
    }

    @Override
    public void close() {
        line.close();
    }
}
