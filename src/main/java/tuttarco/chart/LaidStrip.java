package tuttarco.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.score.Awkward;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.Reason;

/** A part's strip laid out in systems from its left upper corner: where each stroke lies, and how it is drawn. */
public final class LaidStrip {
    /** What the letters and weights of the strip say. */
    public static final String KEY =
            "heavy: marked    h hooked    r retake    s strong beat    w weak beat    l leads to the next bar or mark";

    private static final double SIGN_PX = 12;
    private static final double THIN_PX = 1.3;
    private static final double HEAVY_PX = 2.9;
    private static final double CELL_PX = 18;
    private static final double DOT_PX = 4;

    /** Room a sign has around its middle, in which it is pointed at. */
    private static final double AROUND_PX = 11;

    private final Part part;
    private final List<MarkedStroke> strokes;
    private final StripLayout layout;

    /** The last note under a slur of each stroke that has any, by the stroke's start. */
    private final Map<Position, Position> lastSlurred = new HashMap<>();

    private LaidStrip(Part part, StripLayout layout) {
        this.part = part;
        this.layout = layout;
        this.strokes = part.spans().stream()
                .filter(MarkedStroke.class::isInstance)
                .map(MarkedStroke.class::cast)
                .toList();
        int stroke = 0;
        for (Hints.Joined joined : part.hints().joined()) {
            while (stroke + 1 < strokes.size()
                    && strokes.get(stroke + 1).start().compareTo(joined.at()) < 0) {
                stroke++;
            }
            if (joined.by() == Hints.By.SLUR) {
                lastSlurred.put(strokes.get(stroke).start(), joined.at());
            }
        }
    }

    /** The strip as it fits into a width, pixels. */
    public static LaidStrip of(Part part, double widthPx) {
        return new LaidStrip(part, StripLayout.of(part, widthPx));
    }

    /** The strokes in the order played. */
    public List<MarkedStroke> strokes() {
        return strokes;
    }

    public int heightPx() {
        return layout.heightPx();
    }

    /** Where a stroke's sign, its line and its reason lie. */
    public Rectangle2D box(Position at) {
        int system = systemOf(at);
        double x = inside(system, at);
        double y = system * StripLayout.PITCH_PX + StripLayout.BAR_NUMBER_PX;
        double heightPx = StripLayout.SYSTEM_PX - StripLayout.BAR_NUMBER_PX;
        return new Rectangle2D.Double(x - AROUND_PX, y, 2 * AROUND_PX, heightPx);
    }

    /** The stroke that sounds at a place of the strip. */
    public Optional<MarkedStroke> at(double xPx, double yPx) {
        int system = (int) Math.floor(yPx / StripLayout.PITCH_PX);
        if (system < 0 || system >= layout.systems().size()) {
            return Optional.empty();
        }
        return strokes.stream()
                .filter(stroke -> meets(system, stroke))
                .filter(stroke -> xPx >= layout.xPx(system, stroke.start()) && xPx < layout.xPx(system, stroke.end()))
                .findFirst();
    }

    /** The system a place lies in, from 0. */
    public int systemOf(Position at) {
        int system = 0;
        while (system + 1 < layout.systems().size() && layout.systems().get(system + 1) <= at.barIndex()) {
            system++;
        }
        return system;
    }

    /** Draws the systems that can be seen in the clip of {@code g}. */
    public void draw(Graphics2D g, Palette palette) {
        Rectangle seen = g.getClipBounds();
        for (int system = 0; system < layout.systems().size(); system++) {
            double top = (double) system * StripLayout.PITCH_PX;
            if (seen == null || (top <= seen.getMaxY() && top + StripLayout.PITCH_PX >= seen.getMinY())) {
                new Pen(g, palette).draw(system, top);
            }
        }
    }

    private boolean isAwkward(Position at) {
        return part.awkward().stream().anyMatch(place -> place.at().equals(at));
    }

    private boolean meets(int system, MarkedStroke stroke) {
        return stroke.end().barIndex() >= layout.systems().get(system)
                && stroke.start().barIndex() < layout.endBar(system);
    }

    /** Draws one system after the other. */
    private final class Pen {
        private final Graphics2D g;
        private final Palette palette;

        Pen(Graphics2D g, Palette palette) {
            this.g = g;
            this.palette = palette;
        }

        void draw(int system, double top) {
            drawBars(system, top);
            drawStrokes(system, top + StripLayout.BAR_NUMBER_PX);
        }

        private void drawBars(int system, double top) {
            double y0 = top + StripLayout.BAR_NUMBER_PX;
            double y1 = top + StripLayout.SYSTEM_PX - StripLayout.AWKWARD_PX;
            Path2D beats = new Path2D.Double();
            Path2D strong = new Path2D.Double();
            Path2D barLines = new Path2D.Double();
            Font numbers = Look.semibold(Look.SMALL_PX);
            g.setPaint(palette.ink());
            for (int i = layout.systems().get(system); i < layout.endBar(system); i++) {
                Bar bar = part.bars().get(i);
                double x = layout.xPx(system, new Position(i, bar.firstBeat()));
                double barPx = bar.lengthBeats() * layout.beatPx();
                String number = Words.shortened(Words.plain(bar.number()), g.getFontMetrics(numbers), barPx);
                Look.textStartingAt(g, number, numbers, x + 2, top + StripLayout.BAR_NUMBER_PX / 2.0);
                barLines.append(new Line2D.Double(x, y0, x, y1), false);
                for (double beat = Math.floor(bar.firstBeat()) + 1;
                        beat < bar.firstBeat() + bar.lengthBeats();
                        beat++) {
                    double beatX = layout.xPx(system, new Position(i, beat));
                    (bar.metre().strong(beat) ? strong : beats).append(new Line2D.Double(beatX, y0, beatX, y1), false);
                }
                if (i == layout.endBar(system) - 1) {
                    barLines.append(new Line2D.Double(x + barPx, y0, x + barPx, y1), false);
                }
            }
            g.setStroke(Look.HAIRLINE);
            g.setPaint(palette.rule());
            g.draw(beats);
            g.setPaint(palette.secondary());
            g.draw(strong);
            g.setPaint(palette.ink());
            g.setStroke(Look.MIDDLING);
            g.draw(barLines);
        }

        private void drawStrokes(int system, double top) {
            double signs = top + StripLayout.SLUR_PX + StripLayout.SIGN_PX / 2.0;
            double lengths = top + StripLayout.SLUR_PX + StripLayout.SIGN_PX + StripLayout.LENGTH_PX / 2.0;
            double reasons = lengths + StripLayout.LENGTH_PX / 2.0 + StripLayout.REASON_PX / 2.0;
            double numbers = reasons + StripLayout.REASON_PX / 2.0 + StripLayout.AWKWARD_PX / 2.0;
            Path2D brackets = new Path2D.Double();
            Path2D lines = new Path2D.Double();
            Path2D filled = new Path2D.Double();
            Path2D onCells = new Path2D.Double();
            g.setPaint(palette.ink());
            drawAwkward(system, signs, numbers);
            for (MarkedStroke stroke : strokes) {
                if (!meets(system, stroke)) {
                    continue;
                }
                double x = inside(system, stroke.start());
                lines.append(new Line2D.Double(x, lengths, layout.xPx(system, stroke.end()) - 2, lengths), false);
                bracket(system, stroke).ifPresent(to -> appendBracket(brackets, x, to, top + 3));
                if (layout.holds(system, stroke.start())) {
                    filled.append(dot(x, lengths), false);
                    (isAwkward(stroke.start()) ? onCells : filled)
                            .append(
                                    BowSigns.of(
                                            stroke.direction(),
                                            x,
                                            signs,
                                            SIGN_PX,
                                            stroke.marked() ? HEAVY_PX : THIN_PX),
                                    false);
                    centred(letter(stroke.reason()), Look.regular(Look.SMALL_PX), x, reasons);
                }
            }
            for (Hints.Joined joined : part.hints().joined()) {
                if (layout.holds(system, joined.at())) {
                    filled.append(dot(inside(system, joined.at()), lengths), false);
                }
            }
            g.setPaint(palette.ink());
            g.setStroke(Look.HAIRLINE);
            g.draw(lines);
            g.setStroke(Look.MIDDLING);
            g.draw(brackets);
            g.fill(filled);
            g.setPaint(palette.heavy());
            g.fill(onCells);
        }

        /** A filled cell with a cut corner behind the sign and a number below; an inner mark's own sign stands in its cell. */
        private void drawAwkward(int system, double signs, double numbers) {
            Path2D cells = new Path2D.Double();
            Path2D inner = new Path2D.Double();
            for (int i = 0; i < part.awkward().size(); i++) {
                Awkward place = part.awkward().get(i);
                if (layout.holds(system, place.at())) {
                    double x = inside(system, place.at());
                    double high = StripLayout.SIGN_PX;
                    cells.append(
                            CellPen.bevelled(new Rectangle2D.Double(x - CELL_PX / 2, signs - high / 2, CELL_PX, high)),
                            false);
                    centred(Integer.toString(i + 1), Look.semibold(Look.SMALL_PX), x, numbers);
                    if (place instanceof Awkward.MarkInSlur mark) {
                        inner.append(BowSigns.of(mark.marked(), x, signs, SIGN_PX, HEAVY_PX), false);
                    }
                }
            }
            g.setPaint(palette.against());
            g.fill(cells);
            g.setPaint(palette.ink());
            g.setStroke(Look.HEAVY);
            g.draw(cells);
            g.setPaint(palette.heavy());
            g.fill(inner);
            g.setPaint(palette.ink());
        }

        private void centred(String text, Font font, double x, double middle) {
            if (!text.isEmpty()) {
                Look.textStartingAt(g, text, font, x - g.getFontMetrics(font).stringWidth(text) / 2.0, middle);
            }
        }
    }

    /** How far the bracket over a stroke's slurred notes reaches in this system, from its left. */
    private Optional<Double> bracket(int system, MarkedStroke stroke) {
        Position last = lastSlurred.get(stroke.start());
        if (last == null) {
            return Optional.empty();
        }
        return last.barIndex() < layout.systems().get(system)
                ? Optional.empty()
                : Optional.of(layout.holds(system, last) ? inside(system, last) : layout.xPx(system, last));
    }

    private static void appendBracket(Path2D brackets, double from, double to, double y) {
        brackets.moveTo(from, y + 5);
        brackets.lineTo(from, y);
        brackets.lineTo(to, y);
        brackets.lineTo(to, y + 5);
    }

    private double inside(int system, Position place) {
        double xPx = layout.xPx(system, place);
        return layout.holds(system, place) ? xPx + StripLayout.INSIDE_PX : xPx;
    }

    private static Ellipse2D dot(double x, double y) {
        return new Ellipse2D.Double(x - DOT_PX / 2, y - DOT_PX / 2, DOT_PX, DOT_PX);
    }

    private static String letter(Reason reason) {
        if (reason instanceof Reason.Marked marked) {
            return marked.retake() ? "r" : "";
        }
        if (reason instanceof Reason.StrongBeat beat) {
            return beat.strong() ? "s" : "w";
        }
        if (reason instanceof Reason.Upbeat) {
            return "l";
        }
        if (reason instanceof Reason.Hooked) {
            return "h";
        }
        return reason instanceof Reason.Retake ? "r" : "";
    }
}
