package tuttarco.tracks;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.files.CacheEntry;
import tuttarco.files.OutputException;
import tuttarco.seats.Player;
import tuttarco.video.Clip;
import tuttarco.video.Frame;
import tuttarco.video.Shots;

/**
 * Follows all bow arms of a section in one pass over the clip. While one batch of frames is decoded, the batch before is
 * tracked on the other cores, one player at a time on each; memory is bounded by the two batches.
 */
public final class SectionTracker {
    /** Frames in a batch: enough that waiting for the slowest player hardly counts, few enough to stay small. */
    private static final int BATCH = 12;

    private final Function<Player, ArmTracker> trackers;
    private final int workers;

    /**
     * @param trackers makes the tracker of a player
     * @param workers threads that track; one more decodes
     */
    public SectionTracker(Function<Player, ArmTracker> trackers, int workers) {
        if (workers < 1) {
            throw new IllegalArgumentException("somebody has to do the work, not " + workers + " workers");
        }
        this.trackers = trackers;
        this.workers = workers;
    }

    /** Told how far the work has come. */
    @FunctionalInterface
    public interface Progress {
        void reached(double clipTimeS);

        /** An earlier run came so far, and this one goes on from there. */
        default void goesOn(double fromS) {}

        /** An earlier run came to the end; there is nothing left to do. */
        default void known() {}

        /** What was seen can't be kept for another run. */
        default void notKept(OutputException why) {}
    }

    /**
     * Tracks of all players.
     *
     * @param endS end of what could be read, seconds; zero if there was no frame
     * @param ending where reading the clip ended
     */
    public record Tracked(List<ArmTrack> tracks, double endS, Clip.Ending ending) {}

    /**
     * Reads the clip to its end, without keeping anything for another run.
     *
     * @throws InterruptedException if the thread was interrupted; nothing is left running
     */
    public Tracked track(Clip clip, List<Player> players, Progress progress) throws InterruptedException {
        try (SectionArms arms = arms(players)) {
            read(clip, arms, progress, new Checkpoints(Optional.empty(), progress));
            return arms.finish();
        }
    }

    /**
     * Reads the clip to its end, or goes on where an earlier run stopped; the result is the same.
     *
     * @param kept where what was seen is kept for another run
     * @throws UnreadableMemoException if what was kept is of no use after all; start again with new trackers
     * @throws InterruptedException if the thread was interrupted; nothing is left running, and what was seen is kept
     */
    public Tracked track(Clip clip, List<Player> players, Progress progress, CacheEntry kept)
            throws InterruptedException, UnreadableMemoException {
        try (SectionArms arms = arms(players)) {
            Optional<InputStream> earlier = kept.open();
            if (earlier.isPresent()) {
                arms.takeUp(earlier.get());
            }
            if (arms.ended()) {
                progress.known();
            } else {
                read(clip, arms, progress, new Checkpoints(Optional.of(kept), progress));
            }
            return arms.finish();
        }
    }

    private SectionArms arms(List<Player> players) {
        return new SectionArms(players.stream().map(trackers).toList());
    }

    private void read(Clip clip, SectionArms arms, Progress progress, Checkpoints checkpoints)
            throws InterruptedException {
        opencv_core.setNumThreads(1);
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try (Shots shots = new Shots(clip);
                Batch one = new Batch();
                Batch other = new Batch()) {
            try {
                double endS = read(shots, arms, progress, checkpoints, pool, one, other);
                arms.end(endS, clip.ending());
            } finally {
                // the pictures are freed next: nobody may still look at them
                pool.shutdownNow();
                awaitEnd(pool);
            }
        } catch (InterruptedException e) {
            checkpoints.keep(arms);
            throw e;
        }
        checkpoints.keep(arms);
    }

    /** Returns when the last frame ends, seconds; zero if there was none. */
    private static double read(
            Shots shots,
            SectionArms arms,
            Progress progress,
            Checkpoints checkpoints,
            ExecutorService pool,
            Batch one,
            Batch other)
            throws InterruptedException {
        double earlierS = arms.reachedS();
        if (earlierS > 0) {
            progress.goesOn(earlierS);
        }
        Batch filling = one;
        Batch working = other;
        List<Future<Void>> running = List.of();
        Optional<Frame> last = Optional.empty();
        while (filling.fill(shots)) {
            await(running);
            checkpoints.keepNowAndThen(arms);
            Batch full = filling;
            filling = working;
            working = full;
            running = arms.submit(pool, full.frames());
            last = Optional.of(full.frames().get(full.frames().size() - 1));
            if (last.get().timeS() > earlierS) {
                progress.reached(last.get().timeS());
            }
        }
        await(running);
        return last.map(SectionTracker::endOf).orElse(0.0);
    }

    /** When the clip's last frame ends: it lasts as long as a frame on average. */
    private static double endOf(Frame last) {
        return last.index() == 0 ? last.timeS() : last.timeS() * (last.index() + 1) / last.index();
    }

    private static void awaitEnd(ExecutorService pool) {
        boolean interrupted = false;
        while (true) {
            try {
                if (pool.awaitTermination(1, TimeUnit.MINUTES)) {
                    break;
                }
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void await(List<Future<Void>> running) throws InterruptedException {
        for (Future<Void> work : running) {
            try {
                work.get();
            } catch (ExecutionException e) {
                throw new IllegalStateException("an arm could not be followed", e.getCause());
            }
        }
        // work that is already done is got without a look at the interrupt
        if (Thread.interrupted()) {
            throw new InterruptedException("tracking was stopped");
        }
    }

    /** A few frames with pictures of their own. */
    private static final class Batch implements AutoCloseable {
        private final List<Mat> pictures = new ArrayList<>();
        private List<Frame> frames = List.of();

        /** Fills the batch; false if the clip had no further frame. */
        boolean fill(Shots shots) {
            List<Frame> filled = new ArrayList<>();
            while (filled.size() < BATCH) {
                Optional<Frame> next = shots.next();
                if (next.isEmpty()) {
                    break;
                }
                if (pictures.size() == filled.size()) {
                    pictures.add(new Mat());
                }
                filled.add(next.get().copiedTo(pictures.get(filled.size())));
            }
            frames = List.copyOf(filled);
            return !filled.isEmpty();
        }

        List<Frame> frames() {
            return frames;
        }

        @Override
        public void close() {
            pictures.forEach(Mat::close);
        }
    }
}
