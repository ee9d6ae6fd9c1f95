package tuttarco.files;

import java.util.stream.IntStream;

/** Makes text from outside harmless in a message of one line. */
public final class Plain {
    /** Longest text that is quoted, in characters; longer ones are cut (chosen: a long path still fits). */
    public static final int LONGEST = 200;

    private static final String CUT = "...";
    private static final int INSTEAD = '?';

    private Plain() {}

    /**
     * The text with everything that could move the cursor, break the line or turn the reading direction replaced by
     * {@code ?}, and cut to {@link #LONGEST} characters.
     */
    public static String text(String untrusted) {
        String plain = plain(untrusted.codePoints().limit(LONGEST + 1L));
        if (plain.codePointCount(0, plain.length()) <= LONGEST) {
            return plain;
        }
        return plain.substring(0, plain.offsetByCodePoints(0, LONGEST - CUT.length())) + CUT;
    }

    /** The text made harmless as {@link #text} does, but whole: for a sentence of our own that quotes the user's words. */
    public static String line(String sentence) {
        return plain(sentence.codePoints());
    }

    private static String plain(IntStream codePoints) {
        return codePoints
                .map(c -> harmless(c) ? c : INSTEAD)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
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
