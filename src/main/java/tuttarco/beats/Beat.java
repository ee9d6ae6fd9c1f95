package tuttarco.beats;

import java.util.OptionalDouble;

/**
 * A beat in the recording.
 *
 * @param bar the bar number as printed
 * @param beat beat within the bar, from 1
 * @param timeS seconds from the clip's start
 * @param stderrS standard error of {@code timeS}, seconds; empty where nobody knows it
 */
public record Beat(String bar, int beat, double timeS, OptionalDouble stderrS) {
    public Beat {
        if (bar == null || bar.isBlank()) {
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

    /** As people say it: {@code bar 17 beat 3}. */
    public String spoken() {
        return "bar " + bar + " beat " + beat;
    }
}
