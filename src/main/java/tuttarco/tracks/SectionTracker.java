package tuttarco.tracks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
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
    }

    /** Tracks of all players and the end of what could be read, seconds; zero if there was no frame. */
    public record Tracked(List<ArmTrack> tracks, double endS) {}

    /**
     * Reads the clip to its end.
     *
     * @throws InterruptedException if the thread was interrupted; nothing is left running
     */
    public Tracked track(Clip clip, List<Player> players, Progress progress) throws InterruptedException {
        opencv_core.setNumThreads(1);
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        List<ArmTracker> arms = players.stream().map(trackers).toList();
        try (Shots shots = new Shots(clip);
                Batch one = new Batch();
                Batch other = new Batch()) {
            try {
                return track(shots, arms, progress, pool, one, other);
            } finally {
                // the pictures are freed next: nobody may still look at them
                pool.shutdownNow();
                awaitEnd(pool);
            }
        } finally {
            arms.forEach(ArmTracker::close);
        }
    }

    private static Tracked track(
            Shots clip, List<ArmTracker> arms, Progress progress, ExecutorService pool, Batch one, Batch other)
            throws InterruptedException {
        Batch filling = one;
        Batch working = other;
        List<Future<Void>> running = List.of();
        Optional<Frame> last = Optional.empty();
        while (filling.fill(clip)) {
            await(running);
            Batch full = filling;
            filling = working;
            working = full;
            running = submit(pool, arms, full.frames());
            last = Optional.of(full.frames().get(full.frames().size() - 1));
            progress.reached(last.get().timeS());
        }
        await(running);
        double endS = last.map(SectionTracker::endOf).orElse(0.0);
        arms.forEach(ArmTracker::settle);
        return new Tracked(arms.stream().map(a -> a.finish(endS)).toList(), endS);
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

    private static List<Future<Void>> submit(ExecutorService pool, List<ArmTracker> arms, List<Frame> frames) {
        List<Future<Void>> running = new ArrayList<>();
        for (ArmTracker arm : arms) {
            Callable<Void> work = () -> {
                frames.forEach(arm::accept);
                return null;
            };
            running.add(pool.submit(work));
        }
        return running;
    }

    private static void await(List<Future<Void>> running) throws InterruptedException {
        if (Thread.interrupted()) {
            throw new InterruptedException("tracking was stopped");
        }
        for (Future<Void> work : running) {
            try {
                work.get();
            } catch (ExecutionException e) {
                throw new IllegalStateException("an arm could not be followed", e.getCause());
            }
        }
    }

    /** A few frames with pictures of their own. */
    private static final class Batch implements AutoCloseable {
        private final List<Mat> pictures = new ArrayList<>();
        private List<Frame> frames = List.of();

        /** Fills the batch; false if the clip had no further frame. */
        boolean fill(Shots clip) {
            List<Frame> filled = new ArrayList<>();
            while (filled.size() < BATCH) {
                Optional<Frame> next = clip.next();
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
