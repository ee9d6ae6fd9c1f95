package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import tuttarco.score.Hints;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;

/** A part's bowing bar by bar: every stroke with its sign and reason, and the places that are awkward. */
public final class BowingStrip implements Chart {
    /** Room for a system's bars, so that the strip fits on a page 900 px wide. */
    private static final int WIDTH_PX = 820;

    private static final int TITLE_PX = 40;
    private static final int EDGE_PX = 4 * Look.STEP_PX;

    private final Part part;
    private final List<MarkedStroke> strokes;
    private final LaidStrip strip;

    public BowingStrip(Part part) {
        this.part = part;
        this.strip = LaidStrip.of(part, WIDTH_PX);
        this.strokes = strip.strokes();
    }

    @Override
    public String key() {
        return "bowing";
    }

    @Override
    public String title() {
        long marked = strokes.stream().filter(MarkedStroke::marked).count();
        String how = marked + " of " + Words.count(strokes.size(), "stroke") + " marked";
        int awkward = part.awkward().size();
        return "The part's bowing: " + how + ", "
                + (awkward == 0 ? "nothing awkward" : Words.count(awkward, "awkward place"));
    }

    @Override
    public String help() {
        return "Each sign is one stroke, heavy where the part marks it and thin where it was completed; the line under it is"
                + " as long as the stroke, with a dot for each note, and a bracket joins notes under a slur. A letter says"
                + " why a completed stroke goes that way, and none that it goes on alternating. A filled cell with a cut"
                + " corner and a number is awkward: the list below says why, and it is for the leader to decide.";
    }

    @Override
    public int widthPx() {
        return WIDTH_PX + 2 * EDGE_PX;
    }

    @Override
    public int heightPx() {
        return TITLE_PX + strip.heightPx() + StripPlot.notesPx(part) + 2 * EDGE_PX;
    }

    @Override
    public List<Integer> cutsPx() {
        return IntStream.range(1, strip.heightPx() / StripLayout.PITCH_PX + 1)
                .mapToObj(system -> EDGE_PX + TITLE_PX + system * StripLayout.PITCH_PX - StripLayout.GAP_PX / 2)
                .toList();
    }

    @Override
    public JFreeChart draw() {
        return Look.chart(title(), new StripPlot(part, strip));
    }

    @Override
    public ChartTable table() {
        Map<Position, List<String>> rows = new TreeMap<>();
        strokes.forEach(s -> rows.put(
                s.start(), row(s.start(), s.direction().word(), s.reason().spoken(part.bars()))));
        part.hints()
                .joined()
                .forEach(j -> rows.put(
                        j.at(), row(j.at(), "same stroke", j.by() == Hints.By.TIE ? "by the tie" : "by the slur")));
        return new ChartTable(
                "The part's bowing", List.of("Bar", "Beat", "Bow", "Why", "Awkward"), new ArrayList<>(rows.values()));
    }

    private List<String> row(Position at, String bow, String why) {
        String awkward = part.awkward().stream()
                .filter(place -> place.at().equals(at))
                .map(place -> place.sentence(part.bars()))
                .collect(Collectors.joining(" "));
        return List.of(part.bars().get(at.barIndex()).number(), at.spokenBeat(), bow, why, awkward);
    }
}
