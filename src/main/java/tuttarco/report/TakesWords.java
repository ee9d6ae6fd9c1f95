package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import tuttarco.chart.ChartTable;
import tuttarco.chart.Words;
import tuttarco.compare.Evenness;
import tuttarco.compare.Metric;
import tuttarco.season.Changed;
import tuttarco.season.Changed.Claim;
import tuttarco.season.Changed.Of;
import tuttarco.season.LinedUp;
import tuttarco.season.PlayerBar;
import tuttarco.season.TakeAgainstTake;
import tuttarco.season.TakeOnRecord;
import tuttarco.season.Tally;
import tuttarco.take.Bowing;

/** Finds the words for the page of takes beside each other. */
final class TakesWords {
    /** Takes whose shares of beats read lie further apart are not alike to read (chosen). */
    private static final double READ_APART = 0.1;

    private final ComparedTakes takes;
    private final TakeAgainstTake whole;
    private final LinedUp common;

    TakesWords(ComparedTakes takes) {
        this.takes = takes;
        this.whole = takes.pairs().get(0);
        this.common = whole.common();
    }

    TakesModel model() {
        ChangeWords words = new ChangeWords(whole);
        String title = whole.first().title() + " – " + whole.second().title();
        return new TakesModel(
                new ReportModel.Head(title, PageStyle.still(), false, ""),
                takes.notes(),
                summary(words),
                words.changes(),
                takes.chart().map(ReportWords::figure),
                words.sound(),
                words.stretches(),
                takes.pairs().stream().skip(1).map(this::step).toList(),
                unsaid(),
                figures(),
                asked().map(m -> new ReportModel.Fact(m.title(), m.help() + " (" + m.reference() + ")"))
                        .toList(),
                new ReportModel.Facts(takes.programVersion(), takes.inputs(), List.of()));
    }

    private Stream<Metric> asked() {
        return whole.changes().stream().map(Changed::metric).distinct();
    }

    private TakesModel.Step step(TakeAgainstTake pair) {
        int index = takes.pairs().indexOf(pair);
        String name = index + ". " + pair.first().title() + " to " + (index + 1) + ". "
                + pair.second().title();
        return new TakesModel.Step(name, new ChangeWords(pair).changes());
    }

    private List<String> summary(ChangeWords words) {
        List<String> summary = new ArrayList<>();
        summary.add(Words.count(common.players().size(), "player") + " and "
                + Words.count(common.bars().size(), "bar") + " are in both the first take and the last.");
        words.ofSection().ifPresent(summary::add);
        Stream.of(unity("then", whole.first()), unity("now", whole.second()))
                .flatMap(Optional::stream)
                .forEach(summary::add);
        return summary;
    }

    /** Of a free take it is asked first of all whether it was free. */
    private static Optional<String> unity(String when, TakeOnRecord take) {
        OptionalDouble unity = take.unity();
        return take.bowing() == Bowing.FREE && unity.isPresent()
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "Free bowing, %s: %.2f of the way from chance (0) to all as one (1).",
                        when,
                        unity.getAsDouble()))
                : Optional.empty();
    }

    private List<String> unsaid() {
        List<String> unsaid = new ArrayList<>();
        unsaid.add("Two takes show what was otherwise in these two. Whether it stays is for the next takes to show.");
        leftOut("Only in the first take, and so left out: ", common.firstOnlyBars(), common.firstOnlyPlayers())
                .ifPresent(unsaid::add);
        leftOut("Only in the last take, and so left out: ", common.secondOnlyBars(), common.secondOnlyPlayers())
                .ifPresent(unsaid::add);
        if (!common.remarkedBars().isEmpty()) {
            unsaid.add("The marking of " + bars(common.remarkedBars())
                    + " is not the same in both takes; each take is compared with its own.");
        }
        if (whole.reference().isEmpty()) {
            unsaid.add(
                    "Not both takes have a marking, and not both a leader, so which way the bows went can't be compared.");
        }
        if (whole.first().bowing() != whole.second().bowing()) {
            unsaid.add("One take was meant to be bowed freely and the other alike, so that no change of directions is"
                    + " called better or worse, and nobody late or early.");
        } else if (whole.first().bowing() == Bowing.FREE) {
            unsaid.add("Both takes were meant to be bowed freely, so that no change of directions is called better or"
                    + " worse, and nobody late or early.");
        }
        tooFew().ifPresent(unsaid::add);
        read().ifPresent(unsaid::add);
        unsaid.add(
                asked().anyMatch(m -> m == Metric.LOUDNESS_SPREAD || m == Metric.DIP)
                        ? Evenness.CAUTION
                                + " A microphone that was moved between the takes makes them sound otherwise too."
                        : "How evenly the takes sounded can't be compared: it takes six bars that both have loud enough.");
        return unsaid;
    }

    private static Optional<String> leftOut(String lead, List<String> bars, List<String> players) {
        List<String> named = new ArrayList<>();
        if (!bars.isEmpty()) {
            named.add(bars(bars));
        }
        if (!players.isEmpty()) {
            named.add(Words.labels(players));
        }
        return named.isEmpty() ? Optional.empty() : Optional.of(lead + String.join("; ", named) + ".");
    }

    private static String bars(List<String> bars) {
        return bars.size() == 1 ? "bar " + bars.get(0) : "bars " + String.join(", ", bars);
    }

    private Optional<String> tooFew() {
        List<String> players = whole.changes().stream()
                .filter(c -> c.of() == Of.PLAYER && c.claim() == Claim.TOO_FEW && c.metric() != Metric.LAG)
                .map(Changed::name)
                .toList();
        return players.isEmpty()
                ? Optional.empty()
                : Optional.of("Too few bars could be judged in both takes to say anything of " + Words.labels(players)
                        + " alone.");
    }

    /** A take that is harder to read looks worse than it was. */
    private Optional<String> read() {
        Tally first = sum(PlayerBar::first);
        Tally second = sum(PlayerBar::second);
        if (first.bowed() == 0 || second.bowed() == 0) {
            return Optional.empty();
        }
        double before = (double) first.judged() / first.bowed();
        double after = (double) second.judged() / second.bowed();
        return Math.abs(after - before) < READ_APART
                ? Optional.empty()
                : Optional.of("Of the first take " + Words.percent(before)
                        + " of the beats could be judged, of the last " + Words.percent(after)
                        + ": where less is seen, more is misread, so look at the videos.");
    }

    private Tally sum(Function<PlayerBar, Tally> which) {
        return whole.playerBars().stream().map(which).reduce(Tally.NONE, Tally::plus);
    }

    /** Bars only where something is shown: the chart has them all. */
    private ChartTable figures() {
        List<List<String>> rows = whole.changes().stream()
                .filter(c -> c.of() != Of.BAR || c.claim().shown())
                .map(c -> List.of(
                        switch (c.of()) {
                            case SECTION -> "Section";
                            case PLAYER -> Words.plain(c.name());
                            case BAR -> "Bar " + c.name();
                        },
                        c.metric().title(),
                        TogetherWords.number(c.metric().unit(), c.first()),
                        TogetherWords.number(c.metric().unit(), c.second()),
                        Integer.toString(c.pairs()),
                        c.p().isPresent() ? String.format(Locale.ROOT, "%.3f", c.p().getAsDouble()) : "–",
                        claim(c.claim())))
                .toList();
        return new ChartTable(
                "Every figure asked for, first take and last",
                List.of("Who", "Figure", "First", "Last", "Pairs", "p", "Shown"),
                rows);
    }

    private static String claim(Claim claim) {
        return switch (claim) {
            case BETTER -> "better";
            case WORSE -> "worse";
            case OTHERWISE -> "changed";
            case NONE -> "no change";
            case TOO_FEW -> "too little";
        };
    }
}
