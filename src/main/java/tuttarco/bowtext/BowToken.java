package tuttarco.bowtext;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.score.Fractions;
import tuttarco.score.WrittenSpan.Given;

/**
 * One entry of a bar of bow text.
 *
 * @param length beats, more than none
 * @param count how many times the entry is meant, from 1
 * @param heldOver the stroke goes on in the next bar
 */
record BowToken(What what, Given given, BigFraction length, int count, boolean heldOver) {
    /** What an entry stands for. */
    enum What {
        STROKE,
        /** The rest of a stroke that began in the bar before. */
        HELD,
        REST
    }

    /** Unicode's musical symbols down bow and up bow. */
    static final String DOWN_SIGN = "\uD834\uDDAA";

    static final String UP_SIGN = "\uD834\uDDAB";

    private static final Pattern ENTRY = Pattern.compile("(?<sign>[du.=~-]|" + DOWN_SIGN + "|" + UP_SIGN
            + ")(?<length>[0-9./]{1,9})??(x(?<count>[0-9]{1,3}))?(?<held>~)?");

    /** Reads an entry such as {@code d}, {@code u1/2}, {@code .x4}, {@code d2~}, {@code ~2} or {@code -4}. */
    static Optional<BowToken> of(String text) {
        Matcher entry = ENTRY.matcher(text);
        if (!entry.matches()) {
            return Optional.empty();
        }
        What what = what(entry.group("sign"));
        int count = entry.group("count") == null ? 1 : Integer.parseInt(entry.group("count"));
        boolean held = entry.group("held") != null;
        boolean sensible =
                count >= 1 && !(held && (what == What.REST || count > 1)) && !(what == What.HELD && count > 1);
        Optional<BigFraction> length =
                entry.group("length") == null ? Optional.of(BigFraction.ONE) : Fractions.of(entry.group("length"));
        return length.filter(beats -> sensible && Fractions.positive(beats))
                .map(beats -> new BowToken(what, given(entry.group("sign")), beats, count, held));
    }

    BigFraction total() {
        return length.multiply(count);
    }

    private static What what(String sign) {
        return switch (sign) {
            case "-" -> What.REST;
            case "~" -> What.HELD;
            default -> What.STROKE;
        };
    }

    private static Given given(String sign) {
        return switch (sign) {
            case "d", DOWN_SIGN -> Given.DOWN;
            case "u", UP_SIGN -> Given.UP;
            case "=" -> Given.HOOKED;
            case "-" -> Given.REST;
            default -> Given.UNMARKED;
        };
    }
}
