package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.files.InputException;
import tuttarco.musicxml.WrittenNote.Joins;
import tuttarco.score.Hints.By;
import tuttarco.score.PartBuilder;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.WrittenSpan.Given;

/**
 * Joins notes to strokes: tied notes and the notes under a slur are one stroke, also over bar lines. Where slurs overlap or
 * one begins on the note on which another ends, all their notes are one stroke. A note under a slur is hooked, a stroke of
 * its own in the same bow, where it carries a dot or a dash, repeats the mark of the slur's first note, or comes after a rest
 * under the slur. Any other rest ends a stroke. A slur that never ends, or ends without a beginning, is passed over.
 */
final class StrokeJoiner {
    private record Placed(Position start, Position end, boolean bowed, Joins joins) {}

    private enum Link {
        NONE,
        TIE,
        SLUR,
        /** A slur over rests. */
        SLUR_OVER_REST
    }

    private final List<Placed> notes = new ArrayList<>();

    void note(Position start, Position end, Joins joins) {
        notes.add(new Placed(start, end, true, joins));
    }

    void rest(Position start, Position end) {
        notes.add(new Placed(start, end, false, Joins.NONE));
    }

    void finish(PartBuilder part) throws InputException {
        boolean[] slurred = slurredToPrevious();
        Optional<BowDirection> bow = Optional.empty();
        for (int first = 0; first < notes.size(); ) {
            Placed note = notes.get(first);
            if (!note.bowed()) {
                part.rest(note.start(), note.end());
                first++;
                continue;
            }
            boolean hooked = link(first, slurred) != Link.NONE;
            bow = hooked ? bow : note.joins().mark();
            int next = first + 1;
            while (next < notes.size() && goesOn(next, slurred, bow)) {
                next++;
            }
            Given given = hooked ? Given.HOOKED : Given.of(bow);
            part.stroke(note.start(), notes.get(next - 1).end(), given);
            addHints(first, next, slurred, bow, part);
            first = next;
        }
    }

    private void addHints(int first, int next, boolean[] slurred, Optional<BowDirection> bow, PartBuilder part) {
        for (int i = first; i < next; i++) {
            Placed note = notes.get(i);
            if (note.joins().forte()) {
                part.forte(note.start());
            }
            if (i > first) {
                part.join(note.start(), link(i, slurred) == Link.TIE ? By.TIE : By.SLUR);
            }
            Optional<BowDirection> mark = note.joins().mark();
            if (mark.isPresent() && !mark.equals(bow)) {
                part.innerMark(note.start(), mark.get());
            }
        }
    }

    /** Whether the note goes on in the stroke of the note before. */
    private boolean goesOn(int index, boolean[] slurred, Optional<BowDirection> bow) {
        Joins joins = notes.get(index).joins();
        boolean separated =
                joins.detached() || (joins.mark().isPresent() && joins.mark().equals(bow));
        Link link = link(index, slurred);
        return link == Link.TIE || (link == Link.SLUR && !separated);
    }

    private Link link(int index, boolean[] slurred) {
        if (index == 0 || !notes.get(index).bowed() || !slurredOrTied(index, slurred)) {
            return Link.NONE;
        }
        Placed before = notes.get(index - 1);
        if (before.bowed()) {
            boolean tied =
                    before.joins().tieStarts() && notes.get(index).joins().tieStops();
            return tied ? Link.TIE : Link.SLUR;
        }
        return overRest(index, slurred) ? Link.SLUR_OVER_REST : Link.NONE;
    }

    private boolean slurredOrTied(int index, boolean[] slurred) {
        return slurred[index]
                || (notes.get(index - 1).joins().tieStarts()
                        && notes.get(index).joins().tieStops());
    }

    private boolean overRest(int index, boolean[] slurred) {
        int last = index - 1;
        while (last >= 0 && !notes.get(last).bowed() && slurred[last]) {
            last--;
        }
        return last >= 0 && notes.get(last).bowed();
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
