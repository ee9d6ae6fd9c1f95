package tuttarco.score;

import java.util.Optional;
import tuttarco.files.InputException;

/** Text of a part, as somebody types it: the part it makes, or what is wrong with it. */
public sealed interface Typed {
    /** The part, completed. */
    record Read(Part part) implements Typed {}

    /**
     * Something wrong.
     *
     * @param place where, if it is at one place
     * @param sentence what it is and what to do
     */
    record Wrong(Optional<Place> place, String sentence) implements Typed {
        /** {@code line 3, column 7: ...}, or the sentence alone. */
        public String spoken() {
            return place.map(at -> at.spoken() + ": " + sentence).orElse(sentence);
        }
    }

    /**
     * A place in the text.
     *
     * @param line from 1
     * @param column in characters as people count them (code points), from 1
     */
    record Place(int line, int column) {
        public String spoken() {
            return "line " + line + ", column " + column;
        }
    }

    /**
     * The part.
     *
     * @param file what the text is called in messages
     * @throws InputException if something is wrong
     */
    default Part orThrow(String file) throws InputException {
        if (this instanceof Wrong wrong) {
            throw new InputException(file + ": " + wrong.spoken());
        }
        return ((Read) this).part();
    }
}
