package tuttarco.film;

/** Told how far a work has come. */
@FunctionalInterface
public interface Progress {
    /** @param share of the whole work, 0 to 1 */
    void reached(double share);
}
