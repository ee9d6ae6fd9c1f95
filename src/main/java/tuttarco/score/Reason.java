package tuttarco.score;

import java.util.List;
import tuttarco.score.PartSpan.Position;

/** Why a stroke has its direction. */
public sealed interface Reason {
    /** In a few words: {@code marked}, {@code carried on from bar 3}. */
    default String spoken(List<Bar> bars) {
        if (this instanceof Marked marked) {
            return marked.retake() ? "marked, a retake" : "marked";
        }
        if (this instanceof CarriedOn carriedOn) {
            return "carried on from bar "
                    + bars.get(carriedOn.from().barIndex()).number();
        }
        if (this instanceof StrongBeat beat) {
            return beat.strong() ? "strong beat" : "weak beat";
        }
        if (this instanceof Upbeat upbeat) {
            return "upbeat to " + Awkward.place(upbeat.to(), bars);
        }
        return this instanceof Hooked ? "hooked" : "retake after the rest";
    }

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
