package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import tuttarco.chart.Type;
import tuttarco.files.Plain;
import tuttarco.review.Background;
import tuttarco.review.SeatRoom;
import tuttarco.review.SeatRoom.Handle;
import tuttarco.review.Seats;
import tuttarco.review.SeatsModel;
import tuttarco.review.SeatsModel.Pick;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * A still of the clip with the seats on it. The leader is underlined, doubtful seats are dashed, the chosen one has handles
 * that the mouse pulls at; a seat is drawn from corner to corner.
 */
final class SeatsView extends JComponent {
    private static final long serialVersionUID = 1L;

    /** How much of the clip's light is left, so that lines and labels stand out. */
    private static final float VEIL = 0.2f;

    private static final int HANDLE_PX = 8;

    /** A mouse that moved less was meant to click; pixels of the view. */
    private static final int CLICK_PX = 4;

    private final transient SeatsModel model;
    private transient Optional<BufferedImage> shown = Optional.empty();
    private transient Optional<BufferedImage> fitted = Optional.empty();
    private transient Background.Going fitting = new Background.Going();
    private Dimension fittingTo = new Dimension();
    private transient Optional<Drag> drag = Optional.empty();

    SeatsView(SeatsModel model) {
        this.model = model;
        setName("seats-picture");
        setFocusable(true);
        setFocusTraversalKeysEnabled(false);
        setPreferredSize(UIScale.scale(new Dimension(640, 360)));
        setToolTipText(null);
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
        model.onChange().add(this::changed);
    }

    private void changed() {
        if (!model.still().map(SeatsModel.Still::picture).equals(shown)) {
            shown = model.still().map(SeatsModel.Still::picture);
            fitted = Optional.empty();
            fitting.stop();
            fittingTo = new Dimension();
        }
        getAccessibleContext().setAccessibleDescription(described());
        repaint();
    }

    /** The chosen seat in words, for those who can't see it. */
    private String described() {
        Seats seats = model.seats();
        if (model.pick() instanceof Pick.Sitting sitting) {
            Player p = seats.players().get(sitting.index());
            return Plain.text(p.label()) + ", desk " + p.desk() + " "
                    + p.place().word() + (p.leader() ? ", leads" : "")
                    + ", seat at " + p.seat() + ", " + (sitting.index() + 1) + " of "
                    + seats.players().size();
        }
        if (model.pick() instanceof Pick.Doubt doubt) {
            return "Doubtful seat " + (doubt.index() + 1) + " at "
                    + seats.doubtful().get(doubt.index());
        }
        return seats.players().size() + " seats, none chosen";
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
            accessibleContext.setAccessibleName("Seats in the picture");
        }
        return accessibleContext;
    }

    // where the picture lies

    private AffineTransform pictureToView() {
        return model.still().map(s -> Fit.of(s.facts(), this)).orElseGet(AffineTransform::new);
    }

    /** View pixels for a pixel of the picture; 1 while there is none. */
    double scale() {
        return pictureToView().getScaleX();
    }

    private double leftPx() {
        return pictureToView().getTranslateX();
    }

    private double topPx() {
        return pictureToView().getTranslateY();
    }

    double viewX(double pictureXPx) {
        return leftPx() + scale() * pictureXPx;
    }

    double viewY(double pictureYPx) {
        return topPx() + scale() * pictureYPx;
    }

    private double pictureX(double viewXPx) {
        return (viewXPx - leftPx()) / scale();
    }

    private double pictureY(double viewYPx) {
        return (viewYPx - topPx()) / scale();
    }

    private Rectangle2D inView(SeatBox seat) {
        return new Rectangle2D.Double(
                viewX(seat.xPx()), viewY(seat.yPx()), scale() * seat.widthPx(), scale() * seat.heightPx());
    }

    // drawing

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            shown.ifPresent(picture -> paintPicture(g, picture));
            paintSeats(g);
            if (isFocusOwner()) {
                g.setColor(Theme.worn().palette().accent());
                float line = UIScale.scale(2f);
                g.setStroke(new BasicStroke(line));
                g.draw(new Rectangle2D.Double(line / 2, line / 2, getWidth() - line, getHeight() - line));
            }
        } finally {
            g.dispose();
        }
    }

    private void paintPicture(Graphics2D g, BufferedImage picture) {
        int width = (int) Math.round(scale() * picture.getWidth());
        int height = (int) Math.round(scale() * picture.getHeight());
        if (width < 1 || height < 1) {
            return;
        }
        Optional<BufferedImage> fits = fitted.filter(f -> f.getWidth() == width && f.getHeight() == height);
        if (fits.isEmpty()) {
            fit(picture, new Dimension(width, height));
        }
        // until it is fitted smoothly, roughly
        g.drawImage(fits.orElse(picture), (int) Math.round(leftPx()), (int) Math.round(topPx()), width, height, null);
        g.setComposite(AlphaComposite.SrcOver.derive(VEIL));
        g.setColor(Theme.worn().palette().ground());
        g.fill(new Rectangle2D.Double(leftPx(), topPx(), width, height));
        g.setComposite(AlphaComposite.SrcOver);
    }

    /** Fits the picture behind: for a large screen it takes longer than the event thread has. */
    private void fit(BufferedImage picture, Dimension size) {
        if (!size.equals(fittingTo)) {
            fittingTo = size;
            fitting.stop();
            fitting = model.background()
                    .run(
                            () -> fitted(picture, size.width, size.height),
                            ready -> {
                                fitted = Optional.of(ready);
                                fittingTo = new Dimension();
                                repaint();
                            },
                            why -> {});
        }
    }

    private static BufferedImage fitted(BufferedImage picture, int width, int height) {
        BufferedImage fitted = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = fitted.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(picture, 0, 0, width, height, null);
        g.dispose();
        return fitted;
    }

    private void paintSeats(Graphics2D g) {
        Seats seats = model.seats();
        Color plain = Theme.worn().palette().with();
        for (int i = 0; i < seats.doubtful().size(); i++) {
            boolean chosen = model.pick().equals(new Pick.Doubt(i));
            outline(g, seats.doubtful().get(i), Theme.worn().palette().secondary(), true, chosen);
        }
        for (int i = 0; i < seats.players().size(); i++) {
            boolean chosen = model.pick().equals(new Pick.Sitting(i));
            SeatBox seat = chosen
                    ? dragged().orElse(seats.players().get(i).seat())
                    : seats.players().get(i).seat();
            outline(g, seat, chosen ? Theme.worn().palette().accent() : plain, false, chosen);
        }
        if (model.pick() instanceof Pick.Sitting sitting) {
            handles(g, dragged().orElse(seats.players().get(sitting.index()).seat()));
        } else {
            dragged().ifPresent(seat -> outline(g, seat, plain, false, true));
        }
        for (int i = 0; i < seats.doubtful().size(); i++) {
            label(g, seats.doubtful().get(i), "? " + (i + 1), false);
        }
        for (int i = 0; i < seats.players().size(); i++) {
            label(
                    g,
                    seats.players().get(i).seat(),
                    words(i),
                    seats.players().get(i).leader());
        }
    }

    /** The desk and the place; while they are numbered by clicking, the number given so far. */
    private String words(int player) {
        Player p = model.seats().players().get(player);
        Optional<List<Integer>> numbering = model.numbering();
        if (numbering.isPresent()) {
            int given = numbering.get().indexOf(player);
            return given < 0 ? "\u2013" : String.valueOf(given + 1);
        }
        return p.desk() + " " + p.place().word();
    }

    private void outline(Graphics2D g, SeatBox seat, Color colour, boolean dashed, boolean heavy) {
        Rectangle2D box = inView(seat);
        float width = UIScale.scale(heavy ? 3f : 2f);
        g.setColor(Theme.worn().palette().ground());
        g.setStroke(stroke(width + UIScale.scale(2f), false));
        g.draw(box);
        g.setColor(colour);
        g.setStroke(stroke(width, dashed));
        g.draw(box);
    }

    private static BasicStroke stroke(float width, boolean dashed) {
        return dashed
                ? new BasicStroke(
                        width,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_MITER,
                        10,
                        new float[] {UIScale.scale(7f), UIScale.scale(5f)},
                        0)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    private void handles(Graphics2D g, SeatBox seat) {
        double size = UIScale.scale(HANDLE_PX);
        for (Handle handle : Handle.values()) {
            Rectangle2D square = new Rectangle2D.Double(
                    viewX(handle.xPx(seat)) - size / 2, viewY(handle.yPx(seat)) - size / 2, size, size);
            g.setColor(
                    isFocusOwner()
                            ? Theme.worn().palette().accent()
                            : Theme.worn().palette().ground());
            g.fill(square);
            g.setColor(
                    isFocusOwner()
                            ? Theme.worn().palette().ground()
                            : Theme.worn().palette().accent());
            g.setStroke(stroke(UIScale.scale(1.5f), false));
            g.draw(square);
        }
    }

    /** In the middle below the upper edge, which neighbours' boxes leave free. */
    private void label(Graphics2D g, SeatBox seat, String text, boolean underlined) {
        Font font = Labels.scaled(Type.strong());
        FontMetrics metrics = g.getFontMetrics(font);
        double step = UIScale.scale(4f);
        double width = metrics.getStringBounds(text, g).getWidth();
        double height = metrics.getAscent() + metrics.getDescent();
        double left = viewX(seat.xPx() + seat.widthPx() / 2.0) - width / 2;
        double top = viewY(seat.yPx()) + step;
        g.setColor(Theme.worn().palette().ground());
        g.fill(new RoundRectangle2D.Double(left - step, top, width + 2 * step, height + step / 2, step, step));
        g.setColor(Theme.worn().palette().ink());
        g.setFont(font);
        g.drawString(text, (float) left, (float) (top + metrics.getAscent()));
        if (underlined) {
            double line = top + metrics.getAscent() + step / 2;
            g.setStroke(stroke(UIScale.scale(2f), false));
            g.draw(new Line2D.Double(left, line, left + width, line));
        }
    }

    // the mouse

    /** A seat being moved, resized or drawn: where the mouse went down and how the seat is now. */
    private record Drag(What what, MouseEvent from, SeatBox start, SeatBox now, boolean moved) {
        sealed interface What {}

        record Moving() implements What {}

        record Resizing(Handle handle) implements What {}

        record Drawing() implements What {}

        Drag to(SeatBox seat, boolean far) {
            return new Drag(what, from, start, seat, moved || far);
        }
    }

    private Optional<SeatBox> dragged() {
        return drag.filter(Drag::moved).map(Drag::now);
    }

    private Optional<SeatRoom> room() {
        return model.still().map(SeatsModel.Still::room);
    }

    private Optional<Handle> handleAt(MouseEvent e) {
        double reach = UIScale.scale(HANDLE_PX) * 0.75;
        if (!(model.pick() instanceof Pick.Sitting)) {
            return Optional.empty();
        }
        return model.chosenSeat()
                .flatMap(seat -> List.of(Handle.values()).stream()
                        .filter(h -> Math.abs(viewX(h.xPx(seat)) - e.getX()) <= reach
                                && Math.abs(viewY(h.yPx(seat)) - e.getY()) <= reach)
                        .findFirst());
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            if (!SwingUtilities.isLeftMouseButton(e) || room().isEmpty()) {
                return;
            }
            Pick there = model.at(pictureX(e.getX()), pictureY(e.getY()));
            if (model.numbering().isPresent()) {
                if (there instanceof Pick.Sitting sitting) {
                    model.numberNext(sitting.index());
                }
                return;
            }
            Optional<Handle> handle = handleAt(e);
            if (handle.isPresent() && !e.isControlDown()) {
                begin(new Drag.Resizing(handle.get()), e, model.chosenSeat().orElseThrow());
            } else if (there instanceof Pick.Nobody || e.isControlDown()) {
                model.choose(new Pick.Nobody());
                begin(new Drag.Drawing(), e, drawn(e, e));
            } else {
                model.choose(there);
                if (there instanceof Pick.Doubt) {
                    model.takeChosen();
                }
                begin(new Drag.Moving(), e, model.chosenSeat().orElseThrow());
            }
        }

        private void begin(Drag.What what, MouseEvent e, SeatBox seat) {
            drag = Optional.of(new Drag(what, e, seat, seat, false));
            repaint();
        }

        private SeatBox drawn(MouseEvent from, MouseEvent to) {
            return room().orElseThrow()
                    .drawn(pictureX(from.getX()), pictureY(from.getY()), pictureX(to.getX()), pictureY(to.getY()));
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            pull(e);
            repaint();
        }

        private void pull(MouseEvent e) {
            drag = drag.map(
                    d -> d.to(now(d, e), d.from().getPoint().distance(e.getPoint()) >= UIScale.scale(CLICK_PX)));
        }

        private SeatBox now(Drag d, MouseEvent e) {
            int across = (int) Math.round((e.getX() - d.from().getX()) / scale());
            int down = (int) Math.round((e.getY() - d.from().getY()) / scale());
            if (d.what() instanceof Drag.Resizing resizing) {
                return room().orElseThrow().resized(d.start(), resizing.handle(), across, down);
            }
            return d.what() instanceof Drag.Moving
                    ? room().orElseThrow().moved(d.start(), across, down)
                    : drawn(d.from(), e);
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            pull(e);
            Optional<Drag> ended = drag.filter(Drag::moved);
            drag = Optional.empty();
            ended.ifPresent(d -> {
                if (d.what() instanceof Drag.Drawing) {
                    model.add(d.now());
                } else {
                    model.place(d.now());
                }
            });
            repaint();
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            setCursor(Cursor.getPredefinedCursor(
                    handleAt(e).map(SeatsView::cursor).orElseGet(() -> overSeat(e))));
        }

        private int overSeat(MouseEvent e) {
            return model.at(pictureX(e.getX()), pictureY(e.getY())) instanceof Pick.Nobody
                    ? Cursor.CROSSHAIR_CURSOR
                    : Cursor.HAND_CURSOR;
        }
    }

    private static int cursor(Handle handle) {
        return switch (handle) {
            case TOP_LEFT -> Cursor.NW_RESIZE_CURSOR;
            case TOP -> Cursor.N_RESIZE_CURSOR;
            case TOP_RIGHT -> Cursor.NE_RESIZE_CURSOR;
            case RIGHT -> Cursor.E_RESIZE_CURSOR;
            case BOTTOM_RIGHT -> Cursor.SE_RESIZE_CURSOR;
            case BOTTOM -> Cursor.S_RESIZE_CURSOR;
            case BOTTOM_LEFT -> Cursor.SW_RESIZE_CURSOR;
            case LEFT -> Cursor.W_RESIZE_CURSOR;
        };
    }
}
