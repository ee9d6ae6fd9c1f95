package tuttarco.files;

/** Makes text from outside harmless in a message of one line. */
public final class Plain {
    /** Longest text that is quoted, in characters; longer ones are cut (chosen so that a message stays a sentence). */
    public static final int LONGEST = 80;

    private static final String CUT = "...";
    private static final int INSTEAD = '?';

    private Plain() {}

    /**
     * The text with everything that could move the cursor, break the line or turn the reading direction replaced by
     * {@code ?}, and cut to {@link #LONGEST} characters.
     */
    public static String text(String untrusted) {
        StringBuilder plain = new StringBuilder();
        untrusted
                .codePoints()
                .limit(LONGEST + 1L)
                .map(c -> harmless(c) ? c : INSTEAD)
                .forEach(plain::appendCodePoint);
        if (plain.codePointCount(0, plain.length()) <= LONGEST) {
            return plain.toString();
        }
        return plain.substring(0, plain.offsetByCodePoints(0, LONGEST - CUT.length())) + CUT;
    }

    private static boolean harmless(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
