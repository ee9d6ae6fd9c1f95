package tuttarco.seats;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A player's place at the desk: the outside player sits on the audience's side (common practice, no source). */
public enum Place {
    OUTSIDE,
    INSIDE;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Place> ofWord(String word) {
        return Arrays.stream(values()).filter(p -> p.word().equals(word)).findFirst();
    }
}
