package tuttarco.beats;

import tuttarco.score.PartSpan;

/**
 * A stroke or rest of the part as it lies in the recording.
 *
 * @param startS seconds from the clip's start; where the listed beats begin if the span begins before them
 * @param endS seconds, after {@code startS}; where the listed beats end if the span reaches past them
 * @param span the whole span as it stands in the part, even where only a piece of it lies inside the listed beats
 */
public record TimedSpan(double startS, double endS, PartSpan span) {
    public TimedSpan {
        if (!(endS > startS && Double.isFinite(endS - startS))) {
            throw new IllegalArgumentException("a span lasts some time, not from " + startS + " to " + endS + " s");
        }
    }
}
