package tuttarco.compare;

import java.util.Optional;
import tuttarco.beats.TimedSpan;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.MarkedStroke;

/**
 * How a player bowed one stroke of the part.
 *
 * @param timed when the stroke was due
 * @param verdict how most of its time stood to the marking
 * @param direction at the stroke's start; where the verdict is neither with nor against, what was more likely, if anything
 * @param strokes how many strokes the player made of it: bows that changed direction within it
 * @param goesOn whether the player was still in the same bow as in the stroke before
 */
public record PlayedStroke(
        TimedSpan timed,
        MarkedStroke marked,
        Verdict verdict,
        Optional<BowDirection> direction,
        int strokes,
        boolean goesOn) {
    public PlayedStroke {
        if (direction.isEmpty() && (verdict == Verdict.WITH || verdict == Verdict.AGAINST)) {
            throw new IllegalArgumentException("a verdict rests on a direction");
        }
    }

    /** Whether the direction is certain enough to be written down. */
    public boolean certain() {
        return verdict == Verdict.WITH || verdict == Verdict.AGAINST;
    }
}
