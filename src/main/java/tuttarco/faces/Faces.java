package tuttarco.faces;

/** How faces are given out in pictures. */
public enum Faces {
    /** So that nobody is known by them. */
    BLURRED,
    /** As they were filmed: only if the user says so. */
    SHOWN
}
