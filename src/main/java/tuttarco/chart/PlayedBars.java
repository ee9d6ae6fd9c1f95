package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import tuttarco.beats.Beat;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;

/**
 * A few bars for one player's eyes: by the beat what is marked, what the player did and what the leader did. It is as wide as
 * a phone's screen; of a long stretch it shows the beginning.
 */
public final class PlayedBars implements Chart {
    /** Lines of bars, so that a few such pictures fit on one page (chosen). */
    private static final int MOST_LINES = 2;

    /** Beats in a line; a longer bar is drawn narrower. */
    static final int LINE_BEATS = 8;

    /** Longest name of bars in the title, letters; bars are called by numbers, but a file may hold anything. */
    private static final int LONGEST_BARS = 40;

    private static final String MARKED = "Marked";
    private static final String YOU = "You";
    private static final String LEADER = "Leader";

    private final String key;
    private final Comparison comparison;
    private final List<Row> rows;
    private final List<List<BarRun>> lines;
    private final boolean whole;

    /**
     * What one hand did, or should do.
     *
     * @param cells one a beat of the map
     */
    record Row(String name, List<Cell> cells) {
        /** The player's own, which the eye should find first. */
        boolean own() {
            return name.equals(YOU);
        }

        String spoken() {
            return name.toLowerCase(Locale.ROOT);
        }
    }

    private PlayedBars(String key, Comparison comparison, List<Row> rows, int firstIndex, int lastIndex) {
        this.key = key;
        this.comparison = comparison;
        this.rows = rows;
        List<BarRun> bars = BarRun.of(comparison.beats()).stream()
                .filter(bar -> bar.lastIndex() >= firstIndex && bar.firstIndex() <= lastIndex)
                .toList();
        List<List<BarRun>> all = Systems.broken(bars, bars.size(), LINE_BEATS);
        this.lines = all.subList(0, Math.min(MOST_LINES, all.size()));
        this.whole = lines.size() == all.size();
    }

    /** The bars from one beat of the map to another, beside the marking or the leader. */
    public static PlayedBars beside(
            String key, Comparison comparison, Against reference, Player player, int firstIndex, int lastIndex) {
        return new PlayedBars(key, comparison, rows(comparison, reference, player), firstIndex, lastIndex);
    }

    /** The same where everybody may bow as he or she likes: nothing is with or against. */
    public static PlayedBars free(
            String key, Comparison comparison, boolean marked, Player player, int firstIndex, int lastIndex) {
        Row own = new Row(
                YOU, readings(comparison, player).stream().map(Cell::led).toList());
        List<Row> rows = marked ? List.of(marked(comparison, player), own) : List.of(own);
        return new PlayedBars(key, comparison, rows, firstIndex, lastIndex);
    }

    private static List<Row> rows(Comparison comparison, Against reference, Player player) {
        List<CellRow> all = CellRow.of(comparison, reference);
        Optional<Row> leader = all.stream()
                .filter(r -> r.player().filter(Player::leader).isPresent())
                .filter(r -> !r.player().equals(Optional.of(player)))
                .map(r -> new Row(LEADER, r.cells()))
                .findFirst();
        Row own = all.stream()
                .filter(r -> r.player().equals(Optional.of(player)))
                .map(r -> new Row(YOU, r.cells()))
                .findFirst()
                .orElseThrow();
        return reference == Against.MARKING
                ? Stream.concat(Stream.of(marked(comparison, player), own), leader.stream())
                        .toList()
                : Stream.concat(leader.stream(), Stream.of(own)).toList();
    }

    private static Row marked(Comparison comparison, Player player) {
        return new Row(
                MARKED, readings(comparison, player).stream().map(Cell::marked).toList());
    }

    private static List<BeatReading> readings(Comparison comparison, Player player) {
        return comparison.beatReadings().get(comparison.players().indexOf(player));
    }

    /** Whether the whole stretch is drawn. */
    public boolean whole() {
        return whole;
    }

    /** Every cell that is drawn. */
    public List<Cell> cells() {
        return rows.stream()
                .flatMap(row -> indices().mapToObj(i -> row.cells().get(i)))
                .toList();
    }

    private IntStream indices() {
        return IntStream.rangeClosed(lines.get(0).get(0).firstIndex(), lastBar().lastIndex());
    }

    private BarRun lastBar() {
        List<BarRun> last = lines.get(lines.size() - 1);
        return last.get(last.size() - 1);
    }

    /** The bars that are drawn: {@code Bars 3–4}. */
    public String where() {
        return comparison.beats().inBars()
                ? Words.capital(Words.bars(lines.get(0).get(0).bar(), lastBar().bar()))
                : "Strokes " + (lines.get(0).get(0).firstIndex() + 1) + "–"
                        + (lastBar().lastIndex() + 1);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String title() {
        return Words.shortened(where(), LONGEST_BARS) + ", beat by beat: "
                + rows.stream().map(Row::spoken).collect(Collectors.joining(", "));
    }

    @Override
    public String help() {
        return "Each sign is the way the bow goes on one beat, the bar's number above its first beat.";
    }

    /** What is drawn, for whoever can't see it: {@code Bar 3: marked down, up; you up, against, down, against.} */
    public String spoken() {
        return lines.stream().flatMap(List::stream).map(this::spoken).collect(Collectors.joining(" "));
    }

    private String spoken(BarRun bar) {
        String where = comparison.beats().inBars() ? "Bar " : "From stroke ";
        return where + bar.bar() + ": "
                + rows.stream()
                        .map(row -> row.spoken() + " "
                                + IntStream.rangeClosed(bar.firstIndex(), bar.lastIndex())
                                        .mapToObj(i -> row.cells().get(i).spoken())
                                        .map(said -> said.isEmpty() ? "–" : said)
                                        .collect(Collectors.joining("; ")))
                        .collect(Collectors.joining(". "))
                + ".";
    }

    @Override
    public int widthPx() {
        return PlayedBarsPlot.NAMES_PX + LINE_BEATS * PlayedBarsPlot.CELL_WIDTH_PX + 2;
    }

    @Override
    public int heightPx() {
        return PlayedBarsPlot.heightPx(lines.size(), rows.size());
    }

    @Override
    public JFreeChart draw() {
        return Look.picture(new PlayedBarsPlot(rows, lines));
    }

    @Override
    public ChartTable table() {
        List<String> headings = new ArrayList<>(List.of("Bar", "Beat"));
        rows.forEach(row -> headings.add(row.name()));
        return new ChartTable(
                title(),
                headings,
                indices()
                        .mapToObj(i -> {
                            Beat beat = comparison.beats().beats().get(i);
                            List<String> line = new ArrayList<>(List.of(beat.bar(), Integer.toString(beat.beat())));
                            rows.forEach(row -> line.add(row.cells().get(i).spoken()));
                            return line;
                        })
                        .map(List::copyOf)
                        .toList());
    }
}
