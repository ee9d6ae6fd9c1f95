package tuttarco.score;

import java.util.Optional;

/**
 * One bar of the part, in the order played.
 *
 * @param number the bar number as printed; usually a number, but {@code 12a} occurs, and {@code 0} for a pickup bar
 * @param firstBeat the beat on which the bar begins: 1, or later for a pickup bar (a one-beat pickup in 4/4 begins on 4)
 * @param lengthBeats length of the bar in beats of its metre; a full bar has {@code metre.beats()}
 * @param rehearsal the rehearsal mark that stands in it
 */
public record Bar(String number, Metre metre, double firstBeat, double lengthBeats, Optional<String> rehearsal) {
    public Bar {
        if (number == null || number.isBlank()) {
            throw new IllegalArgumentException("a bar has a number");
        }
        if (!(lengthBeats > 0)) {
            throw new IllegalArgumentException("a bar has a length, not " + lengthBeats + " beats");
        }
        if (!(firstBeat >= 1)) {
            throw new IllegalArgumentException("beats count from 1, not " + firstBeat);
        }
    }

    /** A bar without a rehearsal mark. */
    public Bar(String number, Metre metre, double firstBeat, double lengthBeats) {
        this(number, metre, firstBeat, lengthBeats, Optional.empty());
    }

    public static Bar full(String number, Metre metre) {
        return new Bar(number, metre, 1, metre.beats());
    }
}
