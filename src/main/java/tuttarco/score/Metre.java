package tuttarco.score;

/**
 * A metre as printed: {@code beats} over {@code beatType}. Throughout Tuttarco a beat is the metre's lower figure, so 6/8
 * has six beats.
 */
public record Metre(int beats, int beatType) {
    /** More beats than any printed bar has; guards against absurd files. */
    private static final int MOST_BEATS = 64;

    public Metre {
        if (beats < 1 || beats > MOST_BEATS) {
            throw new IllegalArgumentException("a metre has 1 to " + MOST_BEATS + " beats, not " + beats);
        }
        if (beatType < 1 || beatType > 64 || Integer.bitCount(beatType) != 1) {
            throw new IllegalArgumentException("a metre's lower figure is 1, 2, 4, 8, 16, 32 or 64, not " + beatType);
        }
    }

    public double quartersPerBeat() {
        return 4.0 / beatType;
    }

    /**
     * Whether the beat is a strong one: the first of a bar, each third eighth in 6/8, 9/8 and 12/8, and the third of four
     * beats (common practice, no source).
     */
    public boolean strong(double beat) {
        boolean inThrees = beats > 3 && beats % 3 == 0;
        int group = inThrees ? 3 : beats == 4 ? 2 : beats;
        return (beat - 1) % group == 0;
    }

    @Override
    public String toString() {
        return beats + "/" + beatType;
    }
}
