package tuttarco.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.beats.BeatMap;
import tuttarco.chart.BarRun;
import tuttarco.chart.CellRow;
import tuttarco.report.AnalysedTake;
import tuttarco.seats.Player;

/** The section by beat as it is worked with: players by beats, in bars, and the ways from one cell to another. */
public final class SectionTable {
    private final List<CellRow> rows;
    private final List<Player> players;
    private final BeatMap beats;
    private final List<BarRun> bars;

    public SectionTable(AnalysedTake take) {
        rows = CellRow.of(take.comparison(), take.reference());
        players = take.comparison().players();
        beats = take.comparison().beats();
        bars = BarRun.of(beats);
    }

    /** What is marked, if that is compared with, then the players. */
    public List<CellRow> rows() {
        return rows;
    }

    /** In section order. */
    public List<Player> players() {
        return players;
    }

    public BeatMap beats() {
        return beats;
    }

    public int beatCount() {
        return beats.beats().size();
    }

    public List<BarRun> bars() {
        return bars;
    }

    /** The row of a player, empty if nobody of this name plays. */
    public Optional<Integer> rowOf(String label) {
        return IntStream.range(0, rows.size())
                .filter(r -> rows.get(r)
                        .player()
                        .filter(p -> p.label().equals(label))
                        .isPresent())
                .boxed()
                .findFirst();
    }

    /** A cell in words: {@code Desk 2 inside, bar 3 beat 1: down, against, by hand}. */
    public String spoken(int row, int beat) {
        String said = rows.get(row).cells().get(beat).spoken();
        return rows.get(row).name() + ", " + beats.beats().get(beat).spoken() + ": "
                + (said.isEmpty() ? "rests" : said);
    }

    /** The beat at a time, or else the last before it, or the first of all. */
    public int beatNear(double timeS) {
        return beats.lastBegun(timeS).orElse(0);
    }

    /** So many beats on, or back if negative, but never outside the beats there are. */
    public int moved(int beat, int by) {
        return (int) Math.max(0, Math.min(beatCount() - 1L, (long) beat + by));
    }

    /** The first beat of the bar so many bars on; back, the first beat of the beat's own bar counts as one. */
    public int movedBars(int beat, int by) {
        int bar = barOf(beat);
        boolean within = by < 0 && beat > bars.get(bar).firstIndex();
        int to = Math.max(0, Math.min(bars.size() - 1, bar + by + (within ? 1 : 0)));
        return bars.get(to).firstIndex();
    }

    /** Place among the bars of the one that holds a beat. */
    public int barOf(int beat) {
        return IntStream.range(0, bars.size())
                .filter(b -> beat <= bars.get(b).lastIndex())
                .findFirst()
                .orElseThrow();
    }

    /** The player so many rows on, or back if negative; from nobody, the first. */
    public Player movedRows(Optional<String> label, int by) {
        int at = IntStream.range(0, players.size())
                .filter(p -> label.equals(Optional.of(players.get(p).label())))
                .findFirst()
                .orElse(-by);
        return players.get(Math.max(0, Math.min(players.size() - 1, at + by)));
    }

    /** When the chosen beats sound. */
    public Stretch stretch(ChosenBeats chosen) {
        return new Stretch(beats.beats().get(chosen.first()).timeS(), beats.endS(chosen.last()));
    }

    /** When the bars sound in which the chosen beats lie. */
    public Stretch barsOf(ChosenBeats chosen) {
        BarRun first = bars.get(barOf(chosen.first()));
        BarRun last = bars.get(barOf(chosen.last()));
        return new Stretch(beats.beats().get(first.firstIndex()).timeS(), beats.endS(last.lastIndex()));
    }

    /** The chosen beats in words: {@code bar 3 beat 1}, {@code bar 3 beat 1 to bar 4 beat 2}. */
    public String spoken(ChosenBeats chosen) {
        String first = beats.beats().get(chosen.first()).spoken();
        return chosen.first() == chosen.last()
                ? first
                : first + " to " + beats.beats().get(chosen.last()).spoken();
    }
}
