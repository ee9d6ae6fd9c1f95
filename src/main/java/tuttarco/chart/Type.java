package tuttarco.chart;

import java.awt.Font;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The typeface of charts, for what stands around them. */
public final class Type {
    /** What a reader takes for one sign, however many characters it is of (Unicode Standard Annex 29). */
    private static final Pattern SIGN = Pattern.compile("\\X");

    /** They only ask for a sign in colour or without. */
    private static final Pattern VARIATION_SELECTORS = Pattern.compile("[\\uFE00-\\uFE0F]");

    private Type() {}

    /** Running text. */
    public static Font body() {
        return Look.regular(Look.BODY_PX);
    }

    /** Headings and what is chosen. */
    public static Font heading() {
        return Look.semibold(Look.TITLE_PX);
    }

    /** Figures in charts and small words. */
    public static Font small() {
        return Look.regular(Look.SMALL_PX);
    }

    /** Words that stand out of running text. */
    public static Font strong() {
        return Look.semibold(Look.BODY_PX);
    }

    /** The given font, or where it lacks a sign of the text, the system's own in its size. */
    public static Font able(Font font, String text) {
        return Look.able(font, text).deriveFont(font.getSize2D());
    }

    /**
     * The text without emoji and other signs that neither the font nor the system's own has, which would draw a box instead.
     * Letters and figures stay, for a box says that there is one; so does a text of nothing else.
     */
    public static String drawable(Font font, String text) {
        String drawable = SIGN.matcher(VARIATION_SELECTORS.matcher(text).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .filter(sign -> sign.codePoints().anyMatch(Character::isLetterOrDigit)
                        || able(font, sign).canDisplayUpTo(sign) < 0)
                .collect(Collectors.joining());
        return drawable.isBlank() || drawable.equals(text)
                ? text
                : drawable.replaceAll(" +", " ").strip();
    }
}
