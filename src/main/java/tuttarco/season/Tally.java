package tuttarco.season;

/**
 * How often bows went with the marking or the leader, in beats.
 *
 * @param judged how many could be judged
 * @param bowed how many there were to judge
 */
public record Tally(int with, int judged, int bowed) {
    public static final Tally NONE = new Tally(0, 0, 0);

    public Tally {
        if (with < 0 || with > judged || judged > bowed) {
            throw new IllegalArgumentException(with + " of " + judged + " of " + bowed + " is no tally");
        }
    }

    /** The beats of both. */
    public Tally plus(Tally other) {
        return new Tally(with + other.with, judged + other.judged, bowed + other.bowed);
    }

    /** The share that went with it, of what could be judged. */
    public double share() {
        return (double) with / judged;
    }
}
