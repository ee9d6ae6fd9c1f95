package tuttarco.strokes;

import java.util.Locale;

/** A third of the stretch of bow that a player uses. */
public enum BowPart {
    FROG,
    MIDDLE,
    TIP;

    /** The word used in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
