package tuttarco.beats;

import java.util.OptionalDouble;

/**
 * A beat in the recording; where no bars are known, a stroke of the leader's.
 *
 * @param bar the bar number as printed; empty where no bars are known
 * @param beat beat within the bar, from 1; where no bars are known, number of the leader's stroke, from 1
 * @param timeS seconds from the clip's start
 * @param stderrS standard error of {@code timeS}, seconds; empty where nobody knows it
 */
public record Beat(String bar, int beat, double timeS, OptionalDouble stderrS) {
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
    }

    /** A beat of which nobody knows how sure it is. */
    public Beat(String bar, int beat, double timeS) {
        this(bar, beat, timeS, OptionalDouble.empty());
    }

    /** A stroke of the leader's, where no bars are known. */
    public static Beat ofLeader(int stroke, double timeS) {
        return new Beat("", stroke, timeS);
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
