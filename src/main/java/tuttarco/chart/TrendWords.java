package tuttarco.chart;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.compare.Metric;
import tuttarco.season.TakeOnRecord;
import tuttarco.season.Trend;
import tuttarco.season.Trend.Claim;
import tuttarco.season.Trend.Point;

/** How trends are spoken of, in charts and pages alike. */
public final class TrendWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    /** Longest label, letters. */
    private static final int LONGEST_LABEL = 22;

    private TrendWords() {}

    /** What a claimed trend is called: {@code better}, {@code earlier}. */
    public static String word(Trend trend) {
        return of(trend.metric() == Metric.LAG, trend.claim());
    }

    static String of(boolean lag, Claim claim) {
        return switch (claim) {
            case RISING -> lag ? "later" : "better";
            case FALLING -> lag ? "earlier" : "worse";
            case NONE -> "no trend shown";
            case TOO_FEW -> "too few takes";
        };
    }

    /** The first figure and the last: {@code 82 to 97 %}, {@code +62 to +18 ms}. */
    public static String ends(Trend trend) {
        List<Point> seen = trend.seen();
        if (seen.isEmpty()) {
            return "";
        }
        double first = seen.get(0).value();
        double last = seen.get(seen.size() - 1).value();
        boolean lag = trend.metric() == Metric.LAG;
        String end = lag ? LagByPlayer.signed(last) + " ms" : Words.percent(last);
        String start = lag ? LagByPlayer.signed(first) : Long.toString(Math.round(100 * first));
        return seen.size() == 1 ? end : start + " to " + end;
    }

    /** {@code Section}, a player's label, or {@code bars 17-32} with an en dash. */
    public static String label(Trend trend) {
        if (trend.subject() instanceof Trend.OfPlayer player) {
            return Words.plain(player.label());
        }
        return trend.subject() instanceof Trend.OfPassage passage
                ? Words.bars(Words.plain(passage.firstBar()), Words.plain(passage.lastBar()))
                : "Section";
    }

    static String shortened(Trend trend) {
        return Words.shortened(label(trend), LONGEST_LABEL);
    }

    /** {@code 25 Nov}, or {@code take 3} where the day is not known. */
    public static String when(List<TakeOnRecord> takes, int take) {
        return takes.get(take).day().map(DAY::format).orElse("take " + (take + 1));
    }

    static List<String> row(Trend trend) {
        List<String> cells = new ArrayList<>(List.of(label(trend)));
        boolean lag = trend.metric() == Metric.LAG;
        for (Optional<Point> point : trend.points()) {
            cells.add(point.map(p -> lag
                            ? LagByPlayer.signed(p.value()) + " ms ("
                                    + LagByPlayer.signed(p.interval().low()) + " to "
                                    + LagByPlayer.signed(p.interval().high()) + ")"
                            : Words.percent(p.value()) + " ("
                                    + Math.round(100 * p.interval().low()) + "–"
                                    + Math.round(100 * p.interval().high()) + ")")
                    .orElse("–"));
        }
        cells.add(word(trend));
        return cells;
    }
}
