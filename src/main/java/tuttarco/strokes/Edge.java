package tuttarco.strokes;

/** What begins or ends a span of a reading. */
public sealed interface Edge {
    /**
     * Another kind of span adjoins.
     *
     * @param standardErrorS how uncertain the time is, seconds
     */
    record Change(double standardErrorS) implements Edge {
        public Change {
            if (!(standardErrorS > 0)) {
                throw new IllegalArgumentException("a change is never known exactly: " + standardErrorS);
            }
        }
    }

    /** A person set the time; how far it may be off is not known. */
    record ByHand() implements Edge {}

    /** The clip begins or ends; the stroke may have begun before, or go on. */
    record ClipEnd() implements Edge {}
}
