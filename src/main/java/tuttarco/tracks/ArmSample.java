package tuttarco.tracks;

/** What was seen of one bow arm at one presentation time. */
public sealed interface ArmSample {
    /** Presentation time, seconds from the clip's start. */
    double timeS();

    /**
     * The arm was seen.
     *
     * @param velocity speed of the bow hand along the bow, in seat heights per second; positive towards the tip
     *     (down-bow)
     * @param noise standard deviation of that velocity, same unit
     */
    record Seen(double timeS, double velocity, double noise) implements ArmSample {}

    /** The arm was not seen. */
    record Lost(double timeS, Reason reason) implements ArmSample {}

    /** Why an arm was not seen. */
    enum Reason {
        /** The picture is too dark to follow anything. */
        TOO_DARK,
        /** The seat box is too small to hold an arm. */
        TOO_SMALL,
        /** Too few frames a second to tell one stroke from the next. */
        TOO_FEW_FRAMES
    }
}
