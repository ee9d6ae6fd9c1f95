package tuttarco.beats;

/**
 * A stretch that was played without a stop, as indices into the beats of its map: at least two beats, so that it is known
 * how long a beat is.
 *
 * @param lastIndex inclusive
 */
public record Run(int firstIndex, int lastIndex) {
    public Run {
        if (firstIndex < 0 || lastIndex <= firstIndex) {
            throw new IllegalArgumentException(
                    "a run has at least two beats, not those from " + firstIndex + " to " + lastIndex);
        }
    }

    public int beatCount() {
        return lastIndex - firstIndex + 1;
    }

    /** Whether it holds beat number {@code index}. */
    public boolean holds(int index) {
        return firstIndex <= index && index <= lastIndex;
    }
}
