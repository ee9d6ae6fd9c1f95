package tuttarco.strokes;

/**
 * A span of one kind in a player's reading.
 *
 * @param startS seconds from the clip's start
 * @param endS seconds from the clip's start, later than {@code startS}
 * @param confidence posterior probability, 0 to 1, that the span really is of this kind; 1 where it was set by hand
 * @param source where the kind comes from
 */
public record Stroke(double startS, double endS, StrokeKind kind, double confidence, Source source) {
    /** Where something that is said of a player comes from. */
    public enum Source {
        /** The picture. */
        READ,
        /** A person who looked at the picture. */
        BY_HAND
    }

    public Stroke {
        if (!(endS > startS)) {
            throw new IllegalArgumentException("a stroke ends after it starts: " + startS + " to " + endS);
        }
        if (!(confidence >= 0 && confidence <= 1)) {
            throw new IllegalArgumentException("confidence lies in 0 to 1: " + confidence);
        }
    }

    /** A stroke as it was read. */
    public Stroke(double startS, double endS, StrokeKind kind, double confidence) {
        this(startS, endS, kind, confidence, Source.READ);
    }

    /** A stroke as a person sets it. */
    public static Stroke byHand(double startS, double endS, StrokeKind kind) {
        return new Stroke(startS, endS, kind, 1, Source.BY_HAND);
    }

    /** The same at another time, or part of it. */
    public Stroke during(double otherStartS, double otherEndS) {
        return new Stroke(otherStartS, otherEndS, kind, confidence, source);
    }

    public double lengthS() {
        return endS - startS;
    }

    public boolean covers(double timeS) {
        return startS <= timeS && timeS < endS;
    }
}
