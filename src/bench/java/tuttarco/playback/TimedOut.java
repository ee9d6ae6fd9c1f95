package tuttarco.playback;

import java.nio.file.Path;
import tuttarco.video.ClipSound;

/** A sound output that takes sound as fast as it would be heard and is not heard: for machines without a sound card. */
public final class TimedOut implements SoundOut {
    private static final int CAPACITY = ClipSound.SAMPLES_PER_S / 5;

    private long written;
    private long startedNs;
    private boolean running;

    /** Opens a clip that is heard nowhere. */
    public static ClipPlayer open(Path clip, Sink sink) throws Exception {
        return ClipPlayer.open(clip, sink, new TimedOut());
    }

    @Override
    public synchronized void start() {
        startedNs = System.nanoTime();
        running = true;
    }

    @Override
    public synchronized void halt() {
        running = false;
        written = 0;
    }

    private long played() {
        long due = running ? (long) ((System.nanoTime() - startedNs) / 1e9 * ClipSound.SAMPLES_PER_S) : 0;
        if (due > written) {
            // without sound no time passes
            startedNs += (long) ((due - written) * 1e9 / ClipSound.SAMPLES_PER_S);
            due = written;
        }
        return due;
    }

    @Override
    public synchronized double playedS() {
        return (double) played() / ClipSound.SAMPLES_PER_S;
    }

    @Override
    public synchronized int room() {
        return (int) (CAPACITY - (written - played()));
    }

    @Override
    public synchronized void write(float[] block) {
        written += block.length / ClipSound.CHANNELS;
    }

    @Override
    public void close() {
        halt();
    }
}
