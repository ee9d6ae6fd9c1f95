package tuttarco.chart;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** On a player in the picture, the way the bow goes and how that is to the marking; the leader's is underlined. */
public final class PlayerSign {
    /** Side of a sign's cell as a part of the seat's height (chosen on rendered scenes). */
    private static final double CELL_SHARE = 0.24;

    private static final double LEAST_CELL_PX = 20;
    private static final double MOST_CELL_PX = 46;

    /**
     * From the seat's edge on the bow hand's side to the middle of a sign, as a share of the seat's width: beside the head,
     * above the bow hand. Of the rendered sections' bows 0.5 % of the length is hidden there, on the head 5 %.
     */
    private static final double ASIDE = 0.2;

    /** How much of the ground there is behind a sign, so that it is read on any picture. */
    private static final float GROUND_SHARE = 0.88f;

    private PlayerSign() {}

    /** Where a player's sign is drawn, at the upper edge of the seat, where the bow hardly ever is. */
    public static Rectangle2D cell(Rectangle2D seat, BowSide side) {
        double middle = side == BowSide.LEFT ? ASIDE : 1 - ASIDE;
        double sidePx = Math.max(LEAST_CELL_PX, Math.min(MOST_CELL_PX, CELL_SHARE * seat.getHeight()));
        return new Rectangle2D.Double(
                seat.getX() + middle * seat.getWidth() - sidePx / 2, seat.getMinY(), sidePx, sidePx);
    }

    /**
     * Draws a player's sign.
     *
     * @param seat as it lies in what is drawn on
     */
    public static void draw(Graphics2D g, Palette palette, AtTime.Shown shown, Rectangle2D seat) {
        Rectangle2D box = cell(seat, shown.side());
        if (shown.cell().state() != Cell.State.EMPTY || shown.cell().byHand()) {
            ground(g, palette, box);
            CellPen pen = new CellPen();
            pen.add(shown.cell(), box);
            pen.draw(g, palette);
        }
        if (shown.player().leader()) {
            Rectangle2D under = new Rectangle2D.Double(box.getX(), box.getMaxY() + 1, box.getWidth(), 4);
            ground(g, palette, under);
            g.setPaint(palette.ink());
            g.fill(new Rectangle2D.Double(under.getX(), under.getY() + 1, under.getWidth(), 2));
        }
    }

    /** Paper, or night, through which the picture hardly shows. */
    public static void ground(Graphics2D g, Palette palette, Rectangle2D box) {
        g.setComposite(AlphaComposite.SrcOver.derive(GROUND_SHARE));
        g.setPaint(palette.ground());
        g.fill(box);
        g.setComposite(AlphaComposite.SrcOver);
    }
}
