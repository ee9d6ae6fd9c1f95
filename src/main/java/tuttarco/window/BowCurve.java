package tuttarco.window;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.chart.BowTravel;
import tuttarco.chart.Palette;
import tuttarco.chart.StrokePen;
import tuttarco.chart.Type;
import tuttarco.chart.Words;
import tuttarco.review.BowLine;
import tuttarco.review.ByHand;
import tuttarco.review.Mark;
import tuttarco.review.MarkMove;
import tuttarco.review.Reviewing;
import tuttarco.review.Stretch;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Stroke;

/**
 * The chosen player's bow over time: how it travelled, the strokes above it, the beats; and changes and beats that can be
 * taken hold of and moved.
 */
final class BowCurve extends Drawn {
    private static final long serialVersionUID = 1L;

    private static final double BARS_PX = 20;
    private static final double LANE_PX = 24;
    private static final double TIMES_PX = 18;
    /** How near the mouse must come to take hold of a mark. */
    private static final double GRIP_PX = 6;
    /** Width of the error band, in standard deviations: about 95 % of a normal error. */
    private static final double BAND = 2;
    /** Seconds seen at first: about two bars of slow four (chosen). */
    private static final double FIRST_SPAN_S = 8;

    private static final double SHORTEST_SPAN_S = 1;
    private static final double LONGEST_SPAN_S = 120;
    private static final double ZOOM = 1.5;
    private static final double STEP_S = 0.01;
    /** Where the time lies after a page is turned, as a part of the page. */
    private static final double MARGIN = 0.1;

    private final transient Reviewing reviewing;
    private final transient ByHand byHand;
    private double fromS;
    private double spanS = FIRST_SPAN_S;
    private Mark.Kind kind = Mark.Kind.CHANGE;
    private transient Optional<MarkMove> held = Optional.empty();
    private transient Optional<BowLine> seen = Optional.empty();

    BowCurve(Reviewing reviewing, ByHand byHand) {
        super("review-bow", "The chosen player's bow", AccessibleRole.CANVAS);
        this.reviewing = reviewing;
        this.byHand = byHand;
        key("LEFT", () -> take(true));
        key("RIGHT", () -> take(false));
        key("ctrl LEFT", () -> shift(-STEP_S));
        key("ctrl RIGHT", () -> shift(STEP_S));
        key("UP", () -> of(Mark.Kind.BEAT));
        key("DOWN", () -> of(Mark.Kind.CHANGE));
        key("ENTER", this::keep);
        key("ESCAPE", () -> hold(Optional.empty()));
        key("PLUS", () -> zoom(1 / ZOOM));
        key("ADD", () -> zoom(1 / ZOOM));
        key("EQUALS", () -> zoom(1 / ZOOM));
        key("MINUS", () -> zoom(ZOOM));
        key("SUBTRACT", () -> zoom(ZOOM));
        MouseAdapter mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        reviewing.onChange().add(this::changed);
    }

    private void changed() {
        if (!seen.equals(reviewing.bow())
                && !(seen.isPresent() && seen.get() == reviewing.bow().orElse(null))) {
            seen = reviewing.bow();
            held = Optional.empty();
        }
        double timeS = reviewing.choice().timeS();
        boolean away = timeS < fromS || timeS > fromS + spanS;
        boolean cutOff = reviewing
                .stretch()
                .filter(s -> s.fromS() == timeS && s.toS() > fromS + spanS)
                .isPresent();
        if (away || cutOff) {
            fromS = timeS - MARGIN * spanS;
        }
        say(seen.map(b -> Words.plain(b.player().label())).orElse("")
                + held.map(h -> ", " + h.spoken()).orElse(""));
        repaint();
    }

    private double x(double timeS) {
        return (timeS - fromS) / spanS * widthPx();
    }

    private double timeS(double x) {
        return fromS + x / widthPx() * spanS;
    }

    /** The bow that is shown. */
    Optional<BowLine> line() {
        return seen;
    }

    /** Where a time lies in the lane of the strokes. */
    Point place(double timeS) {
        return new Point((int) Math.round(x(timeS) * scale()), (int) Math.round((BARS_PX + LANE_PX / 2) * scale()));
    }

    private void of(Mark.Kind other) {
        kind = other;
        hold(seen.flatMap(b -> b.nearest(kind, reviewing.choice().timeS())).map(MarkMove::none));
    }

    /** Takes hold of the next mark, or the one before. */
    private void take(boolean back) {
        double timeS = held.map(h -> h.mark().timeS()).orElse(reviewing.choice().timeS());
        seen.flatMap(b -> b.next(kind, timeS, back)).ifPresent(m -> hold(Optional.of(MarkMove.none(m))));
    }

    private void hold(Optional<MarkMove> other) {
        held = other;
        other.ifPresent(h -> reviewing.chooseTime(h.toS()));
        changed();
    }

    private void shift(double byS) {
        held.ifPresent(h -> hold(Optional.of(h.to(h.toS() + byS))));
    }

    private void keep() {
        held.ifPresent(h -> byHand.move(h.mark(), h.toS()));
    }

    private void zoom(double times) {
        double middleS = reviewing.choice().timeS();
        double share = (middleS - fromS) / spanS;
        spanS = Math.max(SHORTEST_SPAN_S, Math.min(LONGEST_SPAN_S, spanS * times));
        fromS = middleS - share * spanS;
        changed();
    }

    private final class Mouse extends MouseAdapter {
        private boolean dragging;

        @Override
        public void mousePressed(MouseEvent e) {
            Point2D at = unscaled(e.getPoint());
            Mark.Kind wanted = at.getY() < BARS_PX ? Mark.Kind.BEAT : Mark.Kind.CHANGE;
            Optional<Mark> near = seen.flatMap(b -> b.nearest(wanted, timeS(at.getX())))
                    .filter(m -> Math.abs(x(m.timeS()) - at.getX()) <= GRIP_PX);
            dragging = near.isPresent();
            if (dragging) {
                kind = wanted;
                hold(near.map(MarkMove::none));
            } else {
                held = Optional.empty();
                reviewing.chooseTime(Math.max(0, timeS(at.getX())));
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            double toS = Math.max(0, timeS(unscaled(e.getPoint()).getX()));
            if (dragging) {
                held.ifPresent(h -> hold(Optional.of(h.to(toS))));
            } else {
                reviewing.chooseTime(toS);
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (dragging) {
                dragging = false;
                keep();
            }
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            if (e.isControlDown()) {
                zoom(Math.pow(ZOOM, e.getPreciseWheelRotation()));
            } else {
                fromS += e.getPreciseWheelRotation() * spanS / 10;
                repaint();
            }
        }
    }

    @Override
    void draw(Graphics2D g, Palette palette) {
        g.setPaint(palette.ground());
        g.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()));
        seen.ifPresent(bow -> {
            drawBeats(g, palette, bow.beats());
            drawCurve(g, palette, bow);
            drawStrokes(g, palette, bow);
            drawTimes(g, palette);
            drawMarks(g, palette);
        });
        double cursor = x(reviewing.choice().timeS());
        line(g, palette.accent(), 1.4f, cursor, 0, cursor, heightPx());
        drawFocus(g, palette, new Rectangle2D.Double(0, 0, widthPx(), heightPx()));
    }

    private void drawBeats(Graphics2D g, Palette palette, BeatMap beats) {
        double freeFromPx = 0;
        for (int i = beats.lastBegun(fromS).orElse(0); i < beats.beats().size(); i++) {
            Beat beat = beats.beats().get(i);
            double x = x(beat.timeS());
            if (x > widthPx()) {
                return;
            }
            boolean first = beats.beginsBar(i);
            line(
                    g,
                    first ? palette.secondary() : palette.rule(),
                    first ? 1.4f : 1,
                    x,
                    first ? 2 : 8,
                    x,
                    heightPx() - TIMES_PX);
            String number = beat.inBar() ? beat.bar() : Integer.toString(beat.beat());
            if ((first || !beat.inBar()) && x >= freeFromPx && x >= 0) {
                g.setPaint(palette.ink());
                freeFromPx = x + text(g, number, Type.small(), x + 3, BARS_PX / 2) + 8;
            }
        }
    }

    private void drawStrokes(Graphics2D g, Palette palette, BowLine bow) {
        StrokePen pen = new StrokePen();
        for (Stretch against : bow.against()) {
            span(against.fromS(), against.toS()).ifPresent(pen::addAgainst);
        }
        for (Bow one : bow.bows()) {
            Stroke stroke = one.stroke();
            span(stroke.startS(), stroke.endS()).ifPresent(box -> pen.add(one, bow.against(stroke), box));
        }
        pen.draw(g, palette);
        line(g, palette.secondary(), 1, 0, BARS_PX, widthPx(), BARS_PX);
        line(g, palette.secondary(), 1, 0, BARS_PX + LANE_PX, widthPx(), BARS_PX + LANE_PX);
    }

    /** The part of a span that is seen, in the lane of the strokes. */
    private Optional<Rectangle2D> span(double startS, double endS) {
        double x0 = Math.max(-2, x(startS));
        double x1 = Math.min(widthPx() + 2, x(endS));
        return x1 - x0 < 0.5
                ? Optional.empty()
                : Optional.of(new Rectangle2D.Double(x0, BARS_PX + 1, x1 - x0, LANE_PX - 2));
    }

    private void drawCurve(Graphics2D g, Palette palette, BowLine bow) {
        double top = BARS_PX + LANE_PX + 4;
        double bottom = heightPx() - TIMES_PX;
        double middle = (top + bottom) / 2;
        double perTravel = (bottom - top) / 2 / bow.mostTravel();
        line(g, palette.rule(), 1, 0, middle, widthPx(), middle);
        for (List<BowTravel.Point> stretch : bow.curve()) {
            List<BowTravel.Point> points = stretch.stream()
                    .filter(p -> p.timeS() > fromS - 0.2 && p.timeS() < fromS + spanS + 0.2)
                    .toList();
            if (points.size() > 1) {
                Path2D band = new Path2D.Double();
                Path2D curve = new Path2D.Double();
                for (int i = 0; i < points.size(); i++) {
                    BowTravel.Point p = points.get(i);
                    add(band, i, x(p.timeS()), middle - perTravel * (p.travel() + BAND * p.error()));
                    add(curve, i, x(p.timeS()), middle - perTravel * p.travel());
                }
                for (int i = points.size() - 1; i >= 0; i--) {
                    BowTravel.Point p = points.get(i);
                    band.lineTo(x(p.timeS()), middle - perTravel * (p.travel() - BAND * p.error()));
                }
                g.setPaint(palette.rule());
                g.fill(band);
                g.setPaint(palette.ink());
                g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                g.draw(curve);
            }
        }
        g.setPaint(palette.secondary());
        text(g, "tip", Type.small(), 4, top + 8);
        text(g, "frog", Type.small(), 4, bottom - 8);
    }

    private static void add(Path2D path, int index, double x, double y) {
        if (index == 0) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    private void drawTimes(Graphics2D g, Palette palette) {
        double y = heightPx() - TIMES_PX;
        line(g, palette.secondary(), 1, 0, y, widthPx(), y);
        double stepS = spanS > 60 ? 10 : spanS > 20 ? 5 : spanS > 4 ? 1 : 0.5;
        g.setPaint(palette.secondary());
        for (double t = Math.max(0, Math.ceil(fromS / stepS) * stepS); t < fromS + spanS; t += stepS) {
            text(g, Words.clock(t), Type.small(), x(t) + 3, y + TIMES_PX / 2);
        }
    }

    private void drawMarks(Graphics2D g, Palette palette) {
        held.ifPresent(h -> {
            double y = h.mark().kind() == Mark.Kind.BEAT ? 0 : BARS_PX;
            double was = x(h.mark().timeS());
            double now = x(h.toS());
            line(g, palette.accent(), 1, was, y, was, heightPx() - TIMES_PX);
            line(g, palette.accent(), 2.4f, now, y, now, heightPx() - TIMES_PX);
            double grip = y + (h.mark().kind() == Mark.Kind.BEAT ? BARS_PX : LANE_PX) / 2;
            Path2D diamond = new Path2D.Double();
            diamond.moveTo(now, grip - 6);
            diamond.lineTo(now + 6, grip);
            diamond.lineTo(now, grip + 6);
            diamond.lineTo(now - 6, grip);
            diamond.closePath();
            g.setPaint(palette.accent());
            g.fill(diamond);
        });
        String told = held.map(MarkMove::spoken).orElse("");
        String said = isFocusOwner()
                ? (told.isEmpty() ? "" : told + "   ")
                        + "Left, right: the next; up, down: beats or changes; Control: move by 10 ms; Enter: keep"
                : told;
        if (!said.isEmpty()) {
            g.setFont(Type.small());
            double wide = g.getFontMetrics().stringWidth(said);
            double left = Math.max(4, widthPx() - wide - 8);
            double y = heightPx() - TIMES_PX - 11;
            g.setPaint(palette.ground());
            g.fill(new Rectangle2D.Double(left - 4, y - 9, wide + 8, 18));
            g.setPaint(palette.ink());
            text(g, said, Type.small(), left, y);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return scaled(600, 150);
    }

    @Override
    public Dimension getMinimumSize() {
        return scaled(200, 96);
    }
}
