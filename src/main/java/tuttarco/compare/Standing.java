package tuttarco.compare;

import java.util.Locale;

/** How a player stands to the marking, or to the leader, over a stretch of beats. */
public enum Standing {
    WITH,
    /** Bows the other way round, stroke for stroke. */
    TURNED,
    /** Bows without regard to the reference: now with it, now against. */
    FREE,
    /** Does not bow where the reference does. */
    RESTING;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
