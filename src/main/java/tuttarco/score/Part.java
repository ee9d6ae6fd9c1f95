package tuttarco.score;

import java.util.List;

/**
 * The part on the stand: its bars in the order played, its strokes and rests with their directions, and its notes.
 *
 * @param notes in the order played; empty where only strokes are known
 * @param awkward where the bowing contradicts itself or sits badly, in the order played
 */
public record Part(
        String name, List<Bar> bars, List<PartSpan> spans, List<Note> notes, Hints hints, List<Awkward> awkward) {
    public Part {
        notes = List.copyOf(notes);
        awkward = List.copyOf(awkward);
        bars = List.copyOf(bars);
        spans = List.copyOf(spans);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("a part has at least one bar");
        }
    }

    /** A part of which only the strokes are known, completed already. */
    public Part(String name, List<Bar> bars, List<PartSpan> spans) {
        this(name, bars, spans, List.of(), Hints.NONE, List.of());
    }

    /** The same part with everything that is not marked completed anew by that practice. */
    public Part completed(Practice practice) {
        return Completing.of(name, bars, spans.stream().map(WrittenSpan::of).toList(), notes, hints, practice);
    }
}
