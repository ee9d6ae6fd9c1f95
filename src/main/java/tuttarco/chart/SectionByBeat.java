package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import tuttarco.beats.Beat;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence;
import tuttarco.compare.Divergence.Against;
import tuttarco.take.Bowing;

/** The section by beat: players by beats, beside the marking or the leader. */
public final class SectionByBeat implements Chart {
    private static final int TITLE_PX = 40;
    private static final int EDGE_PX = 4 * Look.STEP_PX;

    /** The key below a short section has room. */
    private static final int LEAST_WIDTH_PX = 800;

    private final Comparison comparison;
    private final Against reference;
    private final Bowing bowing;
    private final List<CellRow> rows;
    private final Systems systems;

    public SectionByBeat(Comparison comparison, Against reference, Bowing bowing) {
        this.comparison = comparison;
        this.reference = reference;
        this.bowing = bowing;
        this.rows = CellRow.of(comparison, reference);
        this.systems = Systems.of(comparison.beats(), comparison.players().size(), rows.size());
    }

    @Override
    public String key() {
        return reference == Against.MARKING ? "section-by-beat" : "section-by-beat-leader";
    }

    @Override
    public String title() {
        List<Divergence> spots = Spots.against(comparison.divergences(), reference);
        String other = reference == Against.MARKING ? "the marking" : "the leader";
        if (!judged()) {
            return "No bow could be compared with " + other;
        }
        if (spots.isEmpty()) {
            return "Wherever the bows could be read, they went with " + other;
        }
        if (bowing == Bowing.FREE) {
            return "Bowed freely: " + Words.count(spots.size(), "stretch", "stretches") + " apart from " + other;
        }
        Divergence first = spots.get(0);
        String more = spots.size() == 1 ? "" : "; " + Words.count(spots.size() - 1, "more spot");
        return Words.names(first.players()) + " " + Words.turned(first, comparison.beats()) + more;
    }

    private boolean byHand() {
        return rows.stream().flatMap(r -> r.cells().stream()).anyMatch(Cell::byHand);
    }

    private boolean judged() {
        return rows.stream()
                .flatMap(r -> r.cells().stream())
                .anyMatch(c -> c.state() == Cell.State.WITH || c.state() == Cell.State.AGAINST);
    }

    @Override
    public String help() {
        return "Each cell is one player on one "
                + (comparison.beats().inBars() ? "beat" : "stroke of the leader, numbered above")
                + "; the sign is the way the bow went. A filled cell with a cut corner and "
                + "a heavy sign went against " + (reference == Against.MARKING ? "the marking" : "the leader")
                + "; a dotted cell was too unsure to judge, with a question mark where not even a "
                + "direction could be told; a short dash was not seen; an empty cell had nothing to "
                + "compare with. The leader is underlined."
                + (byHand()
                        ? " A pencilled corner, below right, marks what was set by hand; a line across, that the player was not there."
                        : "")
                + (comparison.beats().stops()
                        ? " After each stop a new line begins, with the time in the clip before it."
                        : "");
    }

    /** The same in pieces, for a page that scrolls. */
    public SectionStrip strip() {
        return new SectionStrip(key(), comparison, reference);
    }

    @Override
    public int widthPx() {
        return Math.max(LEAST_WIDTH_PX, systems.widthPx() + 2 * EDGE_PX);
    }

    @Override
    public int heightPx() {
        return TITLE_PX + systems.heightPx() + SectionPlot.keyPx(rows) + 2 * EDGE_PX;
    }

    @Override
    public JFreeChart draw() {
        return Look.chart(title(), new SectionPlot(rows, systems, comparison.beats()));
    }

    @Override
    public ChartTable table() {
        boolean inBars = comparison.beats().inBars();
        List<String> headings = new ArrayList<>(inBars ? List.of("Bar", "Beat", "Time") : List.of("Stroke", "Time"));
        rows.forEach(r -> headings.add(r.name()));
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < comparison.beats().beats().size(); i++) {
            List<String> line = new ArrayList<>();
            Beat beat = comparison.beats().beats().get(i);
            String number = Integer.toString(beat.beat());
            String time = Words.clock(beat.timeS());
            line.addAll(inBars ? List.of(beat.bar(), number, time) : List.of(number, time));
            for (CellRow row : rows) {
                line.add(row.cells().get(i).spoken());
            }
            lines.add(line);
        }
        String beside = reference == Against.MARKING ? "the marking" : "the leader";
        return new ChartTable(
                "The section by " + Words.unit(comparison.beats()) + " beside " + beside, headings, lines);
    }
}
