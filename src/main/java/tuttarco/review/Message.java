package tuttarco.review;

/** A sentence for the user: what was done, or what went wrong and what to do. */
public record Message(Kind kind, String sentence) {
    /** Told apart in the window by a sign, not by colour alone. */
    public enum Kind {
        SAID,
        TROUBLE
    }

    public static Message said(String sentence) {
        return new Message(Kind.SAID, sentence);
    }

    public static Message trouble(String sentence) {
        return new Message(Kind.TROUBLE, sentence);
    }
}
