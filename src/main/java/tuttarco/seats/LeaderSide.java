package tuttarco.seats;

import java.util.Locale;

/** The side of the picture on which the leader sits. */
public enum LeaderSide {
    LEFT,
    RIGHT;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
