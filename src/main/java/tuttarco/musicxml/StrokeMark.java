package tuttarco.musicxml;

import java.util.List;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.score.Note.Written;

/**
 * What shall stand in the part's file over one stroke.
 *
 * @param notes the stroke's notes, as the file writes them; the first bears the sign, the others bear none
 * @param sign nothing where the stroke carries on from the one before
 * @param question the sign is not certain: it is coloured, and a question mark stands before it, or instead of it
 */
public record StrokeMark(List<Written> notes, Optional<BowDirection> sign, boolean question) {
    public StrokeMark {
        notes = List.copyOf(notes);
        if (notes.isEmpty()) {
            throw new IllegalArgumentException("a stroke has a note");
        }
    }
}
