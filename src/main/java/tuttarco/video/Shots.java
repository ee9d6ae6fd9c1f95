package tuttarco.video;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.video.Shot.View;

/**
 * A clip's frames, each with the shot it is part of. Frames are held back for a moment, until it is clear whether the clip
 * was cut there: only so many are kept.
 */
public final class Shots implements AutoCloseable {
    /** A frame is held back for so long, seconds: a cut is clear after half of it, a dissolve of a second in time. */
    private static final double HELD_BACK_S = 0.5;

    /**
     * A shot whose picture correlates less than this with that of the clip's start shows something else. Of the rendered
     * scenes other views have 0.54 to 0.68 and the first view comes back with 0.99; on a real clip a moving player takes
     * it down to 0.88.
     */
    private static final double SAME_VIEW = 0.8;

    private record Held(Frame frame, Thumbnail thumbnail) {}

    private final Clip clip;
    private final ShotDetector detector = new ShotDetector();
    private final Deque<Held> held = new ArrayDeque<>();
    private final Deque<Mat> spare = new ArrayDeque<>();
    private Optional<Mat> given = Optional.empty();
    private Optional<Thumbnail> start = Optional.empty();
    private Shot shot = Shot.FIRST;

    /**
     * @param clip of which no frame was asked for yet; stays the caller's to close
     */
    public Shots(Clip clip) {
        this.clip = clip;
    }

    /** The next frame, empty at the clip's end; its picture is valid until the next is asked for. */
    public Optional<Frame> next() {
        given.ifPresent(spare::push);
        given = Optional.empty();
        holdBack();
        if (held.isEmpty()) {
            return Optional.empty();
        }
        Held next = held.removeFirst();
        Frame frame = next.frame();
        given = Optional.of(frame.grey());
        shot = shotAt(frame.timeS(), next.thumbnail());
        if (start.isEmpty() && !next.thumbnail().blank()) {
            start = Optional.of(next.thumbnail());
        }
        return Optional.of(new Frame(frame.index(), frame.timeS(), frame.grey(), shot));
    }

    private void holdBack() {
        while (held.isEmpty()
                || held.getLast().frame().timeS() - held.getFirst().frame().timeS() < HELD_BACK_S) {
            Optional<Frame> next = clip.next();
            if (next.isEmpty()) {
                return;
            }
            Thumbnail thumbnail = Thumbnail.of(next.get().grey());
            detector.add(next.get().timeS(), thumbnail);
            held.addLast(new Held(next.get().copiedTo(spare.isEmpty() ? new Mat() : spare.pop()), thumbnail));
        }
    }

    private Shot shotAt(double timeS, Thumbnail picture) {
        if (detector.dissolvesAt(timeS)) {
            return shot.view() == View.DISSOLVE ? shot : new Shot(timeS, View.DISSOLVE);
        }
        boolean begins = shot.view() == View.DISSOLVE || detector.cutAt(timeS);
        return begins ? new Shot(timeS, view(picture)) : shot;
    }

    /** A picture in which nothing is to be seen shows no other view. */
    private View view(Thumbnail picture) {
        boolean other = !picture.blank()
                && start.filter(s -> s.correlation(picture) < SAME_VIEW).isPresent();
        return other ? View.OTHER : View.FIRST;
    }

    @Override
    public void close() {
        held.forEach(h -> h.frame().grey().close());
        spare.forEach(Mat::close);
        given.ifPresent(Mat::close);
    }
}
