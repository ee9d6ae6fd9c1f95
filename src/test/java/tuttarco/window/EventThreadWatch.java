package tuttarco.window;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.DoubleAdder;

/** Sees how long the event thread is kept by each event, and where it is when that takes too long. */
final class EventThreadWatch implements AutoCloseable {
    /** Issue's figure: longer than this a window feels stuck; milliseconds of the event thread's own work. */
    static final double LONGEST_MS = 50;

    private static final long LOOK_EVERY_MS = 5;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /**
     * One event that took long.
     *
     * @param ms how long, by the clock
     * @param where what the thread was doing when that was noticed
     */
    record Kept(double ms, String event, String where) {}

    private final List<Kept> kept = Collections.synchronizedList(new ArrayList<>());
    private final Watched queue = new Watched();
    private final Thread looking = new Thread(this::look, "event-thread-watch");
    private volatile boolean closed;
    private volatile double longestMs;
    private final DoubleAdder allMs = new DoubleAdder();

    EventThreadWatch() {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue);
        looking.setDaemon(true);
        looking.start();
    }

    /** What took longer than {@link #LONGEST_MS} so far. */
    List<Kept> kept() {
        synchronized (kept) {
            return List.copyOf(kept);
        }
    }

    /** The most processor time that one event took since it was last forgotten, milliseconds: other work does not count. */
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

    private void look() {
        while (!closed) {
            queue.notice();
            try {
                Thread.sleep(LOOK_EVERY_MS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        queue.end();
    }

    private final class Watched extends EventQueue {
        private volatile long beganNs;
        private volatile Optional<Thread> thread = Optional.empty();
        private volatile Optional<String> where = Optional.empty();

        @Override
        protected void dispatchEvent(AWTEvent event) {
            thread = Optional.of(Thread.currentThread());
            where = Optional.empty();
            beganNs = System.nanoTime();
            long ownNs = THREADS.getCurrentThreadCpuTime();
            try {
                super.dispatchEvent(event);
            } finally {
                double ms = (System.nanoTime() - beganNs) / 1e6;
                beganNs = 0;
                double ownMs = (THREADS.getCurrentThreadCpuTime() - ownNs) / 1e6;
                longestMs = Math.max(longestMs, ownMs);
                allMs.add(ownMs);
                if (ms > LONGEST_MS) {
                    kept.add(new Kept(ms, event.toString(), where.orElse("not seen")));
                }
            }
        }

        void notice() {
            long began = beganNs;
            if (began != 0 && where.isEmpty() && (System.nanoTime() - began) / 1e6 > LONGEST_MS / 2) {
                where = thread.map(EventThreadWatch::place);
            }
        }

        void end() {
            pop();
        }
    }

    private static String place(Thread thread) {
        StringBuilder places = new StringBuilder();
        for (StackTraceElement element : thread.getStackTrace()) {
            places.append("\n    ").append(element);
        }
        return places.toString();
    }
}
