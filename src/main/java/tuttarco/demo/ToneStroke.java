package tuttarco.demo;

/**
 * A tone of one pitch, while the bow goes evenly from one place to another: a stroke, or a note of it under a slur.
 *
 * @param startS seconds from the clip's start
 * @param fromPlace where on the bow it starts: 0 at the frog, 1 at the tip
 * @param toPlace where on the bow it ends
 * @param speakS how long the tone takes to speak, and to end
 */
record ToneStroke(double startS, double endS, double fromPlace, double toPlace, double pitchHz, double speakS) {
    /** What strings play, hertz: from below a bass's lowest string to above a violin's highest hand. */
    private static final double LOWEST_HZ = 20;

    private static final double HIGHEST_HZ = 3500;

    ToneStroke {
        if (!(endS > startS) || !Double.isFinite(endS - startS)) {
            throw new IllegalArgumentException("a stroke ends after it starts, not " + startS + " to " + endS + " s");
        }
        if (!(fromPlace >= 0 && fromPlace <= 1 && toPlace >= 0 && toPlace <= 1)) {
            throw new IllegalArgumentException(
                    "places on a bow lie between 0 and 1, not at " + fromPlace + " and " + toPlace);
        }
        if (!(speakS > 0)) {
            throw new IllegalArgumentException("a tone takes some time to speak, not " + speakS + " s");
        }
        if (!(pitchHz >= LOWEST_HZ && pitchHz <= HIGHEST_HZ)) {
            throw new IllegalArgumentException(
                    "a pitch lies between " + LOWEST_HZ + " and " + HIGHEST_HZ + " Hz, not at " + pitchHz);
        }
    }

    /** Where the bow is at a time within the stroke. */
    double place(double timeS) {
        return fromPlace + (toPlace - fromPlace) * (timeS - startS) / (endS - startS);
    }
}
