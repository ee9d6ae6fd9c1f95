package tuttarco.score;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What of a part's file is on the stand, and how it is played.
 *
 * @param part the part's name, id or instrument; without it the only part, or the only one for the instrument asked for
 * @param voice the voice that is read where it is written; elsewhere, and without a choice, the first voice of a bar
 * @param line which note of a chord is played where players divide; without it all of them
 * @param repeats whether repeat signs are obeyed
 */
public record PartChoice(Optional<String> part, Optional<String> voice, Optional<Line> line, boolean repeats) {
    /** No choice made: repeats are played. */
    public static final PartChoice DEFAULT = new PartChoice(Optional.empty(), Optional.empty(), Optional.empty(), true);

    /** A line of chords divided among players. */
    public enum Line {
        UPPER,
        LOWER;

        /** The word used in files: {@code upper} or {@code lower}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Line> ofWord(String word) {
            return Arrays.stream(values())
                    .filter(line -> line.word().equals(word))
                    .findFirst();
        }
    }
}
