package tuttarco.tracks;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import tuttarco.files.CacheEntry;
import tuttarco.files.OutputException;

/**
 * Keeps what was seen from time to time, so that a run that is killed loses half of its work at most and never more than
 * some seconds of it. Where nothing can be kept, that is told once and the work goes on.
 */
final class Checkpoints {
    /** Less work than the one is not worth keeping, more than the other is never lost; nanoseconds. */
    private static final long LEAST_NS = TimeUnit.SECONDS.toNanos(1);

    private static final long MOST_NS = TimeUnit.SECONDS.toNanos(10);

    /** Keeping takes no more than one such part of the time, however long the clip. */
    private static final int SELDOM = 20;

    private final SectionTracker.Progress progress;
    private final long startNs = System.nanoTime();
    private Optional<CacheEntry> entry;
    private long keptNs = startNs;
    private long costNs;

    /**
     * @param entry where what was seen is kept; nothing is kept without
     */
    Checkpoints(Optional<CacheEntry> entry, SectionTracker.Progress progress) {
        this.entry = entry;
        this.progress = progress;
    }

    /** Keeps what was seen if it is time to; nobody may be at work. */
    void keepNowAndThen(SectionArms arms) {
        long nowNs = System.nanoTime();
        long dueNs = Math.min(MOST_NS, Math.max(LEAST_NS, (nowNs - startNs) / 2));
        if (nowNs - keptNs >= Math.max(dueNs, SELDOM * costNs)) {
            keep(arms);
        }
    }

    /** Keeps what was seen; nobody may be at work. */
    void keep(SectionArms arms) {
        if (entry.isEmpty() || !arms.inOrder()) {
            return;
        }
        long beforeNs = System.nanoTime();
        try {
            entry.get().write(arms::writeTo);
        } catch (OutputException e) {
            entry = Optional.empty();
            progress.notKept(e);
        }
        keptNs = System.nanoTime();
        costNs = keptNs - beforeNs;
    }
}
