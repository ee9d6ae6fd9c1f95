package tuttarco.playback;

/** The computer's clock, where there is no sound to go by. */
final class SteadyClock implements Clock {
    private volatile long startedNs;
    private volatile boolean running;

    @Override
    public void start() {
        startedNs = System.nanoTime();
        running = true;
    }

    @Override
    public void halt() {
        running = false;
    }

    @Override
    public double playedS() {
        return running ? (System.nanoTime() - startedNs) / 1e9 : 0;
    }

    @Override
    public void close() {
        halt();
    }
}
