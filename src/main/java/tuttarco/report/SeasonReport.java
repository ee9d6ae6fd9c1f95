package tuttarco.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVPrinter;
import tuttarco.bow.BowDirection;
import tuttarco.chart.SeasonTrend;
import tuttarco.chart.TrendWords;
import tuttarco.compare.Metric;
import tuttarco.season.Season;
import tuttarco.season.SeasonCandidate;
import tuttarco.season.TakeOnRecord;
import tuttarco.season.Trend;

/**
 * What is written of a season: {@code season.html}, which needs no other file; {@code season.csv}, one line for each take of
 * each figure, with empty cells where a take has none; {@code season-bowings.csv}, one line for each beat of the bars in which the
 * marking may be the trouble; and {@code charts/season-*}.
 */
public final class SeasonReport {
    /** The page's name in the folder it is written to. */
    public static final String PAGE = "season.html";

    private SeasonReport() {}

    /**
     * Writes into an existing folder; equal seasons give equal bytes.
     *
     * @param notes what could not be read, a sentence each
     */
    public static void write(Season season, List<String> notes, Path folder) throws IOException {
        Pages.write("season.jte", new SeasonWords(season).model(notes), folder.resolve(PAGE));
        Path charts = Files.createDirectories(folder.resolve("charts"));
        for (SeasonTrend chart : SeasonTrend.of(season)) {
            Charts.write(chart, charts);
        }
        writeFigures(season, folder);
        writeBowings(season, folder);
    }

    private static void writeFigures(Season season, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve("season.csv"));
                CSVPrinter csv = CsvText.printer(
                        out, "of", "who", "metric", "unit", "take", "day", "title", "value", "low", "high", "count",
                        "trend", "p")) {
            for (Trend trend : trends(season)) {
                for (int t = 0; t < season.takes().size(); t++) {
                    TakeOnRecord take = season.takes().get(t);
                    Optional<Trend.Point> point = trend.points().get(t);
                    Metric.Unit unit = trend.metric().unit();
                    csv.printRecord(
                            of(trend),
                            CsvText.label(trend.subject() instanceof Trend.Section ? "" : TrendWords.label(trend)),
                            trend.metric().key(),
                            unit.word(),
                            t + 1,
                            take.day().map(Object::toString).orElse(""),
                            CsvText.label(take.title()),
                            point.map(p -> figure(p.value(), unit)).orElse(""),
                            point.map(p -> figure(p.interval().low(), unit)).orElse(""),
                            point.map(p -> figure(p.interval().high(), unit)).orElse(""),
                            point.map(p -> Integer.toString(p.count())).orElse(""),
                            trend.claim().word(),
                            trend.p().isPresent() ? probability(trend.p().getAsDouble()) : "");
                }
            }
        }
    }

    private static List<Trend> trends(Season season) {
        return Stream.of(List.of(season.section()), season.players(), season.byPassage(), season.lags())
                .flatMap(List::stream)
                .toList();
    }

    private static String of(Trend trend) {
        if (trend.subject() instanceof Trend.OfPlayer) {
            return "player";
        }
        return trend.subject() instanceof Trend.OfPassage ? "passage" : "section";
    }

    private static String figure(double value, Metric.Unit unit) {
        return unit == Metric.Unit.SHARE ? CsvText.share(value) : String.format(Locale.ROOT, "%.1f", value);
    }

    private static String probability(double p) {
        return String.format(Locale.ROOT, "%.2g", p);
    }

    private static void writeBowings(Season season, Path folder) throws IOException {
        try (Writer out = Files.newBufferedWriter(folder.resolve("season-bowings.csv"));
                CSVPrinter csv = CsvText.printer(
                        out,
                        "bar",
                        "beat",
                        "marked",
                        "left",
                        "instead",
                        "takes_left",
                        "takes",
                        "players_left",
                        "players_judged",
                        "p")) {
            for (SeasonCandidate bar : season.candidates()) {
                for (SeasonCandidate.Beat beat : bar.beats()) {
                    csv.printRecord(
                            CsvText.label(bar.bar()),
                            beat.beat(),
                            beat.marked().word(),
                            beat.left() ? "yes" : "no",
                            beat.instead().map(BowDirection::word).orElse(""),
                            bar.takesLeft(),
                            bar.takes().size(),
                            bar.playersLeft(),
                            bar.playersJudged(),
                            probability(bar.p()));
                }
            }
        }
    }
}
