package tuttarco.score;

import java.util.List;
import tuttarco.score.PartSpan.Position;

/**
 * One note or chord of the part, in the order played; tied notes are one.
 *
 * @param end exclusive
 * @param pitches sounding pitches as MIDI note numbers (60 is middle C), lowest first; quarter tones are rounded
 * @param plucked played pizzicato
 */
public record Note(Position start, Position end, List<Integer> pitches, boolean plucked) {
    public Note {
        pitches = pitches.stream().distinct().sorted().toList();
        if (pitches.isEmpty()) {
            throw new IllegalArgumentException("a note has a pitch");
        }
    }
}
