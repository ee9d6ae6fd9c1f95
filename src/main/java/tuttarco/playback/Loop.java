package tuttarco.playback;

/**
 * A stretch of a clip that is played again and again.
 *
 * @param fromS where it begins, seconds of the clip
 * @param toS where it goes back to its beginning, seconds of the clip
 */
public record Loop(double fromS, double toS) {
    /** A shorter stretch would be a tone rather than a passage; seconds (chosen). */
    public static final double SHORTEST_S = 0.1;

    public Loop {
        if (!(fromS >= 0 && toS - fromS >= SHORTEST_S && Double.isFinite(toS))) {
            throw new IllegalArgumentException(
                    "a loop lasts at least " + SHORTEST_S + " s, but this is from " + fromS + " to " + toS + " s");
        }
    }

    double lengthS() {
        return toS - fromS;
    }
}
