package tuttarco.review;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Stands for the window's thread: what it is told is done by the test's own thread while that waits for something. */
final class WindowThread implements Executor {
    private static final long PATIENCE_S = 60;

    private final BlockingQueue<Runnable> told = new LinkedBlockingQueue<>();

    @Override
    public void execute(Runnable work) {
        told.add(work);
    }

    /** Does what was told until something is so. */
    void until(BooleanSupplier so) throws InterruptedException {
        while (!so.getAsBoolean()) {
            Runnable next = told.poll(PATIENCE_S, TimeUnit.SECONDS);
            if (next == null) {
                throw new AssertionError("waited in vain");
            }
            next.run();
        }
    }
}
