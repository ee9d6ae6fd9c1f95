package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.bow.BowDirection;
import tuttarco.chart.ChartTable;
import tuttarco.chart.SeasonTrend;
import tuttarco.chart.TrendWords;
import tuttarco.chart.Words;
import tuttarco.season.Season;
import tuttarco.season.SeasonCandidate;
import tuttarco.season.TakeOnRecord;
import tuttarco.season.Trend;
import tuttarco.season.Trend.Claim;

/** Finds the words for a season's page. */
final class SeasonWords {
    private final Season season;

    SeasonWords(Season season) {
        this.season = season;
    }

    SeasonModel model(List<String> notes) {
        return new SeasonModel(
                PageStyle.still(),
                notes,
                summary(),
                season.candidates().stream().map(this::candidate).toList(),
                unsaid(),
                trends(),
                SeasonTrend.of(season).stream().map(ReportWords::figure).toList(),
                takes());
    }

    private List<String> summary() {
        List<String> said = new ArrayList<>();
        int takes = season.takes().size();
        long players = season.takes().stream()
                .flatMap(t -> t.players().stream())
                .map(p -> p.label())
                .distinct()
                .count();
        said.add(Words.count(takes, "take") + ", " + Words.count(players, "player") + ".");
        long apart = season.takes().stream().filter(t -> !Season.counts(t)).count();
        if (apart > 0) {
            said.add(Words.count(apart, "take") + (apart == 1 ? " was" : " were")
                    + " meant to be free or without bars and " + (apart == 1 ? "is" : "are") + " left out below.");
        }
        if (season.ground().bars().isEmpty()) {
            said.add("No bar was played in two takes, so that nothing can be set against each other.");
        } else {
            said.add("Section and players are told by the "
                    + Words.count(season.ground().bars().size(), "bar") + " that "
                    + season.ground().takes().size() + " of the takes have in common: " + bars() + ".");
        }
        return said;
    }

    /** The bars in common: the first and the last, and how it is between them if some are missing there. */
    private String bars() {
        List<String> bars = season.ground().bars();
        String between = Words.bars(bars.get(0), bars.get(bars.size() - 1));
        boolean whole = season.passages().stream().anyMatch(p -> p.bars().equals(bars));
        return between + (whole ? "" : ", not all of them");
    }

    private List<String> trends() {
        List<String> said = new ArrayList<>();
        Stream.concat(
                        Stream.concat(Stream.of(season.section()), season.players().stream()),
                        Stream.concat(season.byPassage().stream(), season.lags().stream()))
                .filter(Trend::claimed)
                .map(this::claimed)
                .forEach(said::add);
        if (said.isEmpty()) {
            said.add("No trend is shown to be more than chance.");
        }
        tooFew(season.players(), "player").ifPresent(said::add);
        tooFew(season.byPassage(), "passage").ifPresent(said::add);
        if (season.section().claim() == Claim.TOO_FEW) {
            said.add("Of the section no trend can be told from fewer than " + Words.count(Season.leastTakes(1), "take")
                    + ".");
        }
        return said;
    }

    private String claimed(Trend trend) {
        String what = switch (trend.metric()) {
            case LAG -> " changes " + TrendWords.word(trend) + " than at first: ";
            default ->
                (season.marked() ? " goes with the marking " : " goes with the leader ")
                        + (trend.claim() == Claim.RISING ? "more often" : "less often") + " than at first: ";
        };
        return who(trend) + what + TrendWords.ends(trend) + " over "
                + Words.count(trend.seen().size(), "take") + ".";
    }

    private static String who(Trend trend) {
        if (trend.subject() instanceof Trend.OfPlayer) {
            return TrendWords.label(trend);
        }
        return "The section" + (trend.subject() instanceof Trend.Section ? "" : " in " + TrendWords.label(trend));
    }

    private static Optional<String> tooFew(List<Trend> trends, String of) {
        List<Trend> few =
                trends.stream().filter(t -> t.claim() == Claim.TOO_FEW).toList();
        int tested = (int) trends.stream()
                .filter(t -> t.seen().size() >= Season.leastTakes(1))
                .count();
        return few.isEmpty()
                ? Optional.empty()
                : Optional.of("Too few takes to tell a trend of "
                        + (few.size() == trends.size()
                                ? "any " + of
                                : few.stream().map(TrendWords::label).collect(Collectors.joining(", ")))
                        + ": it needs " + Season.leastTakes(tested) + " or more takes"
                        + (tested > 1 ? " where " + tested + " are tested at once" : "") + ".");
    }

    private String unsaid() {
        long marked = season.takes().stream()
                .filter(t -> Season.counts(t) && t.marked())
                .count();
        return marked < 2
                ? "Nothing can be said: that takes two marked takes or more of the same bars."
                : "No bar is left in the same way in most of its takes beyond chance. What few players do can only be told"
                        + " from several takes.";
    }

    private String candidate(SeasonCandidate bar) {
        List<SeasonCandidate.Beat> left =
                bar.beats().stream().filter(SeasonCandidate.Beat::left).toList();
        String beats = left.stream().map(b -> Integer.toString(b.beat())).collect(Collectors.joining(", "));
        String by = bar.takes().stream()
                .map(t -> TrendWords.when(season.takes(), t.take()) + " "
                        + t.left().size() + " of " + t.judged())
                .collect(Collectors.joining("; "));
        return "Bar " + bar.bar() + ", " + (left.size() == 1 ? "beat " : "beats ") + beats + ": left in "
                + bar.takesLeft() + " of " + Words.count(bar.takes().size(), "take") + " (players: " + by
                + "). The bar by beat, marked: "
                + directions(
                        bar.beats().stream().map(b -> Optional.of(b.marked())).toList())
                + "; played by those who left: "
                + directions(
                        bar.beats().stream().map(SeasonCandidate.Beat::instead).toList()) + ".";
    }

    private static String directions(List<Optional<BowDirection>> directions) {
        return directions.stream()
                .map(d -> d.map(BowDirection::word).orElse("–"))
                .collect(Collectors.joining(" "));
    }

    private ChartTable takes() {
        return new ChartTable(
                "The takes in order",
                List.of("Take", "Day", "Title", "Bars", "Players", "As one", "Compared with"),
                IntStream.range(0, season.takes().size()).mapToObj(this::take).toList());
    }

    private List<String> take(int index) {
        TakeOnRecord take = season.takes().get(index);
        long bars = take.beats().stream()
                .map(b -> b.bar())
                .filter(b -> !b.isEmpty())
                .distinct()
                .count();
        String counts = Season.counts(take) ? (take.marked() ? "the marking" : "the leader") : "not counted";
        return List.of(
                Integer.toString(index + 1),
                take.day().map(Object::toString).orElse("not known"),
                take.title(),
                bars == 0 ? "not known" : Long.toString(bars),
                Integer.toString(take.players().size()),
                take.unity().isPresent()
                        ? String.format(Locale.ROOT, "%.2f", take.unity().getAsDouble())
                        : "–",
                counts);
    }
}
