package tuttarco.strokes;

import java.util.Locale;
import java.util.Optional;
import tuttarco.bow.BowDirection;

/** What an arm did during a span of time, as read from the picture. */
public enum StrokeKind {
    DOWN,
    UP,
    /** Short strokes to and fro, too fast for one to be told from the next; no direction is claimed. */
    TREMOLO,
    /** The arm is seen and does not bow. */
    STILL,
    /** The arm is seen, but the direction is not certain enough to claim. */
    UNSURE,
    /** The arm is not seen. */
    UNSEEN,
    /** The player is not there, as a person said; this is never read. */
    ABSENT;

    /** The word used in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The bow direction claimed, empty unless down or up. */
    public Optional<BowDirection> direction() {
        return switch (this) {
            case DOWN -> Optional.of(BowDirection.DOWN);
            case UP -> Optional.of(BowDirection.UP);
            case TREMOLO, STILL, UNSURE, UNSEEN, ABSENT -> Optional.empty();
        };
    }

    public static StrokeKind of(BowDirection direction) {
        return direction == BowDirection.DOWN ? DOWN : UP;
    }
}
