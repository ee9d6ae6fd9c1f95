package tuttarco.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets the work stop in good order when the user presses Ctrl-C or the machine shuts down: the working thread is
 * interrupted and gets a moment to take away what it has half written. The shell is told 130.
 */
final class Interruption implements AutoCloseable {
    /** How long the work may take to clean up, seconds. */
    private static final long GRACE_S = 20;

    private final CountDownLatch done = new CountDownLatch(1);
    private final Thread hook;

    Interruption() {
        Thread worker = Thread.currentThread();
        hook = new Thread(() -> stop(worker), "stop-in-good-order");
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether the program is being ended: hooks are only taken back before that. */
    static boolean programIsEnding() {
        try {
            Runtime.getRuntime().removeShutdownHook(new Thread());
            return false;
        } catch (IllegalStateException ending) {
            return true;
        }
    }

    private void stop(Thread worker) {
        if (done.getCount() == 0) {
            return;
        }
        worker.interrupt();
        try {
            if (!done.await(GRACE_S, TimeUnit.SECONDS)) {
                System.err.println("Tuttarco was stopped while it was still busy.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        done.countDown();
    }
}
