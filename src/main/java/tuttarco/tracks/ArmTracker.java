package tuttarco.tracks;

import java.io.IOException;
import tuttarco.video.Frame;

/**
 * Follows one bow arm through a clip, frame by frame. A tracker is used by one thread at a time and keeps nothing of a
 * frame's picture after {@link #accept} returns.
 */
public interface ArmTracker extends AutoCloseable {
    /** Takes the next frame, in order. */
    void accept(Frame frame);

    /**
     * Looks again at a frame accepted in an earlier run. Pictures are not written down: those still to be compared with
     * are taken from the clip anew.
     */
    void recall(Frame frame);

    /**
     * Tells all that was learned from frames, or learns it from an earlier run, in which case nothing was accepted yet.
     *
     * @throws IOException if the memo can't be written, or holds something else; the tracker is then of no more use
     */
    void note(Memo memo) throws IOException;

    /** All frames were accepted; called for all arms of a section before any is finished. */
    default void settle() {}

    /**
     * The track of everything accepted.
     *
     * @param endS end of the clip, seconds
     */
    ArmTrack finish(double endS);

    /** Lets go of all pictures; what was seen stays, so that the arm can still be settled and finished. */
    @Override
    void close();
}
