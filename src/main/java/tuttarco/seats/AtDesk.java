package tuttarco.seats;

/** Somebody of the section, known by a label, and where he or she sits. */
public interface AtDesk {
    String label();

    int desk();

    Place place();
}
