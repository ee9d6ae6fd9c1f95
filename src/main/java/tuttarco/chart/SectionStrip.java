package tuttarco.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;
import tuttarco.strokes.Stroke;

/**
 * The section by beat in pieces, for a page that scrolls: one small SVG element for each bar. As in the chart, a sign is told
 * once for the page and stamped where it stands.
 */
public final class SectionStrip {
    private final String key;
    private final List<CellRow> rows;
    private final Systems systems;
    private final BeatMap beats;

    SectionStrip(String key, Comparison comparison, Against reference) {
        this.key = key;
        this.rows = CellRow.of(comparison, reference);
        this.systems = Systems.of(comparison.beats(), comparison.players().size(), rows.size());
        this.beats = comparison.beats();
    }

    /**
     * Who has a row.
     *
     * @param marked whether it is nobody's but the marking's
     * @param newDesk whether another desk begins with it
     */
    public record Name(String label, boolean marked, boolean leads, boolean newDesk) {}

    /**
     * A bar as it was played once.
     *
     * @param index in the order played, from 0
     * @param number as printed; where no bars are known, of the leader's first stroke
     * @param clock when it begins
     * @param afterStop whether the playing stopped before it
     * @param beatsS when its beats begin, seconds, separated by blanks
     * @param endS when its last beat ends, seconds
     * @param svg its cells
     */
    public record Bar(
            int index, String number, String clock, boolean afterStop, String beatsS, String endS, String svg) {}

    /** One meaning of the signs with the signs that have it. */
    public record Meaning(String svg, String words) {}

    /** The rows from top to bottom. */
    public List<Name> names() {
        return IntStream.range(0, rows.size())
                .mapToObj(r -> new Name(
                        rows.get(r).name(),
                        rows.get(r).player().isEmpty(),
                        rows.get(r).player().filter(Player::leader).isPresent(),
                        r > 0 && rows.get(r).beginsDeskAfter(rows.get(r - 1))))
                .toList();
    }

    /** Whether the section has so many players that its rows are lower. */
    public boolean large() {
        return systems.large();
    }

    /** The bars in the order played, those that stand beside each other on paper together. */
    public List<List<Bar>> systems() {
        List<List<Bar>> all = new ArrayList<>();
        int index = 0;
        for (List<BarRun> system : systems.systems()) {
            List<Bar> bars = new ArrayList<>();
            for (BarRun run : system) {
                bars.add(bar(index++, run));
            }
            all.add(bars);
        }
        return all;
    }

    private Bar bar(int index, BarRun run) {
        List<Beat> within = beats.beats().subList(run.firstIndex(), run.lastIndex() + 1);
        return new Bar(
                index,
                run.bar(),
                Words.clock(within.get(0).timeS()),
                run.firstIndex() > 0 && beats.beginsRun(run.firstIndex()),
                within.stream().map(b -> seconds(b.timeS())).collect(Collectors.joining(" ")),
                seconds(beats.endS(run.lastIndex())),
                cells(run));
    }

    private static String seconds(double timeS) {
        return String.format(Locale.ROOT, "%.3f", timeS);
    }

    private String cells(BarRun run) {
        Map<String, List<Point2D>> places = new LinkedHashMap<>();
        for (int r = 0; r < rows.size(); r++) {
            for (int b = 0; b < run.beatCount(); b++) {
                Cell cell = rows.get(r).cells().get(run.firstIndex() + b);
                if (cell.state() != Cell.State.EMPTY || cell.byHand()) {
                    places.computeIfAbsent(sign(cell), s -> new ArrayList<>())
                            .add(new Point2D.Double(b * systems.cellWidthPx(), r * systems.cellHeightPx()));
                }
            }
        }
        String lines = "<use href=\"#" + linesId(run.beatCount()) + "\"/>";
        return picture(run.beatCount(), rows.size(), lines + stamped(places));
    }

    private static String stamped(Map<String, List<Point2D>> places) {
        return places.entrySet().stream()
                .map(e -> "<path class=\"" + e.getKey() + "\" d=\"" + through(e.getValue()) + "\"/>")
                .collect(Collectors.joining());
    }

    /** A path has ends to stamp a sign on only if it goes somewhere. */
    private static String through(List<Point2D> points) {
        return PathText.through(points) + (points.size() == 1 ? "h0" : "");
    }

    private String picture(int columns, int rowCount, String inside) {
        int widthPx = columns * systems.cellWidthPx();
        int heightPx = rowCount * systems.cellHeightPx();
        return "<svg width=\"" + widthPx + "\" height=\"" + heightPx + "\" viewBox=\"0 0 " + widthPx + " " + heightPx
                + "\" aria-hidden=\"true\">" + inside + "</svg>";
    }

    /** What the signs of this strip mean. */
    public List<Meaning> meanings() {
        boolean byHand = cells().anyMatch(Cell::byHand);
        return Stream.concat(SignKey.ofReadings().stream(), byHand ? SignKey.byHand().stream() : Stream.of())
                .map(k -> new Meaning(row(k.cells()), k.words()))
                .toList();
    }

    private String row(List<Cell> cells) {
        Map<String, List<Point2D>> places = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            places.computeIfAbsent(sign(cells.get(i)), s -> new ArrayList<>())
                    .add(new Point2D.Double(i * systems.cellWidthPx(), 0));
        }
        return picture(cells.size(), 1, stamped(places));
    }

    private Stream<Cell> cells() {
        return rows.stream().flatMap(r -> r.cells().stream());
    }

    /** The lines between the rows and beats of bars, by how many beats they have, as an SVG element that shows nothing. */
    public String lines() {
        return "<svg class=\"kept\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>"
                + systems.systems().stream()
                        .flatMap(List::stream)
                        .map(BarRun::beatCount)
                        .distinct()
                        .map(this::linesOf)
                        .collect(Collectors.joining())
                + "</defs></svg>";
    }

    private String linesId(int beatCount) {
        return key + "-" + beatCount;
    }

    private String linesOf(int beatCount) {
        int heightPx = rows.size() * systems.cellHeightPx();
        StringBuilder between = new StringBuilder();
        StringBuilder desks = new StringBuilder();
        List<Name> names = names();
        for (int r = 1; r < rows.size(); r++) {
            (names.get(r).newDesk() ? desks : between)
                    .append("M0 ")
                    .append(r * systems.cellHeightPx())
                    .append("h")
                    .append(beatCount * systems.cellWidthPx());
        }
        BarRun run = new BarRun("", 0, beatCount - 1);
        for (int b = 1; b < beatCount; b++) {
            (run.strong(b) ? desks : between)
                    .append("M")
                    .append(b * systems.cellWidthPx())
                    .append(" 0v")
                    .append(heightPx);
        }
        return "<g id=\"" + linesId(beatCount) + "\">" + line("rule", between) + line("secondary", desks) + "</g>";
    }

    private static String line(String role, StringBuilder path) {
        return path.isEmpty() ? "" : "<path class=\"line-" + role + "\" d=\"" + path + "\"/>";
    }

    /** How a sign is called in the page; those of a large section are smaller. */
    private String sign(Cell cell) {
        return sign(cell, systems.large());
    }

    private static String sign(Cell cell, boolean large) {
        return (large ? "small-" : "sign-")
                + cell.state().name().toLowerCase(Locale.ROOT)
                + cell.direction().map(d -> "-" + d.word()).orElse("")
                + (cell.byHand() ? "-hand" : "");
    }

    /** All signs there are, each once, as an SVG element that shows nothing; a page needs it once for all its strips. */
    public String signs() {
        StringBuilder svg =
                new StringBuilder("<svg class=\"kept\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>");
        Rectangle2D box = new Rectangle2D.Double(0, 0, systems.cellWidthPx(), systems.cellHeightPx());
        for (Cell cell : everyCell()) {
            CellPen pen = new CellPen();
            pen.add(cell, box);
            svg.append("<marker id=\"")
                    .append(sign(cell))
                    .append("\" markerUnits=\"userSpaceOnUse\" overflow=\"visible\">");
            pen.layers().forEach(layer -> svg.append(layer(layer)));
            svg.append("</marker>");
        }
        return svg.append("</defs></svg>").toString();
    }

    private static String layer(CellPen.Layer layer) {
        String d = PathText.of(layer.path());
        if (d.isEmpty()) {
            return "";
        }
        String kind = layer.line()
                .map(l -> "line-" + layer.role() + (l.equals(Look.DOTTED) ? " dotted" : ""))
                .orElse("fill-" + layer.role());
        return "<path class=\"" + kind + "\" d=\"" + d + "\"/>";
    }

    /** The style rules that stamp signs on paths of their names. */
    public static String css() {
        return Stream.of(false, true)
                .flatMap(large -> everyCell().stream().map(c -> sign(c, large)))
                .map(sign -> "." + sign + "{fill:none;marker:url(#" + sign + ")}\n")
                .collect(Collectors.joining());
    }

    private static List<Cell> everyCell() {
        List<Cell> all = new ArrayList<>();
        for (Stroke.Source source : List.of(Stroke.Source.READ, Stroke.Source.BY_HAND)) {
            for (Cell.State state : Cell.State.values()) {
                all.add(new Cell(state, Optional.empty(), source));
                for (BowDirection way : BowDirection.values()) {
                    all.add(new Cell(state, Optional.of(way), source));
                }
            }
        }
        return all;
    }
}
