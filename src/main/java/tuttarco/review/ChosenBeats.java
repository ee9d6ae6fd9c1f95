package tuttarco.review;

/**
 * Beats that are chosen together, by their indices in the beat map.
 *
 * @param anchor where the choosing began; {@code at} where it has come to, before or after
 */
public record ChosenBeats(int anchor, int at) {
    public static ChosenBeats one(int beat) {
        return new ChosenBeats(beat, beat);
    }

    public int first() {
        return Math.min(anchor, at);
    }

    /** Inclusive. */
    public int last() {
        return Math.max(anchor, at);
    }

    public boolean hold(int beat) {
        return first() <= beat && beat <= last();
    }

    /** From the same anchor to another beat. */
    public ChosenBeats upTo(int beat) {
        return new ChosenBeats(anchor, beat);
    }

    /** What is chosen when the clip has come to a beat: the same as long as that is one of them, or else that beat alone. */
    public ChosenBeats following(int beat) {
        return hold(beat) ? this : one(beat);
    }
}
