package tuttarco.bow;

/** The two ways a bow can go: down-bow runs from frog to tip, up-bow from tip to frog (common practice, no source). */
public enum BowDirection {
    DOWN,
    UP;

    public BowDirection opposite() {
        return this == DOWN ? UP : DOWN;
    }

    /** The word used in files: {@code down} or {@code up}. */
    public String word() {
        return this == DOWN ? "down" : "up";
    }
}
