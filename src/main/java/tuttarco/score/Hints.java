package tuttarco.score;

import java.util.List;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.Position;

/**
 * What else the part writes that matters to the bow, in the order played.
 *
 * @param joined notes that go on in the stroke of the note before
 * @param innerMarks bow marks on notes that begin no stroke of their own direction
 * @param fortes notes on which a forte begins
 */
public record Hints(List<Joined> joined, List<InnerMark> innerMarks, List<Position> fortes) {
    public static final Hints NONE = new Hints(List.of(), List.of(), List.of());

    /** A note in the same stroke as the note before. */
    public record Joined(Position at, By by) {}

    /** What joins notes in one stroke. */
    public enum By {
        SLUR,
        TIE
    }

    /** A mark where the bow can't turn, as a slur or tie goes on. */
    public record InnerMark(Position at, BowDirection direction) {}

    public Hints {
        joined = List.copyOf(joined);
        innerMarks = List.copyOf(innerMarks);
        fortes = List.copyOf(fortes);
    }
}
