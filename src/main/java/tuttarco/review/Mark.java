package tuttarco.review;

/**
 * A place in time that can be moved.
 *
 * @param index of a change, the span of the player's reading that ends with it; of a beat, the beat in its map
 * @param earliestS the earliest time, seconds, it can be moved to; {@code latestS} the latest
 */
public record Mark(Kind kind, int index, double timeS, double earliestS, double latestS) {
    /** What lies between a place and its neighbours at least, seconds: a frame at 50 a second. */
    static final double LEAST_S = 0.02;

    /** What is moved. */
    public enum Kind {
        /** A change of the chosen player's bow. */
        CHANGE,
        BEAT
    }

    /** The mark between its neighbours; it stays where it is if they are that close. */
    static Mark between(Kind kind, int index, double beforeS, double timeS, double afterS) {
        return new Mark(kind, index, timeS, Math.min(timeS, beforeS + LEAST_S), Math.max(timeS, afterS - LEAST_S));
    }

    /** A time to move it to, kept between its neighbours. */
    public double within(double timeS) {
        return Math.max(earliestS, Math.min(latestS, timeS));
    }
}
