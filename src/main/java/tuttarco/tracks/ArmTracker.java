package tuttarco.tracks;

import tuttarco.video.Frame;

/**
 * Follows one bow arm through a clip, frame by frame. A tracker is used by one thread at a time and keeps nothing of a
 * frame's picture after {@link #accept} returns.
 */
public interface ArmTracker extends AutoCloseable {
    /** Takes the next frame, in order. */
    void accept(Frame frame);

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
