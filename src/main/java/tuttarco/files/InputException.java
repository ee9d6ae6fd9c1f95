package tuttarco.files;

/**
 * Something the user gave can't be read or is not valid. The message is one sentence in plain English that says what is
 * wrong, where, and what to do; it is shown to the user as it stands.
 */
public final class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    public InputException(String message) {
        super(message);
    }

    public InputException(String message, Throwable cause) {
        super(message, cause);
    }
}
