package tuttarco.bow;

import java.util.Arrays;
import java.util.Optional;

/** The bowed instruments a section can hold, with what their playing position says about the bow. */
public enum Instrument {
    VIOLIN,
    VIOLA,
    CELLO,
    BASS,
    VIOL;

    /** The word used in files and on the command line: {@code violin}, {@code viola} and so on. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static Optional<Instrument> ofWord(String word) {
        return Arrays.stream(values()).filter(i -> i.word().equals(word)).findFirst();
    }

    /** Held on the shoulder (violin, viola) rather than standing on the floor or between the legs. */
    public boolean onShoulder() {
        return this == VIOLIN || this == VIOLA;
    }

    /**
     * The direction a strong beat takes: down-bow in the violin family, up-bow (push) on viols, whose bow is held
     * underhand (common practice, no source).
     */
    public BowDirection strongBeat() {
        return this == VIOL ? BowDirection.UP : BowDirection.DOWN;
    }
}
