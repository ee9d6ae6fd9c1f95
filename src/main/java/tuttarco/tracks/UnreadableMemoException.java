package tuttarco.tracks;

import java.io.IOException;

/** What an earlier run is said to have written is not what this program writes. */
public final class UnreadableMemoException extends Exception {
    private static final long serialVersionUID = 1L;

    UnreadableMemoException(IOException cause) {
        super("a memo of an earlier run is of no use", cause);
    }
}
