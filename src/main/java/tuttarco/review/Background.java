package tuttarco.review;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import tuttarco.analysis.NothingSeenException;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;

/** Work that would keep the window waiting: done on threads of its own, its outcome told on the window's. */
public final class Background implements AutoCloseable {
    /** So long closing waits for stopped work to tidy up; seconds (chosen: a frame of a large clip takes less). */
    private static final long TIDYING_S = 2;

    private final Executor window;
    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "tuttarco-work");
        thread.setDaemon(true);
        return thread;
    });

    private final ExecutorService ordered =
            Executors.newSingleThreadExecutor(work -> new Thread(work, "tuttarco-saving"));

    /**
     * @param window runs what it is given on the window's thread, later, in the order given
     */
    public Background(Executor window) {
        this.window = window;
    }

    /** Work that gives something, or fails with a sentence. */
    @FunctionalInterface
    public interface Work<T> {
        T done() throws Exception;
    }

    /** Work that goes on; a new one is of no work. */
    public static final class Going {
        private Optional<Thread> thread = Optional.empty();
        private boolean stopped;

        /** Stops it; nothing more is told of it but that it has ended. Does nothing when it has. */
        public synchronized void stop() {
            stopped = true;
            thread.ifPresent(Thread::interrupt);
        }

        private synchronized boolean begins() {
            thread = Optional.of(Thread.currentThread());
            return !stopped;
        }

        /** The thread is another work's next, which nobody stopped. */
        private synchronized void ends() {
            thread = Optional.empty();
            Thread.interrupted();
        }

        private synchronized boolean stopped() {
            return stopped;
        }
    }

    /**
     * Begins a piece of work and returns at once.
     *
     * @param done takes what it gave
     * @param failed takes the sentence it failed with
     */
    public <T> Going run(Work<T> work, Consumer<T> done, Consumer<String> failed) {
        return run(work, done, failed, () -> {});
    }

    /**
     * Begins a piece of work and returns at once.
     *
     * @param done takes what it gave
     * @param failed takes the sentence it failed with
     * @param ended told last of all, also of work that was stopped: then it has left everything it used
     */
    public <T> Going run(Work<T> work, Consumer<T> done, Consumer<String> failed, Runnable ended) {
        Going going = new Going();
        threads.execute(() -> {
            Runnable outcome = going.begins() ? outcome(work, done, failed) : () -> {};
            going.ends();
            window.execute(() -> {
                if (!going.stopped()) {
                    outcome.run();
                }
                ended.run();
            });
        });
        return going;
    }

    /**
     * Begins a piece of work as soon as all that was begun this way before is done. It can't be stopped, and closing waits
     * for it: this is how things are saved.
     *
     * @param done takes what it gave
     * @param failed takes the sentence it failed with
     */
    public <T> void inOrder(Work<T> work, Consumer<T> done, Consumer<String> failed) {
        ordered.execute(() -> window.execute(outcome(work, done, failed)));
    }

    /** Runs something on the window's thread, later. */
    public void tell(Runnable told) {
        window.execute(told);
    }

    private static <T> Runnable outcome(Work<T> work, Consumer<T> done, Consumer<String> failed) {
        try {
            T given = work.done();
            return () -> done.accept(given);
        } catch (Exception e) {
            String sentence = sentence(e);
            return () -> failed.accept(sentence);
        }
    }

    /** What went wrong, in one sentence. */
    private static String sentence(Exception e) {
        if (e instanceof InputException || e instanceof NothingSeenException || e instanceof OutputException) {
            return Plain.line(e.getMessage());
        }
        if (e instanceof InterruptedException) {
            return "This was stopped.";
        }
        return "Tuttarco itself went wrong (" + Plain.text(e.toString()) + "); please report it with what you did.";
    }

    /**
     * Stops whatever still goes on, and gives it a little time to leave nothing half written. What is done in order is not
     * stopped but waited for.
     */
    @Override
    public void close() {
        threads.shutdownNow();
        ordered.shutdown();
        boolean interrupted = false;
        while (!ordered.isTerminated()) {
            try {
                ordered.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        try {
            threads.awaitTermination(TIDYING_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            interrupted = true;
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
