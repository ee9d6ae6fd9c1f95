package tuttarco.beats;

/**
 * A beat in the recording.
 *
 * @param bar the bar number as printed
 * @param beat beat within the bar, from 1
 * @param timeS seconds from the clip's start
 */
public record Beat(String bar, int beat, double timeS) {
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
    }

    /** As people say it: {@code bar 17 beat 3}. */
    public String spoken() {
        return "bar " + bar + " beat " + beat;
    }
}
