package tuttarco.review;

/** A stretch of the clip, seconds from its start. */
public record Stretch(double fromS, double toS) {
    public Stretch {
        if (!(toS > fromS)) {
            throw new IllegalArgumentException("a stretch ends after it begins: " + fromS + " to " + toS);
        }
    }

    public boolean holds(double timeS) {
        return fromS <= timeS && timeS < toS;
    }
}
