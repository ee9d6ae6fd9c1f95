package tuttarco.analysis;

/** The clip could be opened, but no arm could be read from its picture. The message is one sentence for the user. */
public final class NothingSeenException extends Exception {
    private static final long serialVersionUID = 1L;

    public NothingSeenException(String message) {
        super(message);
    }
}
