package tuttarco.take;

import java.nio.file.Path;

/** How a take says where its beats lie. */
public sealed interface BeatsGiven {
    /** Not yet: strokes can be found, but not compared. */
    record Missing() implements BeatsGiven {}

    /** A list of bar, beat and seconds, as CSV. */
    record Listed(Path file) implements BeatsGiven {}

    /**
     * A steady tempo in the part's metre.
     *
     * @param tempoBpm beats a minute, a beat being the metre's lower figure
     * @param startS when the part's first beat sounds, seconds from the clip's start
     */
    record Steady(double tempoBpm, double startS) implements BeatsGiven {
        /** A day, longer than any clip. */
        private static final double LATEST_S = 86_400;

        public Steady {
            if (!(tempoBpm >= 10 && tempoBpm <= 1000)) {
                throw new IllegalArgumentException("a tempo lies between 10 and 1000 beats a minute, not " + tempoBpm);
            }
            if (!(Math.abs(startS) <= LATEST_S)) {
                throw new IllegalArgumentException("a start is a time in seconds, at most a day, not " + startS);
            }
        }
    }
}
