package tuttarco.score;

import tuttarco.score.PartSpan.Position;

/** Why a stroke has its direction. */
public sealed interface Reason {
    /**
     * Written in the part.
     *
     * @param retake the stroke before went the same way, so the bow is lifted and set again
     */
    record Marked(boolean retake) implements Reason {}

    /**
     * The other way than the stroke before, and so on back to where the bow was last marked or set anew.
     *
     * @param from where that was
     */
    record CarriedOn(Position from) implements Reason {}

    /** The same way as the stroke before, separated from it in one bow. */
    record Hooked() implements Reason {}

    /** Set anew after a rest, the same way as the stroke before it, so that the strong beat comes out right. */
    record Retake() implements Reason {}

    /**
     * Set anew by its own beat: a strong one begins the strong way, a weak one the other.
     *
     * @param strong whether the beat is
     */
    record StrongBeat(boolean strong) implements Reason {}

    /**
     * Set anew so that the strokes lead to what follows.
     *
     * @param to the strong beat or the mark they lead to
     */
    record Upbeat(Position to) implements Reason {}
}
