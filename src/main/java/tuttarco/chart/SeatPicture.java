package tuttarco.chart;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * Proposed seats on a picture of the clip: a box around each player with the desk's number and a word for the place, the
 * leader underlined; dashed boxes with a question mark and a number around those who may bow or not.
 */
public final class SeatPicture {
    /** A picture this wide, pixels, is drawn on at its own size; labels grow with larger ones. */
    private static final double PLAIN_WIDTH_PX = 1280;

    /** How much of the clip's light is left, so that lines and labels stand out. */
    private static final float VEIL = 0.25f;

    private static final float[] DASHES = {7, 5};

    private SeatPicture() {}

    /** The picture as PNG. */
    public static byte[] png(BufferedImage clip, List<Player> players, List<SeatBox> unsure) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            if (!ImageIO.write(draw(clip, players, unsure), "png", out)) {
                throw new IOException("this Java cannot write PNG pictures");
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage draw(BufferedImage clip, List<Player> players, List<SeatBox> unsure) {
        // a small clip is drawn larger: no label under its least size
        double scale = Math.max(1, PLAIN_WIDTH_PX / clip.getWidth());
        int widthPx = (int) Math.round(scale * clip.getWidth());
        int heightPx = (int) Math.round(scale * clip.getHeight());
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            Look.smooth(g);
            g.drawImage(clip, 0, 0, widthPx, heightPx, null);
            g.setComposite(AlphaComposite.SrcOver.derive(VEIL));
            g.setColor(Look.PALETTE.ground());
            g.fillRect(0, 0, widthPx, heightPx);
            g.setComposite(AlphaComposite.SrcOver);
            float pen = (float) Math.max(1, widthPx / PLAIN_WIDTH_PX);
            for (int i = 0; i < unsure.size(); i++) {
                box(g, unsure.get(i), scale, pen, DASHES, Look.PALETTE.secondary());
                label(g, unsure.get(i), scale, pen, "? " + (i + 1), false);
            }
            for (Player player : players) {
                box(g, player.seat(), scale, pen, null, Look.PALETTE.with());
            }
            for (Player player : players) {
                String name = player.desk() + " " + player.place().word();
                label(g, player.seat(), scale, pen, name, player.leader());
            }
        } finally {
            g.dispose();
        }
        return image;
    }

    private static void box(Graphics2D g, SeatBox seat, double scale, float pen, float[] dashes, Color colour) {
        Rectangle2D box = new Rectangle2D.Double(
                scale * seat.xPx() + pen,
                scale * seat.yPx() + pen,
                scale * seat.widthPx() - 2 * pen,
                scale * seat.heightPx() - 2 * pen);
        g.setColor(Look.PALETTE.ground());
        g.setStroke(stroke(4.5f * pen, pen, dashes));
        g.draw(box);
        g.setColor(colour);
        g.setStroke(stroke(2.2f * pen, pen, dashes));
        g.draw(box);
    }

    private static BasicStroke stroke(float widthPx, float pen, float[] dashes) {
        if (dashes == null) {
            return Look.line(widthPx);
        }
        float[] scaled = {dashes[0] * pen, dashes[1] * pen};
        return new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, scaled, 0);
    }

    /** In the middle below the upper edge, which neighbours' boxes leave free. */
    private static void label(Graphics2D g, SeatBox seat, double scale, float pen, String text, boolean underlined) {
        Font font = Look.semibold(Math.round(Look.BODY_PX * pen));
        double textPx = g.getFontMetrics(font).getStringBounds(text, g).getWidth();
        double stepPx = Look.STEP_PX * pen;
        double heightPx = (Look.BODY_PX + 2 * Look.STEP_PX) * pen;
        double leftPx = scale * (seat.xPx() + seat.widthPx() / 2.0) - textPx / 2;
        double topPx = scale * seat.yPx() + stepPx;
        g.setColor(Look.PALETTE.ground());
        g.fill(new RoundRectangle2D.Double(
                leftPx - 2 * stepPx, topPx, textPx + 4 * stepPx, heightPx, 2 * stepPx, 2 * stepPx));
        g.setColor(Look.PALETTE.ink());
        Look.textStartingAt(g, text, font, leftPx, topPx + heightPx / 2);
        if (underlined) {
            double lineTopPx = topPx + heightPx - 1.2 * stepPx;
            g.fill(new Rectangle2D.Double(leftPx, lineTopPx, textPx, 0.4 * stepPx));
        }
    }
}
