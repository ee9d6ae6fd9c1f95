package tuttarco.review;

/** How saving a take went. */
public sealed interface Saving {
    /** What to tell the user. */
    String sentence();

    /** All is on the disk, or there is nothing to save. */
    record Saved(String sentence) implements Saving {}

    /** Nothing was written, for the file holds what somebody else wrote: the user chooses which of the two to go on with. */
    record ChangedElsewhere(String sentence) implements Saving {}

    /** It could not be written. */
    record Failed(String sentence) implements Saving {}
}
