package tuttarco.take;

/** How the take was meant to be bowed: all alike, or each as he or she likes so that no change is heard. */
public enum Bowing {
    UNIFIED,
    FREE;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
