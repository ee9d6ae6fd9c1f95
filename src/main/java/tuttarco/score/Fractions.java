package tuttarco.score;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.fraction.BigFraction;

/** Exact note lengths, so that three thirds of a beat are a beat. */
public final class Fractions {
    /** Finest grid a length may lie on, in bits of its denominator; guards against absurd files. */
    private static final int FINEST_BITS = 40;

    private static final Pattern DECIMAL = Pattern.compile("([0-9]{1,9})(?:\\.([0-9]{1,6}))?");
    private static final Pattern RATIO = Pattern.compile("([0-9]{1,4})/([0-9]{1,4})");

    private Fractions() {}

    /** A number like {@code 2} or {@code 0.5}, not negative; nothing if it is something else. */
    public static Optional<BigFraction> ofDecimal(String text) {
        Matcher decimal = DECIMAL.matcher(text);
        if (!decimal.matches()) {
            return Optional.empty();
        }
        BigDecimal value = new BigDecimal(text);
        return Optional.of(new BigFraction(
                value.unscaledValue(), BigDecimal.TEN.pow(value.scale()).toBigIntegerExact()));
    }

    /** A number like {@code 2}, {@code 0.5} or {@code 2/3}, not negative; nothing if it is something else. */
    public static Optional<BigFraction> of(String text) {
        Matcher ratio = RATIO.matcher(text);
        if (!ratio.matches()) {
            return ofDecimal(text);
        }
        int below = Integer.parseInt(ratio.group(2));
        return below == 0 ? Optional.empty() : Optional.of(new BigFraction(Integer.parseInt(ratio.group(1)), below));
    }

    /** Whether it is more than nothing. */
    public static boolean positive(BigFraction length) {
        return length.getNumerator().signum() > 0;
    }

    /** Whether any notation has such a length. */
    public static boolean sane(BigFraction length) {
        return length.getDenominator().bitLength() <= FINEST_BITS;
    }

    /** The longer of two. */
    public static BigFraction max(BigFraction a, BigFraction b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /** As a person writes it: {@code 3}, {@code 1/2}, {@code 7/3}. */
    public static String spoken(BigFraction length) {
        return length.getDenominator().bitLength() == 1
                ? length.getNumerator().toString()
                : length.getNumerator() + "/" + length.getDenominator();
    }
}
