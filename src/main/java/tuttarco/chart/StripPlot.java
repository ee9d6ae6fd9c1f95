package tuttarco.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;
import tuttarco.score.Awkward;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.Reason;

/** Draws a part's strip in systems, the key below, and the awkward places in words. */
final class StripPlot extends Plot {
    private static final double SIGN_PX = 12;
    private static final double THIN_PX = 1.3;
    private static final double HEAVY_PX = 2.9;
    private static final double CELL_PX = 18;
    private static final double DOT_PX = 4;
    private static final int KEY_PX = 28;
    private static final int SENTENCE_PX = 18;

    /** Awkward places told below the strip; all of them are in the table. */
    private static final int MOST_SENTENCES = 40;

    private static final String KEY =
            "heavy: marked    h hooked    r retake    s strong beat    w weak beat    l leads to the next bar or mark";

    private final transient Part part;
    private final transient List<MarkedStroke> strokes;
    private final transient StripLayout layout;

    /** The last note under a slur of each stroke that has any, by the stroke's start. */
    private final transient Map<Position, Position> lastSlurred = new HashMap<>();

    StripPlot(Part part, List<MarkedStroke> strokes, StripLayout layout) {
        this.part = part;
        this.strokes = strokes;
        this.layout = layout;
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

    /** Room for what stands below the systems. */
    static int notesPx(Part part) {
        return KEY_PX
                + SENTENCE_PX * Math.min(MOST_SENTENCES + 1, part.awkward().size());
    }

    @Override
    public String getPlotType() {
        return "bowing of a part";
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
        double y = area.getY();
        for (int system = 0; system < layout.systems().size(); system++) {
            drawBars(g, system, area.getX(), y);
            drawStrokes(g, system, area.getX(), y + StripLayout.BAR_NUMBER_PX);
            y += StripLayout.SYSTEM_PX + StripLayout.GAP_PX;
        }
        g.setPaint(Look.PALETTE.ink());
        Look.textStartingAt(g, KEY, Look.regular(Look.SMALL_PX), area.getX(), y);
        drawSentences(g, area, y + KEY_PX - SENTENCE_PX / 2.0);
    }

    private void drawSentences(Graphics2D g, Rectangle2D area, double top) {
        Font font = Look.regular(Look.SMALL_PX);
        double y = top;
        for (int i = 0; i < Math.min(MOST_SENTENCES, part.awkward().size()); i++) {
            String sentence = (i + 1) + "  " + Words.plain(part.awkward().get(i).spoken(part.bars()));
            Look.textStartingAt(
                    g, Words.shortened(sentence, g.getFontMetrics(font), area.getWidth()), font, area.getX(), y);
            y += SENTENCE_PX;
        }
        int more = part.awkward().size() - MOST_SENTENCES;
        if (more > 0) {
            Look.textStartingAt(g, "and " + more + " more", font, area.getX(), y);
        }
    }

    private void drawBars(Graphics2D g, int system, double left, double top) {
        double y0 = top + StripLayout.BAR_NUMBER_PX;
        double y1 = top + StripLayout.SYSTEM_PX - StripLayout.AWKWARD_PX;
        Path2D beats = new Path2D.Double();
        Path2D strong = new Path2D.Double();
        Path2D barLines = new Path2D.Double();
        Font numbers = Look.semibold(Look.SMALL_PX);
        g.setPaint(Look.PALETTE.ink());
        for (int i = layout.systems().get(system); i < layout.endBar(system); i++) {
            Bar bar = part.bars().get(i);
            double x = left + layout.xPx(system, new Position(i, bar.firstBeat()));
            double barPx = bar.lengthBeats() * layout.beatPx();
            String number = Words.shortened(Words.plain(bar.number()), g.getFontMetrics(numbers), barPx);
            Look.textStartingAt(g, number, numbers, x + 2, top + StripLayout.BAR_NUMBER_PX / 2.0);
            barLines.append(new Line2D.Double(x, y0, x, y1), false);
            for (double beat = Math.floor(bar.firstBeat()) + 1; beat < bar.firstBeat() + bar.lengthBeats(); beat++) {
                double beatX = left + layout.xPx(system, new Position(i, beat));
                (bar.metre().strong(beat) ? strong : beats).append(new Line2D.Double(beatX, y0, beatX, y1), false);
            }
            if (i == layout.endBar(system) - 1) {
                barLines.append(new Line2D.Double(x + barPx, y0, x + barPx, y1), false);
            }
        }
        g.setStroke(Look.HAIRLINE);
        g.setPaint(Look.PALETTE.rule());
        g.draw(beats);
        g.setPaint(Look.PALETTE.secondary());
        g.draw(strong);
        g.setPaint(Look.PALETTE.ink());
        g.setStroke(Look.MIDDLING);
        g.draw(barLines);
    }

    private void drawStrokes(Graphics2D g, int system, double left, double top) {
        double signs = top + StripLayout.SLUR_PX + StripLayout.SIGN_PX / 2.0;
        double lengths = top + StripLayout.SLUR_PX + StripLayout.SIGN_PX + StripLayout.LENGTH_PX / 2.0;
        double reasons = lengths + StripLayout.LENGTH_PX / 2.0 + StripLayout.REASON_PX / 2.0;
        double numbers = reasons + StripLayout.REASON_PX / 2.0 + StripLayout.AWKWARD_PX / 2.0;
        Path2D brackets = new Path2D.Double();
        Path2D lines = new Path2D.Double();
        Path2D filled = new Path2D.Double();
        g.setPaint(Look.PALETTE.ink());
        drawAwkward(g, system, left, signs, numbers);
        for (MarkedStroke stroke : strokes) {
            if (stroke.end().barIndex() < layout.systems().get(system)
                    || stroke.start().barIndex() >= layout.endBar(system)) {
                continue;
            }
            double x = left + inside(system, stroke.start());
            lines.append(new Line2D.Double(x, lengths, left + layout.xPx(system, stroke.end()) - 2, lengths), false);
            bracket(system, stroke).ifPresent(to -> appendBracket(brackets, x, left + to, top + 3));
            if (layout.holds(system, stroke.start())) {
                filled.append(dot(x, lengths), false);
                filled.append(
                        BowSigns.of(stroke.direction(), x, signs, SIGN_PX, stroke.marked() ? HEAVY_PX : THIN_PX),
                        false);
                centred(g, letter(stroke.reason()), Look.regular(Look.SMALL_PX), x, reasons);
            }
        }
        for (Hints.Joined joined : part.hints().joined()) {
            if (layout.holds(system, joined.at())) {
                filled.append(dot(left + inside(system, joined.at()), lengths), false);
            }
        }
        g.setPaint(Look.PALETTE.ink());
        g.setStroke(Look.HAIRLINE);
        g.draw(lines);
        g.setStroke(Look.MIDDLING);
        g.draw(brackets);
        g.fill(filled);
    }

    /** A filled cell with a cut corner behind the sign and a number below; an inner mark's own sign stands in its cell. */
    private void drawAwkward(Graphics2D g, int system, double left, double signs, double numbers) {
        Path2D cells = new Path2D.Double();
        Path2D inner = new Path2D.Double();
        for (int i = 0; i < part.awkward().size(); i++) {
            Awkward place = part.awkward().get(i);
            if (layout.holds(system, place.at())) {
                double x = left + inside(system, place.at());
                double high = StripLayout.SIGN_PX;
                cells.append(
                        CellPen.bevelled(new Rectangle2D.Double(x - CELL_PX / 2, signs - high / 2, CELL_PX, high)),
                        false);
                centred(g, Integer.toString(i + 1), Look.semibold(Look.SMALL_PX), x, numbers);
                if (place instanceof Awkward.MarkInSlur mark) {
                    inner.append(BowSigns.of(mark.marked(), x, signs, SIGN_PX, HEAVY_PX), false);
                }
            }
        }
        g.setPaint(Look.PALETTE.against());
        g.fill(cells);
        g.setPaint(Look.PALETTE.ink());
        g.setStroke(Look.HEAVY);
        g.draw(cells);
        g.fill(inner);
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

    private static void centred(Graphics2D g, String text, Font font, double x, double middle) {
        if (!text.isEmpty()) {
            Look.textStartingAt(g, text, font, x - g.getFontMetrics(font).stringWidth(text) / 2.0, middle);
        }
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
