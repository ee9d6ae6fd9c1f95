package tuttarco.score;

import java.util.List;
import tuttarco.score.PartSpan.Position;

/**
 * One note or chord of the part, in the order played; tied notes are one.
 *
 * @param end exclusive
 * @param pitches sounding pitches as MIDI note numbers (60 is middle C), lowest first; quarter tones are rounded
 * @param plucked played pizzicato
 * @param written where the part's file writes it; the first of tied notes and of a chord
 */
public record Note(Position start, Position end, List<Integer> pitches, boolean plucked, Written written) {
    /**
     * A note's place in the file of a part.
     *
     * @param measure index of the measure among the part's measures, in the order of the file
     * @param note index of the note or rest among all of that measure, in the order of the file
     */
    public record Written(int measure, int note) {}

    public Note {
        pitches = pitches.stream().distinct().sorted().toList();
        if (pitches.isEmpty()) {
            throw new IllegalArgumentException("a note has a pitch");
        }
    }
}
