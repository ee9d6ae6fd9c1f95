package tuttarco.beats;

import java.util.OptionalDouble;

/**
 * A beat in the recording; where no bars are known, a stroke of the leader's.
 *
 * @param bar the bar number as printed; empty where no bars are known
 * @param beat beat within the bar, from 1; where no bars are known, number of the leader's stroke, from 1
 * @param timeS seconds from the clip's start
 * @param stderrS standard error of {@code timeS}, seconds; empty for a stroke of the leader's, whose error stands with its
 *     bow
 * @param source one plain word for where the time comes from, such as {@link #LIST}
 */
public record Beat(String bar, int beat, double timeS, OptionalDouble stderrS, String source) {
    /** Given in a list that says no more of its source, as tapped beats are. */
    public static final String LIST = "list";

    /** Counted at a steady tempo. */
    public static final String TEMPO = "tempo";

    /** Heard in the sound. */
    public static final String SOUND = "sound";

    /** Clicked by a metronome that is heard. */
    public static final String CLICKS = "clicks";

    /** Carried over from another take that sounds alike. */
    public static final String CARRIED = "carried";

    /** Tapped along with the sound. */
    public static final String TAPPED = "tapped";

    /** Known to somebody. */
    public static final String ANCHOR = "anchor";

    /** Moved by a person, by ear or eye: as sure as a tap. */
    public static final String BY_HAND = "by hand";

    /** A stroke of the leader's. */
    public static final String LEADER = "leader";

    /**
     * Standard error of a beat that was tapped, seconds: musicians tap along with a standard deviation of 20 to 30 ms (B.
     * Repp, Sensorimotor synchronization: a review of the tapping literature, 2005, from memory). That taps come early as a
     * rule is not taken off.
     */
    public static final double TAPPED_S = 0.025;

    static final int LONGEST_SOURCE = 20;

    public Beat {
        if (bar.isBlank() && !bar.isEmpty()) {
            throw new IllegalArgumentException("a beat lies in a bar");
        }
        if (beat < 1) {
            throw new IllegalArgumentException("beats count from 1, not " + beat);
        }
        if (!Double.isFinite(timeS)) {
            throw new IllegalArgumentException("a beat has a time, not " + timeS);
        }
        if (stderrS.isPresent() && !(stderrS.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("a standard error is not negative, as " + stderrS.getAsDouble());
        }
        if (source.isBlank() || source.length() > LONGEST_SOURCE) {
            throw new IllegalArgumentException("a source is a word, not '" + source + "'");
        }
    }

    /** A beat that somebody listed, as sure as a tap. */
    public Beat(String bar, int beat, double timeS) {
        this(bar, beat, timeS, OptionalDouble.of(TAPPED_S), LIST);
    }

    /** A stroke of the leader's, where no bars are known. */
    public static Beat ofLeader(int stroke, double timeS) {
        return new Beat("", stroke, timeS, OptionalDouble.empty(), LEADER);
    }

    /** Whether its bar is known; it is a stroke of the leader's otherwise. */
    public boolean inBar() {
        return !bar.isEmpty();
    }

    /** As people say it: {@code bar 17 beat 3}, or {@code the leader's stroke 12}. */
    public String spoken() {
        return !inBar() ? "the leader's stroke " + beat : "bar " + bar + " beat " + beat;
    }
}
