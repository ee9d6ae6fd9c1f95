package tuttarco.tracks;

/**
 * What an arm shows besides its motion along the bow; by it bowing is told from what else an arm does.
 *
 * @param across speed across the bow, shoulder widths per second
 * @param trembling speed of what is too quick for one stroke to be told from the next, same unit
 */
public record Gesture(double across, double trembling) {
    /** Nothing but motion along the bow. */
    public static final Gesture NONE = new Gesture(0, 0);
}
