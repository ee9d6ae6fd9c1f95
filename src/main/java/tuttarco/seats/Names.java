package tuttarco.seats;

/** How players are called in what is handed out. */
public enum Names {
    /** By their desk and place, so that who does not know the section does not know them. */
    BY_DESK,
    /** By their labels: only if the user says so. */
    SHOWN
}
