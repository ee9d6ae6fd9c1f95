package tuttarco.playback;

import java.util.Arrays;
import tuttarco.video.ClipSound;

/**
 * An output whose time passes only while somebody waits for it, and no further than there is sound: whatever the machine
 * does, nothing is late, unless time is told to leap.
 */
final class SimulatedOut implements SoundOut {
    private static final int CAPACITY = ClipSound.SAMPLES_PER_S / 5;

    /** Samples of the left channel since the last start: those that were heard, and after them those that wait. */
    private final float[] samples = new float[1 << 20];

    private float[] heard = {};
    private int written;
    private int played;
    private int leapTo;
    private boolean running;
    private boolean closed;

    @Override
    public synchronized void start() {
        running = true;
    }

    @Override
    public synchronized void halt() {
        running = false;
        heard = Arrays.copyOf(samples, played);
        played = 0;
        written = 0;
        leapTo = 0;
    }

    @Override
    public synchronized double playedS() {
        return (double) played / ClipSound.SAMPLES_PER_S;
    }

    @Override
    public synchronized int room() {
        return CAPACITY - (written - played);
    }

    @Override
    public synchronized void write(float[] block) {
        for (int i = 0; i < block.length; i += ClipSound.CHANNELS) {
            samples[written++] = block[i];
        }
        notifyAll();
    }

    /** So much more passes at once the next time somebody waits, unheard, as when a machine is too busy. */
    synchronized void leap(double seconds) {
        leapTo = played + (int) (seconds * ClipSound.SAMPLES_PER_S);
    }

    @Override
    public synchronized void await(double playedS) throws InterruptedException {
        int until = Math.max(leapTo, (int) Math.floor(playedS * ClipSound.SAMPLES_PER_S) + 1);
        while (running && played < until && written == played) {
            wait(10);
        }
        written = Math.max(written, leapTo);
        if (running) {
            played = Math.max(played, Math.min(written, until));
        }
    }

    /** What was heard since the last start; after a halt, up to that. */
    synchronized float[] heard() {
        return running ? Arrays.copyOf(samples, played) : heard;
    }

    @Override
    public synchronized void close() {
        closed = true;
    }

    synchronized boolean closed() {
        return closed;
    }
}
