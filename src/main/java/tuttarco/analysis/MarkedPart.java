package tuttarco.analysis;

import java.util.List;
import tuttarco.mark.BowMarks;
import tuttarco.musicxml.PartDocument;

/**
 * A take's part and the bow signs one player's bowing gives it.
 *
 * @param part place of the part among those of the document, from 0
 * @param notes things to tell the user about the reading, one sentence each
 */
public record MarkedPart(PartDocument document, int part, BowMarks marks, List<String> notes) {
    public MarkedPart {
        notes = List.copyOf(notes);
    }
}
