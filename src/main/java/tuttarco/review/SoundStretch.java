package tuttarco.review;

/**
 * The stretch of a sound that is seen.
 *
 * @param fromS where it begins, seconds of the clip; {@code toS} where it ends
 * @param wholeFromS where the sound begins; {@code wholeToS} where it ends
 */
public record SoundStretch(double fromS, double toS, double wholeFromS, double wholeToS) {
    /** The least that is seen, seconds: a millisecond is a few pixels then. */
    static final double SHORTEST_S = 0.25;

    /** Of a sound no more is seen at first; seconds (chosen: some bars). */
    public static final double FIRST_S = 20;

    /** A sound's beginning. */
    public static SoundStretch of(double wholeFromS, double wholeToS) {
        double endS = Math.max(wholeToS, wholeFromS + SHORTEST_S);
        return new SoundStretch(wholeFromS, Math.min(endS, wholeFromS + FIRST_S), wholeFromS, endS);
    }

    public double lengthS() {
        return toS - fromS;
    }

    /** So many times as long, around a time that stays where it is. */
    public SoundStretch zoomed(double times, double aroundS) {
        double lengthS = Math.max(SHORTEST_S, Math.min(wholeToS - wholeFromS, lengthS() * times));
        double share = (aroundS - fromS) / lengthS();
        return from(aroundS - share * lengthS, lengthS);
    }

    /** Moved by a share of what is seen. */
    public SoundStretch scrolled(double share) {
        return from(fromS + share * lengthS(), lengthS());
    }

    /** Moved so that a time is seen, if it is not, a quarter from the left. */
    public SoundStretch showing(double timeS) {
        return timeS >= fromS && timeS <= toS ? this : from(timeS - lengthS() / 4, lengthS());
    }

    private SoundStretch from(double beginS, double lengthS) {
        double inside = Math.max(wholeFromS, Math.min(wholeToS - lengthS, beginS));
        return new SoundStretch(inside, inside + lengthS, wholeFromS, wholeToS);
    }

    /** Where a time lies in a picture so many pixels wide. */
    public double xPx(double timeS, double widthPx) {
        return (timeS - fromS) / lengthS() * widthPx;
    }

    /** The time of a place in a picture so many pixels wide. */
    public double timeS(double xPx, double widthPx) {
        return fromS + xPx / widthPx * lengthS();
    }
}
