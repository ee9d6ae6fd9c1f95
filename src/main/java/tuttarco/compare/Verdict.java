package tuttarco.compare;

import java.util.Locale;

/** How a player's bow stood to the marking, or to the leader, during one beat. */
public enum Verdict {
    WITH,
    AGAINST,
    /** The arm was seen, but its direction was not certain enough to judge. */
    UNSURE,
    /** The arm was not seen. */
    UNSEEN,
    /** Nothing to compare with: a rest, nothing marked, no leader bowing, or nobody there. */
    REST;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
