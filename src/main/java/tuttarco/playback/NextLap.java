package tuttarco.playback;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import tuttarco.video.ClipPictures;

/**
 * Pictures of the same clip that stand ready at a loop's beginning, so that going back to it takes no time: to decode from
 * the last picture that stands alone may take longer than the pictures that wait are seen.
 */
final class NextLap implements AutoCloseable {
    private final Path file;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "tuttarco-next-lap");
        made.setDaemon(true);
        return made;
    });
    private Optional<Future<ClipPictures>> spare = Optional.empty();
    private double beginS;

    NextLap(Path file) {
        this.file = file;
    }

    /** Has pictures stand ready at a time, soon. */
    void prepare(double timeS) {
        beginS = timeS;
        Optional<Future<ClipPictures>> before = spare;
        spare = Optional.of(
                thread.submit(() -> sought(before.isPresent() ? before.get().get() : ClipPictures.open(file), timeS)));
    }

    /** Gives the pictures that stand ready and prepares the others in their place. */
    ClipPictures swap(ClipPictures others) throws InterruptedException {
        try {
            ClipPictures ready = spare.orElseThrow().get();
            double timeS = beginS;
            spare = Optional.of(thread.submit(() -> sought(others, timeS)));
            return ready;
        } catch (ExecutionException e) {
            throw new IllegalStateException("the clip could not be opened once more", e);
        }
    }

    private static ClipPictures sought(ClipPictures pictures, double timeS) {
        pictures.seek(timeS);
        return pictures;
    }

    @Override
    public void close() {
        spare.ifPresent(last -> thread.execute(() -> {
            try {
                last.get().close();
            } catch (InterruptedException | ExecutionException e) {
                // it was never opened
            }
        }));
        thread.shutdown();
    }
}
