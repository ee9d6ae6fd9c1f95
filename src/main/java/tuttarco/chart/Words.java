package tuttarco.chart;

import java.awt.FontMetrics;
import java.text.BreakIterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.compare.Divergence;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

/** How charts and pages say things. */
public final class Words {
    /** Names listed before "and n more". */
    private static final int MOST_NAMES = 3;

    private Words() {}

    /** {@code bar 17}, or {@code bars 17-19} with an en dash. */
    public static String bars(String first, String last) {
        return first.equals(last) ? "bar " + first : "bars " + first + "–" + last;
    }

    /** {@code Bar 17 beat 3 to bar 18 beat 4}; a single beat is named once, a single bar's beats together. */
    public static String stretch(Beat first, Beat last) {
        if (!first.inBar()) {
            String strokes = "The leader's stroke" + (first.beat() == last.beat() ? " " : "s ");
            return strokes + numbers(first, last);
        }
        if (!first.bar().equals(last.bar())) {
            return "Bar " + first.bar() + " beat " + first.beat() + " to " + last.spoken();
        }
        if (first.beat() == last.beat()) {
            return "Bar " + first.bar() + " beat " + first.beat();
        }
        return "Bar " + first.bar() + " beats " + first.beat() + "–" + last.beat();
    }

    private static String numbers(Beat first, Beat last) {
        return first.beat() == last.beat() ? Integer.toString(first.beat()) : first.beat() + "–" + last.beat();
    }

    /** What is counted: {@code beat}, or {@code stroke} of the leader's where no bars are known. */
    public static String unit(BeatMap beats) {
        return beats.inBars() ? "beat" : "stroke";
    }

    /** A time in the clip to a tenth of a second: {@code 0:42.3}. */
    public static String clock(double timeS) {
        long tenths = Math.round(Math.abs(timeS) * 10);
        return String.format(
                Locale.ROOT,
                "%s%d:%02d.%d",
                timeS < 0 && tenths > 0 ? "-" : "",
                tenths / 600,
                tenths / 10 % 60,
                tenths % 10);
    }

    /** {@code 83 %} of a share from 0 to 1. */
    public static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** {@code 42 to 47 %} of shares. */
    public static String percents(Interval shares) {
        return Math.round(shares.low() * 100) + " to " + percent(shares.high());
    }

    /** {@code 85 ms}. */
    public static String milliseconds(double ms) {
        return Math.round(ms) + " ms";
    }

    /** {@code 1 bar}, {@code 3 bars}. */
    public static String count(long number, String singular) {
        return count(number, singular, singular + "s");
    }

    public static String count(long number, String singular, String plural) {
        return number + " " + (number == 1 ? singular : plural);
    }

    /** {@code Ann}, {@code Ann and Bo}, {@code Ann, Bo, Cy and 2 more}. */
    public static String names(List<Player> players) {
        return labels(players.stream().map(Player::label).toList());
    }

    /** The same of players' labels. */
    public static String labels(List<String> players) {
        List<String> labels =
                players.stream().limit(MOST_NAMES).map(Words::plain).toList();
        int more = players.size() - labels.size();
        if (more > 0) {
            return String.join(", ", labels) + " and " + more + " more";
        }
        int last = labels.size() - 1;
        return last == 0
                ? labels.get(0)
                : labels.stream().limit(last).collect(Collectors.joining(", ")) + " and " + labels.get(last);
    }

    /**
     * {@code turned in bars 3-4}; without a marking {@code went against the leader in bars 3-4}. Where the playing stopped,
     * bars may have been played again, so that the time is told too: {@code turned in bars 3-4 (0:42.3)}.
     */
    public static String turned(Divergence divergence, BeatMap beats) {
        Beat first = divergence.first();
        Beat last = divergence.last();
        String where = first.inBar()
                ? " in " + bars(first.bar(), last.bar())
                : " in " + (first.beat() == last.beat() ? "stroke " : "strokes ") + numbers(first, last);
        String when = beats.stops() ? " (" + clock(first.timeS()) + ")" : "";
        return switch (divergence.against()) {
            case MARKING -> "turned" + where + when;
            case LEADER -> "went against the leader" + where + when;
        };
    }

    /** With a capital first letter. */
    public static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** At most so many letters of a label, the last of them three dots where it is longer. */
    static String shortened(String label, int longest) {
        return label.codePointCount(0, label.length()) <= longest
                ? label
                : label.substring(0, label.offsetByCodePoints(0, longest - 1)).stripTrailing() + "…";
    }

    /**
     * A label as it can be drawn: without the invisible signs that turn the direction of what follows, and with a
     * replacement sign for what no XML file may hold.
     */
    public static String plain(String label) {
        StringBuilder out = new StringBuilder(label.length());
        label.codePoints().forEach(c -> {
            if (c == 0x061C
                    || c == 0x200E
                    || c == 0x200F
                    || (c >= 0x202A && c <= 0x202E)
                    || (c >= 0x2066 && c <= 0x2069)) {
                return;
            }
            boolean lone = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
            boolean noCharacter = (c & 0xFFFE) == 0xFFFE || Character.isISOControl(c);
            out.appendCodePoint(lone || noCharacter ? 0xFFFD : c);
        });
        return out.toString();
    }

    /** The text, or as much of its beginning as fits with an ellipsis; never cuts a letter from its accent. */
    public static String shortened(String text, FontMetrics metrics, double roomPx) {
        if (metrics.stringWidth(text) <= roomPx) {
            return text;
        }
        BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
        letters.setText(text);
        int end = letters.last();
        while (end > 0 && metrics.stringWidth(text.substring(0, end) + "…") > roomPx) {
            end = letters.previous();
        }
        return text.substring(0, Math.max(0, end)).stripTrailing() + "…";
    }
}
