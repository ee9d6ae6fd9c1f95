package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.ToolTipManager;
import tuttarco.chart.LaidStrip;
import tuttarco.chart.Palette;
import tuttarco.score.Awkward;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;

/** The bowing of a part, stroke by stroke; each says why it goes that way, to the mouse and to the keys. */
final class StripView extends JComponent implements Scrollable {
    private static final long serialVersionUID = 1L;

    private static final int EDGE_PX = 8;

    private transient Optional<Part> part = Optional.empty();
    private transient Optional<LaidStrip> strip = Optional.empty();
    private transient OptionalInt chosen = OptionalInt.empty();
    private final transient Consumer<String> told;

    /** @param told takes what is said of the stroke that is chosen */
    StripView(String name, Consumer<String> told) {
        this.told = told;
        setName(name);
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Bowing of the part");
        ToolTipManager.sharedInstance().registerComponent(this);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                requestFocusInWindow();
                strokeAt(e).ifPresent(stroke -> choose(strokes().indexOf(stroke)));
            }
        });
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
        key("RIGHT", () -> choose(chosen.orElse(-1) + 1));
        key("LEFT", () -> choose(chosen.orElse(1) - 1));
        key("DOWN", () -> chooseSystem(1));
        key("UP", () -> chooseSystem(-1));
        key("HOME", () -> choose(0));
        key("END", () -> choose(strokes().size() - 1));
    }

    private void key(String key, Runnable pressed) {
        Keys.bind(this, WHEN_FOCUSED, key, pressed);
    }

    void showPart(Optional<Part> shown) {
        if (shown.orElse(null) == part.orElse(null)) {
            return;
        }
        part = shown;
        chosen = OptionalInt.empty();
        told.accept("");
        layOut();
    }

    /** Systems are broken anew where the width changes. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean otherWidth = width != getWidth();
        super.setBounds(x, y, width, height);
        if (otherWidth) {
            layOut();
        }
    }

    private void layOut() {
        double widthPx = getWidth() / scale() - 2 * EDGE_PX;
        strip = widthPx > 0 ? part.map(p -> LaidStrip.of(p, widthPx)) : Optional.empty();
        revalidate();
        repaint();
    }

    private static double scale() {
        return UIScale.getUserScaleFactor();
    }

    private List<MarkedStroke> strokes() {
        return strip.map(LaidStrip::strokes).orElse(List.of());
    }

    /** Chooses the stroke that sounds at a place of the part. */
    void choose(Position at) {
        IntStream.range(0, strokes().size())
                .filter(i -> strokes().get(i).start().compareTo(at) <= 0)
                .reduce((first, last) -> last)
                .ifPresent(this::choose);
    }

    /** Chooses a stroke by its number. */
    void choose(int index) {
        if (index < 0 || index >= strokes().size()) {
            return;
        }
        chosen = OptionalInt.of(index);
        MarkedStroke stroke = strokes().get(index);
        told.accept(spoken(stroke));
        getAccessibleContext().setAccessibleDescription(spoken(stroke));
        scrollRectToVisible(box(stroke).getBounds());
        repaint();
    }

    private void chooseSystem(int by) {
        LaidStrip laid = strip.orElse(null);
        if (laid == null || strokes().isEmpty()) {
            return;
        }
        MarkedStroke now = strokes().get(chosen.orElse(0));
        int wanted = laid.systemOf(now.start()) + by;
        double xPx = laid.box(now.start()).getCenterX();
        IntStream.range(0, strokes().size())
                .filter(i -> laid.systemOf(strokes().get(i).start()) == wanted)
                .boxed()
                .min((a, b) -> Double.compare(far(laid, a, xPx), far(laid, b, xPx)))
                .ifPresent(this::choose);
    }

    private double far(LaidStrip laid, int index, double xPx) {
        return Math.abs(laid.box(strokes().get(index).start()).getCenterX() - xPx);
    }

    /** What is said of a stroke: where it is, how it goes and why, and what is awkward there. */
    private String spoken(MarkedStroke stroke) {
        Part shown = part.orElseThrow();
        String place = Awkward.place(stroke.start(), shown.bars());
        String awkward = shown.awkward().stream()
                .filter(here ->
                        here.at().compareTo(stroke.start()) >= 0 && here.at().compareTo(stroke.end()) < 0)
                .map(here -> " Awkward: " + here.sentence(shown.bars()))
                .collect(Collectors.joining());
        return "B" + place.substring(1) + ": " + stroke.direction().word() + "-bow, "
                + stroke.reason().spoken(shown.bars()) + "." + awkward;
    }

    private Optional<MarkedStroke> strokeAt(MouseEvent e) {
        return strip.flatMap(laid -> laid.at(e.getX() / scale() - EDGE_PX, e.getY() / scale() - EDGE_PX));
    }

    @Override
    public String getToolTipText(MouseEvent e) {
        return strokeAt(e).map(this::spoken).orElse(null);
    }

    /** A stroke's place in this component. */
    private Rectangle2D box(MarkedStroke stroke) {
        Rectangle2D box = strip.orElseThrow().box(stroke.start());
        return new Rectangle2D.Double(
                (box.getX() + EDGE_PX) * scale(),
                (box.getY() + EDGE_PX) * scale(),
                box.getWidth() * scale(),
                box.getHeight() * scale());
    }

    /** The middle of a stroke, by its number. */
    Point middle(int index) {
        Rectangle2D box = box(strokes().get(index));
        return new Point((int) box.getCenterX(), (int) box.getCenterY());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Palette palette = Theme.worn().palette();
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(palette.ground());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (strip.isPresent()) {
            chosen.ifPresent(index -> {
                g.setColor(palette.shade());
                g.fill(box(strokes().get(index)));
                g.setColor(palette.accent());
                g.setStroke(new BasicStroke(UIScale.scale(isFocusOwner() ? 2f : 1f)));
                g.draw(box(strokes().get(index)));
            });
            Graphics2D scaled = (Graphics2D) g.create();
            scaled.scale(scale(), scale());
            scaled.translate(EDGE_PX, EDGE_PX);
            strip.get().draw(scaled, palette);
            scaled.dispose();
        }
        if (isFocusOwner() && chosen.isEmpty()) {
            g.setColor(palette.accent());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            Rectangle seen = getVisibleRect();
            g.drawRect(seen.x + 1, seen.y + 1, seen.width - 3, seen.height - 3);
        }
        g.dispose();
    }

    @Override
    public Dimension getPreferredSize() {
        int heightPx = strip.map(LaidStrip::heightPx).orElse(0);
        return new Dimension(UIScale.scale(400), (int) Math.ceil((heightPx + 2 * EDGE_PX) * scale()));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(40);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleStrip();
        }
        return accessibleContext;
    }

    /** Reads out the stroke that is chosen. */
    private final class AccessibleStrip extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LIST;
        }
    }
}
