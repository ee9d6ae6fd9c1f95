package tuttarco.score;

import java.util.Arrays;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;

/** How players of one kind of bow begin a strong beat, where nothing is marked (common practice, no source). */
public enum Practice {
    /** Strong beats down, upbeats up. */
    VIOLIN_FAMILY("violins", BowDirection.DOWN),
    /** Strong beats up (pushed), upbeats down. */
    VIOLS("viols", BowDirection.UP);

    private final String word;
    private final BowDirection strongBeat;

    Practice(String word, BowDirection strongBeat) {
        this.word = word;
        this.strongBeat = strongBeat;
    }

    /** The practice of who plays the instrument. */
    public static Practice of(Instrument instrument) {
        return Arrays.stream(values())
                .filter(practice -> practice.strongBeat == instrument.strongBeat())
                .findFirst()
                .orElseThrow();
    }

    public static Optional<Practice> ofWord(String word) {
        return Arrays.stream(values())
                .filter(practice -> practice.word.equals(word))
                .findFirst();
    }

    /** The word used on the command line: {@code violins} or {@code viols}. */
    public String word() {
        return word;
    }

    public BowDirection strongBeat() {
        return strongBeat;
    }
}
