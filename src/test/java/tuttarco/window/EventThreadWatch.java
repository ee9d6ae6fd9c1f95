package tuttarco.window;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ClassLoadingMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.DoubleAdder;

/**
 * Sees how much each event makes the event thread work, and where the thread is when that is too much. It is processor time: what
 * else the machine does makes no difference. What the thread waits for is not seen, nor is its working less for that.
 *
 * <p>There is one for all windows: a queue that is taken away while a robot knows it would be waited for.
 */
final class EventThreadWatch {
    /** Issue's figure: longer than this a window feels stuck; milliseconds of the event thread's own work. */
    static final double LONGEST_MS = 50;

    /**
     * The same for an event in which something is done for the first time, so that classes are loaded and run unprepared,
     * milliseconds: the first sight of Review took 51 with 35 classes, all later ones 20 to 28 with none (two cores at a load
     * of 3 and 8, 2026-11-26).
     */
    static final double LONGEST_FIRST_MS = 75;

    /** So many classes loaded tell a first time: later times load none, or one or two of the machine's own (same runs). */
    private static final int FIRST_CLASSES = 10;

    private static final long LOOK_EVERY_MS = 5;

    private static final double NS_PER_MS = 1e6;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private static final ClassLoadingMXBean CLASSES = ManagementFactory.getClassLoadingMXBean();

    private static Optional<EventThreadWatch> only = Optional.empty();

    /**
     * One event that took long.
     *
     * @param ms processor time it took
     * @param classes loaded meanwhile
     * @param where what the thread was doing when that was noticed
     */
    record Kept(double ms, int classes, String event, String where) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.0f ms (%d classes loaded) in %s: %s", ms, classes, event, where);
        }
    }

    private final List<Kept> kept = Collections.synchronizedList(new ArrayList<>());
    private final Watched queue = new Watched();
    private volatile double longestMs;
    private final DoubleAdder allMs = new DoubleAdder();

    private EventThreadWatch() {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue);
        Thread looking = new Thread(this::look, "event-thread-watch");
        looking.setDaemon(true);
        looking.start();
    }

    /** The watch of this program's event thread. */
    static synchronized EventThreadWatch get() {
        if (only.isEmpty()) {
            only = Optional.of(new EventThreadWatch());
        }
        return only.get();
    }

    /** What took too long since it was last forgotten. */
    List<Kept> kept() {
        synchronized (kept) {
            return List.copyOf(kept);
        }
    }

    /** The most processor time that one event took since it was last forgotten, milliseconds. */
    double longestMs() {
        return longestMs;
    }

    /** Processor time of all events since it was last forgotten, milliseconds. */
    double allMs() {
        return allMs.sum();
    }

    /** Begins anew. */
    void forget() {
        kept.clear();
        longestMs = 0;
        allMs.reset();
    }

    /** Does, on the event thread, what the test does there and not the program; it isn't counted. */
    <T> T aside(Callable<T> own) throws Exception {
        return queue.nested(own, ms -> {});
    }

    private void look() {
        while (true) {
            queue.notice();
            try {
                Thread.sleep(LOOK_EVERY_MS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /** Takes how long something worked, without what counts for itself. */
    @FunctionalInterface
    private interface Told {
        void took(double ms);
    }

    private final class Watched extends EventQueue {
        private volatile Optional<Thread> thread = Optional.empty();
        private volatile long beganNs;
        private volatile Optional<String> where = Optional.empty();

        /** What was done inside of what is done now and counts for itself; the event thread's. */
        private long insideNs;

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long before = CLASSES.getTotalLoadedClassCount();
            thread = Optional.of(Thread.currentThread());
            where = Optional.empty();
            beganNs = THREADS.getCurrentThreadCpuTime();
            try {
                nested(
                        () -> {
                            super.dispatchEvent(event);
                            return event;
                        },
                        ms -> took(ms, (int) (CLASSES.getTotalLoadedClassCount() - before), event));
            } catch (RuntimeException e) {
                throw e;
            } catch (Exception e) {
                throw new IllegalStateException(e);
            } finally {
                beganNs = 0;
            }
        }

        private void took(double ms, int classes, AWTEvent event) {
            longestMs = Math.max(longestMs, ms);
            allMs.add(ms);
            if (ms > (classes < FIRST_CLASSES ? LONGEST_MS : LONGEST_FIRST_MS)) {
                kept.add(new Kept(ms, classes, event.toString(), where.orElse("not seen")));
            }
        }

        /** A dialog's events come within the event that opened it. */
        <T> T nested(Callable<T> work, Told told) throws Exception {
            long outsideNs = insideNs;
            insideNs = 0;
            long fromNs = THREADS.getCurrentThreadCpuTime();
            try {
                return work.call();
            } finally {
                long allNs = THREADS.getCurrentThreadCpuTime() - fromNs;
                told.took((allNs - insideNs) / NS_PER_MS);
                insideNs = outsideNs + allNs;
            }
        }

        void notice() {
            Optional<Thread> watched = thread;
            long began = beganNs;
            if (began != 0
                    && where.isEmpty()
                    && THREADS.getThreadCpuTime(watched.orElseThrow().getId()) - began > LONGEST_MS / 2 * NS_PER_MS) {
                where = watched.map(EventThreadWatch::place);
            }
        }
    }

    private static String place(Thread thread) {
        StringBuilder places = new StringBuilder();
        for (StackTraceElement element : thread.getStackTrace()) {
            if (element.getClassName().equals(EventQueue.class.getName())) {
                break;
            }
            places.append("\n    ").append(element);
        }
        return places.toString();
    }
}
