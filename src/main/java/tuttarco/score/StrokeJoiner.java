package tuttarco.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.files.InputException;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.WrittenNote.Joins;

/**
 * Joins notes to strokes: tied notes and the notes under a slur are one stroke, also over bar lines. Where slurs overlap or
 * one begins on the note on which another ends, all their notes are one stroke. A rest ends a stroke. A slur that never
 * ends, or ends without a beginning, is passed over. Only the mark of a stroke's first note counts.
 */
final class StrokeJoiner {
    private record Placed(Position start, Position end, boolean bowed, Joins joins) {}

    private final List<Placed> notes = new ArrayList<>();

    void note(Position start, Position end, Joins joins) {
        notes.add(new Placed(start, end, true, joins));
    }

    void rest(Position start, Position end) {
        notes.add(new Placed(start, end, false, Joins.NONE));
    }

    void finish(PartBuilder part) throws InputException {
        boolean[] slurred = slurredToPrevious();
        for (int first = 0; first < notes.size(); ) {
            Placed note = notes.get(first);
            int next = first + 1;
            while (next < notes.size() && joined(next, slurred)) {
                next++;
            }
            Position end = notes.get(next - 1).end();
            Optional<BowDirection> mark = note.joins().mark();
            if (note.bowed()) {
                part.stroke(note.start(), end, mark);
            } else {
                part.rest(note.start(), end);
            }
            first = next;
        }
    }

    private boolean joined(int index, boolean[] slurred) {
        Placed before = notes.get(index - 1);
        Placed note = notes.get(index);
        boolean tied = before.joins().tieStarts() && note.joins().tieStops();
        return before.bowed() && note.bowed() && (tied || slurred[index]);
    }

    private boolean[] slurredToPrevious() {
        int[] change = new int[notes.size() + 1];
        Map<String, Integer> open = new HashMap<>();
        for (int i = 0; i < notes.size(); i++) {
            for (String number : notes.get(i).joins().slurStops()) {
                Integer start = open.remove(number);
                if (start != null) {
                    change[start + 1]++;
                    change[i + 1]--;
                }
            }
            for (String number : notes.get(i).joins().slurStarts()) {
                open.put(number, i);
            }
        }
        boolean[] slurred = new boolean[notes.size()];
        int depth = 0;
        for (int i = 0; i < notes.size(); i++) {
            depth += change[i];
            slurred[i] = depth > 0;
        }
        return slurred;
    }
}
