package tuttarco.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Rest;

/** Gathers bars, strokes and rests in the order played, each span beginning where the last ended. */
final class PartBuilder {
    /** Most bars of a part; the longest evening's opera has a few thousand (common practice). */
    static final int MOST_BARS = 20_000;

    /** Most strokes and rests of a part; guards against absurd files. */
    private static final int MOST_SPANS = 1_000_000;

    private final Alternation alternation;
    private final List<Bar> bars = new ArrayList<>();
    private final List<PartSpan> spans = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    PartBuilder(Instrument instrument) {
        this.alternation = new Alternation(instrument);
    }

    /** Adds a bar and returns its index. */
    int bar(Bar bar) throws InputException {
        if (bars.size() == MOST_BARS) {
            throw new InputException("the part has more than " + MOST_BARS + " bars; give a shorter one");
        }
        bars.add(bar);
        return bars.size() - 1;
    }

    void stroke(Position start, Position end, Optional<BowDirection> mark) throws InputException {
        if (spans.size() >= MOST_SPANS) {
            throw new InputException("the part has more than " + MOST_SPANS + " strokes and rests; give a shorter one");
        }
        spans.add(alternation.next(start, end, mark));
    }

    void rest(Position start, Position end) {
        if (!spans.isEmpty() && spans.get(spans.size() - 1) instanceof Rest before) {
            spans.set(spans.size() - 1, new Rest(before.start(), end));
        } else {
            spans.add(new Rest(start, end));
        }
    }

    void note(Note note) {
        notes.add(note);
    }

    /** Whether the last note has just these pitches. */
    boolean sounds(List<Integer> pitches) {
        return !notes.isEmpty()
                && Set.copyOf(notes.get(notes.size() - 1).pitches()).equals(Set.copyOf(pitches));
    }

    /** Lets the last note sound until then. */
    void hold(Position end) {
        Note last = notes.remove(notes.size() - 1);
        notes.add(new Note(last.start(), end, last.pitches(), last.plucked(), last.written()));
    }

    Part build(String name) throws InputException {
        if (spans.stream().noneMatch(MarkedStroke.class::isInstance)) {
            throw new InputException("no bowed notes are in the part; check that it is the right one");
        }
        return new Part(name, bars, spans, notes);
    }
}
