package tuttarco.playback;

import java.util.Optional;

/** Hands runs from one thread to another; a run that was not taken yet gives way to the next. */
final class Handing {
    private Optional<Run> waiting = Optional.empty();
    private boolean closed;

    synchronized void hand(Run run) {
        waiting = Optional.of(run);
        notifyAll();
    }

    /** Waits for a run; empty if none will come any more. */
    synchronized Optional<Run> next() throws InterruptedException {
        while (waiting.isEmpty() && !closed) {
            wait();
        }
        Optional<Run> taken = closed ? Optional.empty() : waiting;
        waiting = Optional.empty();
        return taken;
    }

    synchronized void close() {
        closed = true;
        notifyAll();
    }
}
