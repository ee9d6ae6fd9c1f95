package tuttarco.strokes;

/**
 * A span of one kind in a player's reading.
 *
 * @param startS seconds from the clip's start
 * @param endS seconds from the clip's start, later than {@code startS}
 * @param confidence posterior probability, 0 to 1, that the span really is of this kind
 */
public record Stroke(double startS, double endS, StrokeKind kind, double confidence) {
    public Stroke {
        if (!(endS > startS)) {
            throw new IllegalArgumentException("a stroke ends after it starts: " + startS + " to " + endS);
        }
        if (!(confidence >= 0 && confidence <= 1)) {
            throw new IllegalArgumentException("confidence lies in 0 to 1: " + confidence);
        }
    }

    public double lengthS() {
        return endS - startS;
    }

    public boolean covers(double timeS) {
        return startS <= timeS && timeS < endS;
    }
}
