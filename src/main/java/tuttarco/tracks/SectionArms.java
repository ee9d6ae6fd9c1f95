package tuttarco.tracks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import tuttarco.video.Clip;
import tuttarco.video.Frame;

/**
 * The arms of a section on their way through a clip. Each knows how many frames it has had, so that what they learned can
 * be written down at any time, and in another run the clip is shown to them from its start.
 */
final class SectionArms implements AutoCloseable {
    /** The clip has been read to its end. */
    private record End(double endS, double lastTimeS, boolean broken) {}

    private final List<Arm> arms;
    private Optional<End> end = Optional.empty();

    SectionArms(List<ArmTracker> trackers) {
        arms = trackers.stream().map(Arm::new).toList();
    }

    private static final class Arm {
        private final ArmTracker tracker;
        private int frames;
        private double reachedS;
        private boolean inOrder = true;

        Arm(ArmTracker tracker) {
            this.tracker = tracker;
        }

        void take(Frame frame) {
            if (frame.index() < frames) {
                tracker.recall(frame);
                return;
            }
            inOrder = false;
            tracker.accept(frame);
            inOrder = true;
            frames++;
            reachedS = frame.timeS();
        }

        void note(Memo memo) throws IOException {
            frames = memo.count(frames);
            reachedS = memo.number(reachedS);
            tracker.note(memo);
        }
    }

    /** Shows the clip's next frames to all arms. */
    List<Future<Void>> submit(ExecutorService pool, List<Frame> frames) {
        List<Future<Void>> running = new ArrayList<>();
        for (Arm arm : arms) {
            Callable<Void> work = () -> {
                frames.forEach(arm::take);
                return null;
            };
            running.add(pool.submit(work));
        }
        return running;
    }

    /** How far all arms have come, seconds of the clip. */
    double reachedS() {
        return arms.stream().mapToDouble(arm -> arm.reachedS).min().orElse(0);
    }

    /** All frames were shown. */
    void end(double endS, Clip.Ending ending) {
        end = Optional.of(new End(endS, ending.lastTimeS(), ending.broken()));
    }

    boolean ended() {
        return end.isPresent();
    }

    /** The tracks, once the end is reached. */
    SectionTracker.Tracked finish() {
        End at = end.orElseThrow();
        arms.forEach(arm -> arm.tracker.settle());
        return new SectionTracker.Tracked(
                arms.stream().map(arm -> arm.tracker.finish(at.endS())).toList(),
                at.endS(),
                new Clip.Ending(at.lastTimeS(), at.broken()));
    }

    /** Whether every arm has taken its frames whole; if not, a frame was its undoing. */
    boolean inOrder() {
        return arms.stream().allMatch(arm -> arm.inOrder);
    }

    void writeTo(OutputStream out) throws IOException {
        note(new WrittenMemo(out));
    }

    /**
     * Goes on from what an earlier run wrote.
     *
     * @throws UnreadableMemoException if it is of other arms or none; nothing can be done with these any more
     */
    void takeUp(InputStream earlier) throws UnreadableMemoException {
        try (earlier) {
            note(new ReadMemo(earlier));
        } catch (IOException e) {
            throw new UnreadableMemoException(e);
        }
    }

    private void note(Memo memo) throws IOException {
        if (memo.flag(end.isPresent())) {
            end = Optional.of(memo.value(End.class, end.orElse(null)));
        }
        for (Arm arm : arms) {
            arm.note(memo);
        }
    }

    @Override
    public void close() {
        arms.forEach(arm -> arm.tracker.close());
    }
}
