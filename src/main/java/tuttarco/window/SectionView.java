package tuttarco.window;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import tuttarco.chart.BarRun;
import tuttarco.chart.CellPen;
import tuttarco.chart.CellRow;
import tuttarco.chart.Palette;
import tuttarco.chart.Type;
import tuttarco.chart.Words;
import tuttarco.review.ChosenBeats;
import tuttarco.review.Judged;
import tuttarco.review.Reviewing;
import tuttarco.review.SectionTable;
import tuttarco.seats.Player;

/** The section by beat: a cell a player and beat, chosen by mouse and keys, with the place where the clip is. */
final class SectionView extends Drawn implements Scrollable {
    private static final long serialVersionUID = 1L;

    private static final double CELL_WIDTH_PX = 22;
    private static final double CELL_HEIGHT_PX = 24;
    private static final double NAMES_PX = 132;
    private static final double BARS_PX = 22;
    private static final float RULE_PX = 1;
    private static final float BAR_LINE_PX = 1.4f;
    private static final float CHOSEN_PX = 2;
    private static final float CURSOR_PX = 1.4f;

    private final transient Reviewing reviewing;
    private final Names names = new Names();
    private final Bars bars = new Bars();

    SectionView(Reviewing reviewing) {
        super("review-section", "The section by beat", AccessibleRole.TABLE);
        this.reviewing = reviewing;
        key("LEFT", () -> reviewing.moveBeats(-1, false));
        key("RIGHT", () -> reviewing.moveBeats(1, false));
        key("shift LEFT", () -> reviewing.moveBeats(-1, true));
        key("shift RIGHT", () -> reviewing.moveBeats(1, true));
        key("ctrl LEFT", () -> reviewing.moveBars(-1, false));
        key("ctrl RIGHT", () -> reviewing.moveBars(1, false));
        key("ctrl shift LEFT", () -> reviewing.moveBars(-1, true));
        key("ctrl shift RIGHT", () -> reviewing.moveBars(1, true));
        key("UP", () -> reviewing.movePlayers(-1));
        key("DOWN", () -> reviewing.movePlayers(1));
        key("HOME", () -> reviewing.moveBeats(Integer.MIN_VALUE / 2, false));
        key("END", () -> reviewing.moveBeats(Integer.MAX_VALUE / 2, false));
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                choose(e.getPoint(), e.isShiftDown());
            }

            @Override
            public void mouseDragged(MouseEvent e) {
                choose(e.getPoint(), true);
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        setToolTipText("");
        reviewing.onChange().add(this::changed);
    }

    /** The table in a scroll pane, with the players' names at its side and the bars above. */
    JScrollPane scrolled() {
        JScrollPane pane = new JScrollPane(this);
        pane.setRowHeaderView(names);
        pane.setColumnHeaderView(bars);
        pane.setBorder(null);
        pane.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        return pane;
    }

    private Optional<SectionTable> table() {
        return reviewing.judged().map(Judged::table);
    }

    private void changed() {
        revalidate();
        names.revalidate();
        bars.revalidate();
        repaint();
        names.repaint();
        bars.repaint();
        table().ifPresent(t -> {
            say(reviewing
                    .choice()
                    .player()
                    .flatMap(t::rowOf)
                    .map(row -> t.spoken(row, reviewing.beats().at()))
                    .orElse(""));
            follow(t);
        });
    }

    /** Turns the page when the beat is not on it, so that its bar begins at the left; and shows the player's row. */
    private void follow(SectionTable table) {
        int beat = table.beatNear(reviewing.choice().timeS());
        int row = reviewing.choice().player().flatMap(table::rowOf).orElse(0);
        Rectangle seen = getVisibleRect();
        Rectangle cell = box(row, beat);
        if (seen.isEmpty()) {
            return;
        }
        boolean there = seen.x <= cell.x && cell.x + cell.width <= seen.x + seen.width;
        int left = there ? seen.x : box(0, table.bars().get(table.barOf(beat)).firstIndex()).x;
        boolean above = cell.y < seen.y || cell.y + cell.height > seen.y + seen.height;
        if (!there || above) {
            scrollRectToVisible(
                    new Rectangle(left, above ? cell.y : seen.y, seen.width, above ? cell.height : seen.height));
        }
    }

    /** A cell in pixels of the component. */
    static Rectangle box(int row, int beat) {
        double scale = scale();
        return new Rectangle2D.Double(
                        beat * CELL_WIDTH_PX * scale,
                        row * CELL_HEIGHT_PX * scale,
                        CELL_WIDTH_PX * scale,
                        CELL_HEIGHT_PX * scale)
                .getBounds();
    }

    private void choose(Point at, boolean further) {
        table().ifPresent(t -> {
            Point2D point = unscaled(at);
            int row = (int) (point.getY() / CELL_HEIGHT_PX);
            int beat = t.moved(0, (int) (point.getX() / CELL_WIDTH_PX));
            if (row >= 0 && row < t.rows().size()) {
                Optional<Player> player = t.rows().get(row).player();
                reviewing.chooseBeat(
                        player.map(Player::label).or(() -> reviewing.choice().player()), beat, further);
            }
        });
    }

    @Override
    public String getToolTipText(MouseEvent e) {
        Point2D point = unscaled(e.getPoint());
        int row = (int) (point.getY() / CELL_HEIGHT_PX);
        int beat = (int) (point.getX() / CELL_WIDTH_PX);
        return table().filter(t -> row >= 0 && row < t.rows().size() && beat >= 0 && beat < t.beatCount())
                .map(t -> t.spoken(row, beat))
                .orElse(null);
    }

    @Override
    void draw(Graphics2D g, Palette palette) {
        g.setPaint(palette.ground());
        g.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()));
        table().ifPresent(t -> {
            Rectangle2D clip = g.getClipBounds();
            int from = t.moved(0, (int) (clip.getMinX() / CELL_WIDTH_PX) - 1);
            int to = t.moved(0, (int) (clip.getMaxX() / CELL_WIDTH_PX) + 1);
            drawCells(g, palette, t, from, to);
            drawLines(g, palette, t, from, to);
            drawChoice(g, palette, t);
        });
    }

    private static void drawCells(Graphics2D g, Palette palette, SectionTable table, int from, int to) {
        CellPen pen = new CellPen();
        for (int row = 0; row < table.rows().size(); row++) {
            for (int beat = from; beat <= to; beat++) {
                pen.add(
                        table.rows().get(row).cells().get(beat),
                        new Rectangle2D.Double(
                                beat * CELL_WIDTH_PX, row * CELL_HEIGHT_PX, CELL_WIDTH_PX, CELL_HEIGHT_PX));
            }
        }
        pen.draw(g, palette);
    }

    private static void drawLines(Graphics2D g, Palette palette, SectionTable table, int from, int to) {
        double bottom = table.rows().size() * CELL_HEIGHT_PX;
        double right = (to + 1) * CELL_WIDTH_PX;
        for (int row = 0; row <= table.rows().size(); row++) {
            boolean edge = row == 0
                    || row == table.rows().size()
                    || table.rows().get(row).beginsDeskAfter(table.rows().get(row - 1));
            double y = row * CELL_HEIGHT_PX;
            line(g, edge ? palette.secondary() : palette.rule(), RULE_PX, from * CELL_WIDTH_PX, y, right, y);
        }
        for (int b = table.barOf(from); b <= table.barOf(to); b++) {
            BarRun bar = table.bars().get(b);
            for (int beat = 0; beat < bar.beatCount(); beat++) {
                double x = (bar.firstIndex() + beat) * CELL_WIDTH_PX;
                line(
                        g,
                        beat == 0 ? palette.ink() : bar.strong(beat) ? palette.secondary() : palette.rule(),
                        beat == 0 ? BAR_LINE_PX : RULE_PX,
                        x,
                        0,
                        x,
                        bottom);
            }
        }
        double end = table.beatCount() * CELL_WIDTH_PX;
        line(g, palette.ink(), BAR_LINE_PX, end, 0, end, bottom);
    }

    private void drawChoice(Graphics2D g, Palette palette, SectionTable table) {
        double bottom = table.rows().size() * CELL_HEIGHT_PX;
        double x = cursorX(table);
        line(g, palette.accent(), CURSOR_PX, x, 0, x, bottom);
        ChosenBeats chosen = reviewing.beats();
        reviewing.choice().player().flatMap(table::rowOf).ifPresent(row -> {
            float weight = isFocusOwner() ? CHOSEN_PX * 1.5f : CHOSEN_PX;
            g.setPaint(palette.accent());
            g.setStroke(new BasicStroke(weight));
            g.draw(new Rectangle2D.Double(
                    chosen.first() * CELL_WIDTH_PX,
                    row * CELL_HEIGHT_PX,
                    (chosen.last() - chosen.first() + 1) * CELL_WIDTH_PX,
                    CELL_HEIGHT_PX));
        });
    }

    /** Where the clip is: within the beat as far as its time has come. */
    private double cursorX(SectionTable table) {
        double timeS = reviewing.choice().timeS();
        int beat = table.beatNear(timeS);
        double startS = table.beats().beats().get(beat).timeS();
        double share = (timeS - startS) / (table.beats().endS(beat) - startS);
        return (beat + Math.max(0, Math.min(1, share))) * CELL_WIDTH_PX;
    }

    @Override
    public Dimension getPreferredSize() {
        return table().map(
                        t -> scaled(t.beatCount() * CELL_WIDTH_PX + 2, t.rows().size() * CELL_HEIGHT_PX + 1))
                .orElse(new Dimension());
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    /** A bar to the side, a player up or down. */
    @Override
    public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
        if (orientation == SwingConstants.VERTICAL) {
            return (int) (CELL_HEIGHT_PX * scale());
        }
        return table().map(t -> {
                    int beat = t.moved(0, (int) (seen.x / (CELL_WIDTH_PX * scale()) + 0.5));
                    return Math.max(1, Math.abs(box(0, t.movedBars(beat, direction > 0 ? 1 : -1)).x - seen.x));
                })
                .orElse(1);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
        return orientation == SwingConstants.VERTICAL ? seen.height : seen.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() instanceof JViewport port && port.getWidth() > getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() instanceof JViewport port && port.getHeight() > getPreferredSize().height;
    }

    /** The players' names, the leader's underlined. */
    private final class Names extends Drawn {
        private static final long serialVersionUID = 1L;

        Names() {
            super("review-players", "Players", AccessibleRole.LIST);
            setFocusable(false);
            addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent e) {
                    int row = (int) (unscaled(e.getPoint()).getY() / CELL_HEIGHT_PX);
                    table().filter(t -> row < t.rows().size())
                            .flatMap(t -> t.rows().get(row).player())
                            .ifPresent(p -> reviewing.choosePlayer(p.label()));
                    SectionView.this.requestFocusInWindow();
                }
            });
        }

        @Override
        void draw(Graphics2D g, Palette palette) {
            g.setPaint(palette.ground());
            g.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()));
            table().ifPresent(t -> {
                for (int row = 0; row < t.rows().size(); row++) {
                    drawName(g, palette, t.rows().get(row), (row + 0.5) * CELL_HEIGHT_PX);
                }
            });
        }

        private void drawName(Graphics2D g, Palette palette, CellRow row, double middle) {
            boolean chosen =
                    row.player().map(Player::label).equals(reviewing.choice().player())
                            && row.player().isPresent();
            g.setFont(chosen ? Type.strong() : Type.body());
            String name = Words.shortened(row.name(), g.getFontMetrics(), NAMES_PX - 20);
            double wide = g.getFontMetrics().stringWidth(name);
            double left = NAMES_PX - 8 - wide;
            g.setPaint(row.player().isPresent() ? palette.ink() : palette.secondary());
            text(g, name, g.getFont(), left, middle);
            if (row.player().filter(Player::leader).isPresent()) {
                line(g, palette.ink(), BAR_LINE_PX, left, middle + 8, left + wide, middle + 8);
            }
            if (chosen) {
                line(g, palette.accent(), 3, 2, middle - 9, 2, middle + 9);
            }
        }

        @Override
        public Dimension getPreferredSize() {
            return scaled(
                    NAMES_PX,
                    table().map(t -> t.rows().size() * CELL_HEIGHT_PX + 1).orElse(0.0));
        }
    }

    /** The bars' numbers, and above the beat the place where the clip is. */
    private final class Bars extends Drawn {
        private static final long serialVersionUID = 1L;

        Bars() {
            super("review-bars", "Bars", AccessibleRole.LIST);
            setFocusable(false);
            addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent e) {
                    double x = unscaled(e.getPoint()).getX();
                    table().ifPresent(t -> reviewing.chooseBar(t.moved(0, (int) (x / CELL_WIDTH_PX))));
                    SectionView.this.requestFocusInWindow();
                }
            });
        }

        @Override
        void draw(Graphics2D g, Palette palette) {
            g.setPaint(palette.ground());
            g.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()));
            table().ifPresent(t -> {
                g.setPaint(palette.ink());
                for (BarRun bar : t.bars()) {
                    text(g, bar.bar(), Type.small(), bar.firstIndex() * CELL_WIDTH_PX + 6, BARS_PX / 2 - 1);
                }
                double x = cursorX(t);
                Path2D here = new Path2D.Double();
                here.moveTo(x - 5, BARS_PX - 7);
                here.lineTo(x + 5, BARS_PX - 7);
                here.lineTo(x, BARS_PX);
                here.closePath();
                g.setPaint(palette.accent());
                g.fill(here);
            });
        }

        @Override
        public Dimension getPreferredSize() {
            return scaled(table().map(t -> t.beatCount() * CELL_WIDTH_PX + 2).orElse(0.0), BARS_PX);
        }
    }
}
