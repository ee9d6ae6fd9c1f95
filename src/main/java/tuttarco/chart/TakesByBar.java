package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Metric;
import tuttarco.season.Changed;
import tuttarco.season.LinedUp;
import tuttarco.season.PlayerBar;
import tuttarco.season.TakeAgainstTake;
import tuttarco.season.TakeOnRecord;
import tuttarco.season.Tally;

/** Take against take: how each take went bar by bar, and what changed in each player's bars from the first to the last. */
public final class TakesByBar implements Chart {
    private static final int TITLE_PX = 40;
    private static final int EDGE_PX = 4 * Look.STEP_PX;

    private final List<TakeAgainstTake> pairs;
    private final TakeAgainstTake whole;
    private final TakesPlot plot;

    /**
     * @param pairs the last take beside the first, then, of more than two, each beside the one before it; the first has a
     *     reference, and something in common
     */
    public TakesByBar(List<TakeAgainstTake> pairs) {
        this.pairs = List.copyOf(pairs);
        this.whole = pairs.get(0);
        if (whole.playerBars().isEmpty()) {
            throw new IllegalArgumentException("takes with nothing in common can't be drawn");
        }
        List<TakesPlot.TakeRow> takes = new ArrayList<>();
        for (int i = 0; i < takes().size(); i++) {
            takes.add(new TakesPlot.TakeRow("take " + (i + 1), tallies(i)));
        }
        List<TakesPlot.PlayerRow> players = whole.common().players().stream()
                .map(player -> new TakesPlot.PlayerRow(Words.plain(player), bars(player), overall(player)))
                .toList();
        this.plot = new TakesPlot(whole.common().bars(), takes, players);
    }

    private LinedUp common() {
        return whole.common();
    }

    /** In the order played. */
    private List<TakeOnRecord> takes() {
        List<TakeOnRecord> takes = new ArrayList<>(List.of(whole.first()));
        pairs.subList(Math.min(1, pairs.size() - 1), pairs.size()).forEach(p -> takes.add(p.second()));
        return takes;
    }

    /** Titles may be alike, numbers not. */
    private String name(int take) {
        return take + 1 + ". " + Words.plain(takes().get(take).title());
    }

    /** Empty where the take has not the bar, or nothing to judge it by. */
    private List<Optional<Tally>> tallies(int take) {
        TakeAgainstTake pair = take == 0 || pairs.size() == 1 ? whole : pairs.get(take);
        return common().bars().stream()
                .map(bar -> Optional.of(pair)
                        .filter(p -> p.reference().equals(whole.reference()))
                        .map(p -> p.bar(bar, take == 0))
                        .filter(t -> t.judged() > 0))
                .toList();
    }

    private List<PlayerBar> bars(String player) {
        return whole.playerBars().stream()
                .filter(b -> b.player().equals(player))
                .toList();
    }

    private Optional<Changed> overall(String player) {
        return whole.of(metric(), Changed.Of.PLAYER, player);
    }

    private Metric metric() {
        return whole.reference().equals(Optional.of(Against.MARKING)) ? Metric.WITH_MARKING : Metric.WITH_LEADER;
    }

    private String other() {
        return metric() == Metric.WITH_MARKING ? "the marking" : "the leader";
    }

    @Override
    public String key() {
        return "take-against-take";
    }

    @Override
    public String title() {
        return whole.of(metric(), Changed.Of.SECTION, "")
                .map(c -> (!c.claim().shown()
                                ? "No change with " + other() + " is shown: "
                                : (c.difference() > 0 ? "More" : "Less") + " with " + other() + " than at first: ")
                        + Words.percent(c.first()) + ", now " + Words.percent(c.second()))
                .orElse("Nothing could be judged in both takes");
    }

    @Override
    public String help() {
        return "Above, each take bar by bar, in the order given: the fuller the cell, the more of the readable beats of the players in both takes"
                + " went with " + other()
                + ". Below, what changed in each player's bars from the first take to the last: a"
                + " triangle up for more with " + other()
                + ", down for less, large where half of the bar or more changed,"
                + " a point for no change, a dash where one of the takes could not be read. Single triangles are often"
                + " errors of reading; at the right, in bold, who changed beyond those.";
    }

    @Override
    public int widthPx() {
        return plot.widthPx() + 2 * EDGE_PX;
    }

    @Override
    public int heightPx() {
        return TITLE_PX + plot.heightPx() + 2 * EDGE_PX;
    }

    @Override
    public List<Integer> cutsPx() {
        return plot.cutsPx().stream().map(px -> EDGE_PX + TITLE_PX + px).toList();
    }

    @Override
    public JFreeChart draw() {
        return Look.chart(title(), plot);
    }

    @Override
    public ChartTable table() {
        List<String> headings = new ArrayList<>(List.of("Bar"));
        for (int i = 0; i < takes().size(); i++) {
            headings.add(name(i));
        }
        common().players().forEach(p -> headings.add(Words.plain(p)));
        List<List<String>> rows = new ArrayList<>();
        for (int b = 0; b < common().bars().size(); b++) {
            String bar = common().bars().get(b);
            List<String> row = new ArrayList<>(List.of(bar));
            for (int i = 0; i < takes().size(); i++) {
                row.add(tallies(i).get(b).map(t -> Words.percent(t.share())).orElse("–"));
            }
            whole.playerBars().stream()
                    .filter(p -> p.bar().equals(bar))
                    .forEach(p -> row.add(
                            p.difference().isEmpty()
                                    ? "–"
                                    : Words.percent(p.first().share()) + " to "
                                            + Words.percent(p.second().share())));
            rows.add(row);
        }
        return new ChartTable("Share with " + other() + ", bar by bar", headings, rows);
    }
}
