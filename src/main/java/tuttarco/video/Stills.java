package tuttarco.video;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/** A few pictures of a clip, spread evenly over what shows the view that it starts with. */
public final class Stills implements AutoCloseable {
    private final List<Frame> frames;

    private Stills(List<Frame> frames) {
        this.frames = List.copyOf(frames);
    }

    /**
     * Reads a clip to its end, whose length need not be known before, and keeps {@code least} of its frames or up to one
     * less than twice as many; all if there are fewer. Only frames of the first view count.
     *
     * @throws InterruptedException if the thread was interrupted
     */
    public static Stills of(Clip clip, int least) throws InterruptedException {
        List<Frame> kept = new ArrayList<>();
        int every = 1;
        int count = 0;
        try (Shots shots = new Shots(clip)) {
            for (Optional<Frame> next = shots.next(); next.isPresent(); next = shots.next()) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("reading the clip was stopped");
                }
                if (next.get().shot().view() != Shot.View.FIRST) {
                    continue;
                }
                count++;
                if (count % every == 0) {
                    kept.add(next.get().copiedTo(new Mat()));
                }
                if (kept.size() == 2 * least) {
                    every *= 2;
                    thin(kept);
                }
            }
        } catch (InterruptedException e) {
            kept.forEach(f -> f.grey().close());
            throw e;
        }
        return new Stills(kept);
    }

    /** Lets go of every other frame, beginning with the first. */
    private static void thin(List<Frame> kept) {
        for (int i = kept.size() - 2; i >= 0; i -= 2) {
            kept.remove(i).grey().close();
        }
    }

    /** In the order of their times. */
    public List<Frame> frames() {
        return frames;
    }

    @Override
    public void close() {
        frames.stream().map(Frame::grey).forEach(Mat::close);
    }
}
