package tuttarco.files;

/** Something could not be written. The message is one sentence in plain English, shown to the user as it stands. */
public final class OutputException extends Exception {
    private static final long serialVersionUID = 1L;

    public OutputException(String message, Throwable cause) {
        super(message, cause);
    }
}
