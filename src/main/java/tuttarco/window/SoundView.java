package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Composite;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.chart.Palette;
import tuttarco.chart.Type;
import tuttarco.review.BeatsModel;
import tuttarco.review.MusicModel;
import tuttarco.review.SoundStretch;
import tuttarco.sound.Outline;

/**
 * The sound's outline with the beats over it: each line as broad a shade as its beat is in doubt, anchors on diamonds, taps
 * at the foot. Lines are chosen and moved by mouse and by keys.
 */
final class SoundView extends JComponent {
    private static final long serialVersionUID = 1L;

    /** A line is moved by so much with an arrow key, seconds; the lesser with Shift. */
    static final double NUDGE_S = 0.01;

    static final double FINE_NUDGE_S = 0.001;

    /** So many standard errors to both sides hold a beat with 95 % confidence, if errors are normal. */
    private static final double SURE_ERRORS = 1.96;

    /** The sound stands behind its beats: so much of its colour is seen. */
    private static final float VEIL = 0.5f;

    private static final double ZOOM = 1.5;
    private static final int TOP_PX = 24;
    private static final int FOOT_PX = 18;

    /** A line is meant by the mouse so far from it. */
    private static final int REACH_PX = 5;

    /** Beats nearer to each other than this are not drawn one by one. */
    private static final int APART_PX = 5;

    private final transient MusicModel model;
    private final transient BeatsModel beats;
    private transient SoundStretch seen = SoundStretch.of(0, SoundStretch.FIRST_S);
    private transient Optional<Outline> outline = Optional.empty();
    private transient OptionalDouble playheadS = OptionalDouble.empty();
    private transient OptionalInt dragged = OptionalInt.empty();
    private double dragS;
    private double cursorS;
    private transient Runnable moved = () -> {};

    SoundView(String name, MusicModel model) {
        this.model = model;
        this.beats = model.beats();
        setName(name);
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Sound and beats");
        model.sound().onChange().add(this::take);
        beats.onChange().add(this::follow);
        model.tapping().onChange().add(this::repaint);
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        keys();
    }

    private void keys() {
        key("LEFT", () -> beats.nudge(-NUDGE_S));
        key("RIGHT", () -> beats.nudge(NUDGE_S));
        key("shift LEFT", () -> beats.nudge(-FINE_NUDGE_S));
        key("shift RIGHT", () -> beats.nudge(FINE_NUDGE_S));
        key("DOWN", () -> beats.chooseBar(1));
        key("UP", () -> beats.chooseBar(-1));
        key("alt DOWN", () -> beats.chooseBeat(1));
        key("alt UP", () -> beats.chooseBeat(-1));
        key("DELETE", beats::freeChosen);
        key("PAGE_DOWN", () -> scroll(0.8));
        key("PAGE_UP", () -> scroll(-0.8));
        for (String closer : List.of("PLUS", "ADD", "EQUALS")) {
            key(closer, this::closer);
        }
        for (String wider : List.of("MINUS", "SUBTRACT")) {
            key(wider, this::wider);
        }
    }

    private void key(String key, Runnable pressed) {
        Keys.bind(this, WHEN_FOCUSED, key, pressed);
    }

    /** Is told when another stretch is seen. */
    void onMoved(Runnable told) {
        moved = told;
    }

    SoundStretch seen() {
        return seen;
    }

    void see(SoundStretch other) {
        if (!other.equals(seen)) {
            seen = other;
            moved.run();
            repaint();
        }
    }

    void closer() {
        see(seen.zoomed(1 / ZOOM, middleS()));
    }

    void wider() {
        see(seen.zoomed(ZOOM, middleS()));
    }

    private void scroll(double share) {
        see(seen.scrolled(share));
    }

    /** What stays where it is when the picture grows: the chosen line if it is seen. */
    private double middleS() {
        return chosen().map(Beat::timeS)
                .filter(s -> s >= seen.fromS() && s <= seen.toS())
                .orElse((seen.fromS() + seen.toS()) / 2);
    }

    /** Where playing begins, seconds. */
    double cursorS() {
        return cursorS;
    }

    void cursor(double timeS) {
        cursorS = Math.max(seen.wholeFromS(), Math.min(seen.wholeToS(), timeS));
        see(seen.showing(cursorS));
        repaint();
    }

    /** Shows where the sound is; nothing while it is still. */
    void playhead(OptionalDouble timeS) {
        playheadS = timeS;
        timeS.ifPresent(s -> see(seen.showing(s)));
        repaint();
    }

    private Optional<Beat> chosen() {
        Optional<BeatMap> map = beats.beats();
        return map.isPresent() && beats.chosen().isPresent()
                ? Optional.of(map.get().beats().get(beats.chosen().getAsInt()))
                : Optional.empty();
    }

    private void take() {
        outline = model.sound().outline();
        outline.ifPresent(o -> {
            seen = SoundStretch.of(Math.min(0, o.startS()), o.endS());
            cursorS = 0;
            moved.run();
        });
        repaint();
    }

    private void follow() {
        chosen().ifPresent(beat -> {
            cursorS = beat.timeS();
            see(seen.showing(beat.timeS()));
            getAccessibleContext().setAccessibleDescription(beat.spoken());
        });
        repaint();
    }

    /** Where a time lies in this component. */
    double xPx(double timeS) {
        return seen.xPx(timeS, getWidth());
    }

    private double timeS(int xPx) {
        return seen.timeS(xPx, getWidth());
    }

    /** The beat whose line is meant, a bar's first rather than another. */
    private OptionalInt beatAt(int xPx) {
        int reach = UIScale.scale(REACH_PX);
        Optional<BeatMap> map = beats.beats();
        OptionalInt found = OptionalInt.empty();
        double nearest = reach;
        for (int i = 0; map.isPresent() && i < map.get().beats().size(); i++) {
            double far = Math.abs(xPx(map.get().beats().get(i).timeS()) - xPx);
            double counted = map.get().beginsBar(i) ? far / 2 : far;
            if (far <= reach && counted <= nearest) {
                nearest = counted;
                found = OptionalInt.of(i);
            }
        }
        return found;
    }

    /** Chooses and moves lines, moves and grows what is seen. */
    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            dragged = beatAt(e.getX());
            if (dragged.isPresent()) {
                beats.choose(dragged.getAsInt());
                dragS = chosen().orElseThrow().timeS();
            } else {
                cursor(timeS(e.getX()));
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (dragged.isPresent()) {
                dragS = timeS(e.getX());
                repaint();
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            OptionalInt line = dragged;
            dragged = OptionalInt.empty();
            if (line.isPresent() && Math.abs(dragS - chosen().orElseThrow().timeS()) >= FINE_NUDGE_S) {
                beats.move(line.getAsInt(), dragS);
            }
            repaint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            if (e.isControlDown()) {
                see(seen.zoomed(Math.pow(ZOOM, e.getPreciseWheelRotation()), timeS(e.getX())));
            } else {
                scroll(e.getPreciseWheelRotation() / 10);
            }
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        new Pen(g, Theme.worn().palette()).draw();
        g.dispose();
    }

    /** Draws everything, from the ground up. */
    private final class Pen {
        private final Graphics2D g;
        private final Palette palette;
        private final double top = UIScale.scale((float) TOP_PX);
        private final double foot = getHeight() - UIScale.scale((float) FOOT_PX);

        Pen(Graphics2D g, Palette palette) {
            this.g = g;
            this.palette = palette;
        }

        void draw() {
            g.setColor(palette.ground());
            g.fillRect(0, 0, getWidth(), getHeight());
            beats.beats().ifPresent(this::drawDoubt);
            outline.ifPresent(this::drawOutline);
            outline.ifPresent(o -> drawSeconds());
            beats.beats().ifPresent(this::drawBeats);
            drawTaps();
            outline.ifPresent(o -> drawCursor());
            drawFrame();
            if (outline.isEmpty()) {
                drawInstead();
            }
        }

        private void drawInstead() {
            g.setFont(font(Type.body()));
            String instead = model.sound().trouble().orElse("Reading the sound\u2026");
            FontMetrics metrics = g.getFontMetrics();
            int x = Math.max(UIScale.scale(8), (getWidth() - metrics.stringWidth(instead)) / 2);
            int y = getHeight() / 2;
            // beats may lie behind the words
            g.setColor(palette.ground());
            g.fillRect(x, y - metrics.getAscent(), metrics.stringWidth(instead), metrics.getHeight());
            g.setColor(palette.secondary());
            g.drawString(instead, x, y);
        }

        private void drawOutline(Outline shown) {
            Composite solid = g.getComposite();
            // upright lines on whole pixels: smoothing makes them no better, and took ten times as long at 3840 pixels
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
            g.setComposite(AlphaComposite.SrcOver.derive(VEIL));
            g.setColor(palette.secondary());
            double middle = (top + foot) / 2;
            double half = (foot - top) / 2 - UIScale.scale(2f);
            for (int x = 0; x < getWidth(); x++) {
                double fromS = timeS(x);
                double toS = timeS(x + 1);
                if (toS > shown.startS() && fromS < shown.endS()) {
                    Outline.Reach reach = shown.reach(fromS, toS);
                    int high = (int) Math.round(middle - reach.high() * half);
                    int low = (int) Math.round(middle - reach.low() * half);
                    g.drawLine(x, high, x, low);
                }
            }
            g.setComposite(solid);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        }

        private void drawSeconds() {
            double stepS = 1;
            while (xPx(seen.fromS() + stepS) < UIScale.scale(60)) {
                stepS *= 2;
            }
            g.setFont(font(Type.small()));
            g.setColor(palette.secondary());
            for (double s = Math.ceil(seen.fromS() / stepS) * stepS; s < seen.toS(); s += stepS) {
                int x = (int) xPx(s);
                g.drawLine(x, (int) foot, x, (int) foot + UIScale.scale(3));
                String clock = String.format(Locale.ROOT, "%d:%02d", (int) s / 60, (int) s % 60);
                g.drawString(clock, x + UIScale.scale(3), getHeight() - UIScale.scale(4));
            }
        }

        private double timeOf(BeatMap map, int index) {
            return dragged.equals(OptionalInt.of(index))
                    ? dragS
                    : map.beats().get(index).timeS();
        }

        private void drawDoubt(BeatMap map) {
            g.setColor(palette.shade());
            for (int i = 0; i < map.beats().size(); i++) {
                double x = xPx(timeOf(map, i));
                double errorS = map.beats().get(i).stderrS().orElse(0);
                double half = SURE_ERRORS * errorS / seen.lengthS() * getWidth();
                if (x + half >= 0 && x - half <= getWidth()) {
                    g.fill(new Rectangle2D.Double(x - half, top, 2 * half, foot - top));
                }
            }
        }

        private void drawBeats(BeatMap map) {
            List<Beat> anchors = beats.anchors();
            g.setFont(font(Type.small()));
            double lastBeatX = Double.NEGATIVE_INFINITY;
            double lastNumberX = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < map.beats().size(); i++) {
                double x = xPx(timeOf(map, i));
                boolean bar = map.beginsBar(i);
                boolean held = isHeld(anchors, map.beats().get(i));
                boolean seenNow = x >= -getWidth() && x <= 2 * getWidth();
                if (!seenNow || (!bar && !held && x - lastBeatX < UIScale.scale(APART_PX))) {
                    continue;
                }
                lastBeatX = x;
                boolean chosen = beats.chosen().equals(OptionalInt.of(i));
                drawLine(x, bar, chosen);
                if (held) {
                    drawDiamond(x);
                }
                String number = map.beats().get(i).bar();
                if (bar && x - lastNumberX > g.getFontMetrics().stringWidth(number) + UIScale.scale(8)) {
                    g.drawString(number, (float) x + UIScale.scale(4f), (float) top - UIScale.scale(7f));
                    lastNumberX = x;
                }
            }
        }

        private boolean isHeld(List<Beat> anchors, Beat beat) {
            return anchors.stream().anyMatch(anchor -> BeatsModel.holds(anchor, beat));
        }

        /** Bar lines are heavier than beats and reach above the sound; the chosen one is the heaviest. */
        private void drawLine(double x, boolean bar, boolean chosen) {
            g.setColor(chosen ? palette.accent() : palette.ink());
            g.setStroke(new BasicStroke(UIScale.scale(chosen ? 3f : bar ? 1.6f : 0.6f)));
            double above = UIScale.scale(bar ? 18f : 0f);
            g.draw(new Line2D.Double(x, top - above, x, foot));
        }

        private void drawDiamond(double x) {
            double reach = UIScale.scale(6f);
            Path2D diamond = new Path2D.Double();
            diamond.moveTo(x, foot - 2 * reach);
            diamond.lineTo(x + reach, foot - reach);
            diamond.lineTo(x, foot);
            diamond.lineTo(x - reach, foot - reach);
            diamond.closePath();
            g.fill(diamond);
        }

        private void drawTaps() {
            g.setColor(palette.with());
            double half = UIScale.scale(4f);
            for (double tapS : model.tapping().tapsS()) {
                double x = xPx(tapS - model.tapping().lateS());
                Path2D wedge = new Path2D.Double();
                wedge.moveTo(x, top);
                wedge.lineTo(x + half, top - 2 * half);
                wedge.lineTo(x - half, top - 2 * half);
                wedge.closePath();
                g.fill(wedge);
            }
        }

        private void drawCursor() {
            double x = xPx(playheadS.orElse(cursorS));
            g.setColor(palette.accent());
            g.setStroke(new BasicStroke(UIScale.scale(playheadS.isPresent() ? 2f : 1f)));
            g.draw(new Line2D.Double(x, top, x, getHeight()));
            double half = UIScale.scale(5f);
            Path2D head = new Path2D.Double();
            head.moveTo(x, getHeight() - 2 * half);
            head.lineTo(x + half, getHeight());
            head.lineTo(x - half, getHeight());
            head.closePath();
            g.fill(head);
        }

        private void drawFrame() {
            boolean focus = isFocusOwner();
            g.setColor(focus ? palette.accent() : palette.rule());
            g.setStroke(new BasicStroke(UIScale.scale(focus ? 2f : 1f)));
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }

        private Font font(Font font) {
            return font.deriveFont(UIScale.scale(font.getSize2D()));
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(600), UIScale.scale(220));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleSound();
        }
        return accessibleContext;
    }

    /** Reads out the beat that is chosen. */
    private final class AccessibleSound extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
