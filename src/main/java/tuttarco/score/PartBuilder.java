package tuttarco.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Hints.By;
import tuttarco.score.Hints.InnerMark;
import tuttarco.score.Hints.Joined;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.WrittenSpan.Given;

/** Gathers bars, strokes and rests in the order played, each span beginning where the last ended. */
public final class PartBuilder {
    /** Most bars of a part; the longest evening's opera has a few thousand (common practice). */
    public static final int MOST_BARS = 20_000;

    /** Most strokes and rests of a part; guards against absurd files. */
    private static final int MOST_SPANS = 1_000_000;

    private final Practice practice;
    private final List<Bar> bars = new ArrayList<>();
    private final List<WrittenSpan> spans = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private final List<Joined> joined = new ArrayList<>();
    private final List<InnerMark> innerMarks = new ArrayList<>();
    private final List<Position> fortes = new ArrayList<>();

    /** A part bowed as the instrument is. */
    public PartBuilder(Instrument instrument) {
        this(Practice.of(instrument));
    }

    public PartBuilder(Practice practice) {
        this.practice = practice;
    }

    /** Adds a bar and returns its index. */
    public int bar(Bar bar) throws InputException {
        if (bars.size() == MOST_BARS) {
            throw new InputException("the part has more than " + MOST_BARS + " bars; give a shorter one");
        }
        bars.add(bar);
        return bars.size() - 1;
    }

    /** @throws InputException if the part grows too long */
    public void stroke(Position start, Position end, Given given) throws InputException {
        if (spans.size() >= MOST_SPANS) {
            throw new InputException("the part has more than " + MOST_SPANS + " strokes and rests; give a shorter one");
        }
        spans.add(new WrittenSpan(start, end, given));
    }

    /** Adds a rest; rests that follow each other become one. */
    public void rest(Position start, Position end) {
        if (!spans.isEmpty() && spans.get(spans.size() - 1).given() == Given.REST) {
            WrittenSpan before = spans.remove(spans.size() - 1);
            spans.add(new WrittenSpan(before.start(), end, Given.REST));
        } else {
            spans.add(new WrittenSpan(start, end, Given.REST));
        }
    }

    /** A note goes on in the stroke of the note before. */
    public void join(Position at, By by) {
        joined.add(new Joined(at, by));
    }

    /** A bow mark stands where the bow can't turn. */
    public void innerMark(Position at, BowDirection mark) {
        innerMarks.add(new InnerMark(at, mark));
    }

    /** A forte begins there. */
    public void forte(Position at) {
        fortes.add(at);
    }

    public boolean hasStroke() {
        return spans.stream().anyMatch(span -> span.given() != Given.REST);
    }

    /** Adds a note behind those added. */
    public void note(Note note) {
        notes.add(note);
    }

    /** Whether the last note has just these pitches. */
    public boolean sounds(List<Integer> pitches) {
        return !notes.isEmpty()
                && Set.copyOf(notes.get(notes.size() - 1).pitches()).equals(Set.copyOf(pitches));
    }

    /** Lets the last note sound until then. */
    public void hold(Position end) {
        Note last = notes.remove(notes.size() - 1);
        notes.add(new Note(last.start(), end, last.pitches(), last.plucked(), last.written()));
    }

    /**
     * The part, completed.
     *
     * @throws InputException if no stroke was added
     */
    public Part build(String name) throws InputException {
        if (!hasStroke()) {
            throw new InputException("no bowed notes are in the part; check that it is the right one");
        }
        return Completing.of(name, bars, spans, notes, new Hints(joined, innerMarks, fortes), practice);
    }
}
