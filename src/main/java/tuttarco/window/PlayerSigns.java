package tuttarco.window;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.IntSupplier;
import tuttarco.chart.AtTime;
import tuttarco.chart.Palette;
import tuttarco.chart.PlayerSign;
import tuttarco.chart.Type;
import tuttarco.chart.Words;
import tuttarco.review.Following;
import tuttarco.review.Judged;
import tuttarco.review.Reviewing;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/** Over the picture, on each player, the way the bow goes and how that is to the marking; the leader's is underlined. */
final class PlayerSigns implements PictureView.Overlay {
    private final Reviewing reviewing;
    private final Following following;
    private final IntSupplier viewWidthPx;

    /** @param viewWidthPx how wide the view is in which it draws */
    PlayerSigns(Reviewing reviewing, Following following, IntSupplier viewWidthPx) {
        this.reviewing = reviewing;
        this.viewWidthPx = viewWidthPx;
        this.following = following;
    }

    @Override
    public void paint(Graphics2D view, double timeS, AffineTransform pictureToView) {
        Optional<Judged> judged = reviewing.judged();
        if (judged.isEmpty()) {
            return;
        }
        Graphics2D g = (Graphics2D) view.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.scale(Drawn.scale(), Drawn.scale());
            AffineTransform toChart = AffineTransform.getScaleInstance(1 / Drawn.scale(), 1 / Drawn.scale());
            toChart.concatenate(pictureToView);
            Palette palette = Theme.worn().palette();
            for (AtTime.Shown shown : judged.get().atTime().at(following.shownS(timeS))) {
                draw(g, palette, shown, seat(shown.player(), toChart));
            }
        } finally {
            g.dispose();
        }
    }

    private static Rectangle2D seat(Player player, AffineTransform toChart) {
        SeatBox seat = player.seat();
        return toChart.createTransformedShape(
                        new Rectangle2D.Double(seat.xPx(), seat.yPx(), seat.widthPx(), seat.heightPx()))
                .getBounds2D();
    }

    private void draw(Graphics2D g, Palette palette, AtTime.Shown shown, Rectangle2D seat) {
        Player player = shown.player();
        boolean chosen = reviewing.choice().player().equals(Optional.of(player.label()));
        if (chosen) {
            drawChosen(g, palette, player, seat);
        }
        PlayerSign.draw(g, palette, shown, seat);
    }

    /** The seat's frame, light on dark so that it shows on any picture, and the player's name. */
    private void drawChosen(Graphics2D g, Palette palette, Player player, Rectangle2D seat) {
        g.setPaint(palette.ground());
        g.setStroke(new BasicStroke(4));
        g.draw(seat);
        g.setPaint(palette.accent());
        g.setStroke(new BasicStroke(2));
        g.draw(seat);
        g.setFont(Type.strong());
        double roomPx = viewWidthPx.getAsInt() / Drawn.scale();
        String name = Words.shortened(Words.plain(player.label()), g.getFontMetrics(), roomPx - 8);
        double widthPx = g.getFontMetrics().stringWidth(name) + 8.0;
        double leftPx = Math.max(0, Math.min(seat.getX(), roomPx - widthPx));
        Rectangle2D label = new Rectangle2D.Double(leftPx, seat.getMaxY() - 20, widthPx, 20);
        PlayerSign.ground(g, palette, label);
        g.setPaint(palette.ink());
        Drawn.text(g, name, Type.strong(), label.getX() + 4, label.getCenterY());
    }
}
