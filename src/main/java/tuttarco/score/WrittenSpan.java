package tuttarco.score;

import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.Position;

/** A stroke or a rest as the part writes it, before its directions are completed. */
public record WrittenSpan(Position start, Position end, Given given) {
    /** What the part says about it. */
    public enum Given {
        REST,
        /** A stroke without a mark. */
        UNMARKED,
        DOWN,
        UP,
        /** A stroke in one bow with the stroke before, separated from it. */
        HOOKED;

        public static Given of(Optional<BowDirection> mark) {
            return mark.map(Given::of).orElse(UNMARKED);
        }

        public static Given of(BowDirection mark) {
            return mark == BowDirection.DOWN ? DOWN : UP;
        }

        public Optional<BowDirection> mark() {
            return switch (this) {
                case DOWN -> Optional.of(BowDirection.DOWN);
                case UP -> Optional.of(BowDirection.UP);
                case REST, UNMARKED, HOOKED -> Optional.empty();
            };
        }
    }

    /** What was written where this span of a completed part stands. */
    public static WrittenSpan of(PartSpan span) {
        return new WrittenSpan(span.start(), span.end(), given(span));
    }

    private static Given given(PartSpan span) {
        if (!(span instanceof PartSpan.MarkedStroke stroke)) {
            return Given.REST;
        }
        if (stroke.marked()) {
            return Given.of(stroke.direction());
        }
        return stroke.reason() instanceof Reason.Hooked ? Given.HOOKED : Given.UNMARKED;
    }
}
