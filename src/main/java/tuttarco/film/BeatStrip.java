package tuttarco.film;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.chart.Cell;
import tuttarco.chart.CellPen;
import tuttarco.chart.CellRow;
import tuttarco.chart.Palette;
import tuttarco.chart.Type;
import tuttarco.chart.Words;

/**
 * The strip below the picture: bar and beat, and passing by under a mark for now, beat by beat, what is marked and how many
 * went with it and against it; below, the spot that is seen. Lengths are pixels of a picture {@value #USUAL_WIDTH_PX} wide.
 */
final class BeatStrip {
    /** Width that its measures are made for, pixels. */
    static final int USUAL_WIDTH_PX = 1280;

    static final int HEIGHT_PX = 128;

    private static final double LABELS_PX = 132;
    private static final double BEATS_PX = 222;
    private static final double NUMBERS_PX = 18;
    private static final double SIGNS_PX = 32;
    private static final double COUNTS_PX = 22;

    /** Where now is, as a share of the beats' width from the left: more of what comes is seen than of what was. */
    private static final double NOW = 0.3;

    /** Width of a beat of usual length, pixels; a sign needs as much. */
    private static final double BEAT_PX = 40;

    private static final double MARGIN_PX = 12;

    private final BeatMap beats;
    private final Optional<CellRow> model;
    private final List<CellRow> players;
    private final List<ShownSpot> spots;
    private final double beatPxPerS;

    /**
     * @param rows of the section by beat; the first may be what is marked
     */
    BeatStrip(BeatMap beats, List<CellRow> rows, List<ShownSpot> spots) {
        this.beats = beats;
        this.model = rows.stream()
                .filter(row -> row.player().map(p -> p.leader() && leads(row)).orElse(true))
                .findFirst();
        this.players = rows.stream()
                .filter(row -> row.player().isPresent() && !model.equals(Optional.of(row)))
                .toList();
        this.spots = List.copyOf(spots);
        this.beatPxPerS = BEAT_PX / usualBeatS(beats);
    }

    /** Whether nobody but the others is compared with the row: a leader's is shown as it is. */
    private static boolean leads(CellRow row) {
        return row.cells().stream().anyMatch(c -> c.state() == Cell.State.SHOWN);
    }

    private static double usualBeatS(BeatMap beats) {
        double[] lengthsS = new double[beats.beats().size()];
        for (int i = 0; i < lengthsS.length; i++) {
            lengthsS[i] = beats.endS(i) - beats.beats().get(i).timeS();
        }
        Arrays.sort(lengthsS);
        return Math.max(0.1, lengthsS[lengthsS.length / 2]);
    }

    /** Draws it from the origin on, as wide as said and as high as {@link #HEIGHT_PX}. */
    void draw(Graphics2D g, Palette palette, double timeS, double widthPx) {
        g.setPaint(palette.ground());
        g.fill(new Rectangle2D.Double(0, 0, widthPx, HEIGHT_PX));
        place(g, palette, timeS);
        labels(g, palette);
        Shape clip = g.getClip();
        Rectangle2D room =
                new Rectangle2D.Double(BEATS_PX, 0, widthPx - BEATS_PX, NUMBERS_PX + SIGNS_PX + 2 * COUNTS_PX);
        g.clip(room);
        passing(g, palette, timeS, room);
        g.setClip(clip);
        spot(g, palette, timeS, widthPx);
    }

    /** Bar and beat, large. */
    private void place(Graphics2D g, Palette palette, double timeS) {
        Optional<Beat> beat = beats.indexAt(timeS).map(beats.beats()::get);
        Font large = Type.heading().deriveFont(26f);
        String above = beat.map(b -> b.inBar() ? "Bar " + b.bar() : "Stroke").orElse("");
        String below =
                beat.map(b -> b.inBar() ? "beat " + b.beat() : b.beat() + ".").orElse("");
        double roomPx = LABELS_PX - MARGIN_PX;
        text(g, palette.ink(), large, Words.plain(above), MARGIN_PX, 24, roomPx);
        text(g, palette.ink(), Type.heading(), below, MARGIN_PX, 52, roomPx);
        text(g, palette.secondary(), Type.body(), Words.clock(timeS), MARGIN_PX, 78, roomPx);
    }

    private void labels(Graphics2D g, Palette palette) {
        double signs = NUMBERS_PX + SIGNS_PX / 2;
        double with = NUMBERS_PX + SIGNS_PX + COUNTS_PX / 2;
        String name =
                model.map(row -> row.player().isPresent() ? "Leader" : "Marked").orElse("");
        double roomPx = BEATS_PX - LABELS_PX - 4;
        text(g, palette.ink(), Type.strong(), name, LABELS_PX, signs, roomPx);
        text(g, palette.with(), Type.body(), "With", LABELS_PX, with, roomPx);
        text(g, palette.ink(), Type.strong(), "Against", LABELS_PX, with + COUNTS_PX, roomPx);
    }

    private void passing(Graphics2D g, Palette palette, double timeS, Rectangle2D room) {
        double nowX = room.getX() + NOW * room.getWidth();
        CellPen signs = new CellPen();
        int first = beats.meantBy(timeS - NOW * room.getWidth() / beatPxPerS).orElse(0);
        for (int i = Math.max(0, first - 1); i < beats.beats().size(); i++) {
            Beat beat = beats.beats().get(i);
            double x = nowX + (beat.timeS() - timeS) * beatPxPerS;
            double endX = nowX + (beats.endS(i) - timeS) * beatPxPerS;
            if (x > room.getMaxX()) {
                break;
            }
            line(g, palette, i, x, room);
            if (beats.beginsBar(i) && beat.inBar()) {
                text(g, palette.secondary(), Type.small(), beat.bar(), x + 3, NUMBERS_PX / 2, endX - x + BEAT_PX);
            }
            double middleX = (x + endX) / 2;
            int beatIndex = i;
            model.ifPresent(row -> signs.add(
                    row.cells().get(beatIndex),
                    new Rectangle2D.Double(middleX - SIGNS_PX / 2, NUMBERS_PX, SIGNS_PX, SIGNS_PX)));
            counts(g, palette, i, middleX);
        }
        signs.draw(g, palette);
        now(g, palette, nowX, room);
    }

    private void line(Graphics2D g, Palette palette, int beat, double x, Rectangle2D room) {
        boolean bar = beats.beginsBar(beat);
        g.setPaint(bar ? palette.secondary() : palette.rule());
        g.setStroke(new BasicStroke(bar ? 1.4f : 1f));
        g.draw(new Line2D.Double(x, bar ? 2 : NUMBERS_PX, x, room.getMaxY()));
    }

    /** How many went with it, thin, and against it, heavy on a bevelled cell. */
    private void counts(Graphics2D g, Palette palette, int beat, double middleX) {
        long with = count(beat, Cell.State.WITH);
        long against = count(beat, Cell.State.AGAINST);
        double top = NUMBERS_PX + SIGNS_PX;
        if (with > 0) {
            centred(g, palette.with(), Type.body(), with, middleX, top + COUNTS_PX / 2);
        }
        if (against > 0) {
            g.setPaint(palette.against());
            g.fill(CellPen.bevelled(new Rectangle2D.Double(middleX - 13, top + COUNTS_PX + 1, 26, COUNTS_PX - 2)));
            centred(g, palette.heavy(), Type.strong(), against, middleX, top + 1.5 * COUNTS_PX);
        }
    }

    private long count(int beat, Cell.State state) {
        return players.stream()
                .filter(row -> row.cells().get(beat).state() == state)
                .count();
    }

    private static void now(Graphics2D g, Palette palette, double x, Rectangle2D room) {
        g.setPaint(palette.accent());
        g.setStroke(new BasicStroke(2));
        g.draw(new Line2D.Double(x, 0, x, room.getMaxY()));
        Path2D head = new Path2D.Double();
        head.moveTo(x - 6, 0);
        head.lineTo(x + 6, 0);
        head.lineTo(x, 8);
        head.closePath();
        g.fill(head);
    }

    private void spot(Graphics2D g, Palette palette, double timeS, double widthPx) {
        double top = NUMBERS_PX + SIGNS_PX + 2 * COUNTS_PX + 4;
        double middle = (top + HEIGHT_PX) / 2;
        spots.stream().filter(s -> s.at(timeS)).findFirst().ifPresent(spot -> {
            g.setPaint(palette.against());
            g.fill(CellPen.bevelled(new Rectangle2D.Double(MARGIN_PX, middle - 9, 18, 18)));
            text(
                    g,
                    palette.ink(),
                    Type.strong(),
                    Words.plain(spot.words()),
                    MARGIN_PX + 26,
                    middle,
                    widthPx - 2 * MARGIN_PX - 26);
        });
    }

    private static void centred(Graphics2D g, Color colour, Font font, long number, double middleX, double middleY) {
        String text = Long.toString(number);
        double widthPx = g.getFontMetrics(font).stringWidth(text);
        text(g, colour, font, text, middleX - widthPx / 2, middleY, widthPx);
    }

    private static void text(
            Graphics2D g, Color colour, Font font, String text, double x, double middleY, double roomPx) {
        Font able = font.canDisplayUpTo(text) < 0 ? font : new Font(Font.SANS_SERIF, font.getStyle(), font.getSize());
        FontMetrics metrics = g.getFontMetrics(able);
        g.setFont(able);
        g.setPaint(colour);
        g.drawString(Words.shortened(text, metrics, roomPx), (float) x, (float)
                (middleY + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }
}
