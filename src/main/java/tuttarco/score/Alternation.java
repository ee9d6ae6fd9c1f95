package tuttarco.score;

import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Source;

/**
 * Gives the strokes of a part their directions, in the order played.
 *
 * <p>A marked stroke has the direction marked. A stroke without a mark goes the other way than the stroke before it, also
 * across a rest. If the very first stroke has no mark, it takes the instrument's strong-beat direction where it begins a
 * bar, and the other direction where it begins later, as a pickup does (common practice, no source). Retakes after rests
 * are not guessed: they are marked or not there.
 */
final class Alternation {
    private final Instrument instrument;
    private Optional<BowDirection> before = Optional.empty();

    Alternation(Instrument instrument) {
        this.instrument = instrument;
    }

    MarkedStroke next(Position start, Position end, Optional<BowDirection> mark) {
        BowDirection direction =
                mark.or(() -> before.map(BowDirection::opposite)).orElseGet(() -> opening(start));
        before = Optional.of(direction);
        return new MarkedStroke(start, end, direction, mark.isPresent() ? Source.MARKED : Source.ALTERNATED);
    }

    private BowDirection opening(Position start) {
        return start.beat() == 1
                ? instrument.strongBeat()
                : instrument.strongBeat().opposite();
    }
}
