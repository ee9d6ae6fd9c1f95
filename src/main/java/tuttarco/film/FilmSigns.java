package tuttarco.film;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import tuttarco.chart.AtTime;
import tuttarco.chart.CellPen;
import tuttarco.chart.CellRow;
import tuttarco.chart.Palette;
import tuttarco.chart.PlayerSign;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/** What is drawn on a film's picture and below it. */
public final class FilmSigns {
    private final AtTime atTime;
    private final List<ShownSpot> spots;
    private final BeatStrip strip;

    public FilmSigns(AtTime atTime, Comparison comparison, Against reference, List<ShownSpot> spots) {
        this.atTime = atTime;
        this.spots = List.copyOf(spots);
        this.strip = new BeatStrip(comparison.beats(), CellRow.of(comparison, reference), spots);
    }

    /** Draws on a picture and into the rest of the image below it. */
    void draw(BufferedImage image, FilmSize size, double timeS) {
        Palette palette = Palette.PAPER;
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.scale(size.signsScale(), size.signsScale());
            for (AtTime.Shown shown : atTime.at(timeS)) {
                Rectangle2D seat = seat(shown.player(), size);
                if (spots.stream().anyMatch(s -> s.at(timeS) && s.players().contains(shown.player()))) {
                    frame(g, palette, seat);
                }
                PlayerSign.draw(g, palette, shown, seat);
            }
            g.translate(0, size.pictureHeightPx() / size.signsScale());
            strip.draw(g, palette, timeS, size.widthPx() / size.signsScale());
        } finally {
            g.dispose();
        }
    }

    /** A seat as it lies in the picture, in the signs' own pixels. */
    static Rectangle2D seat(Player player, FilmSize size) {
        SeatBox seat = player.seat();
        double scale = size.pictureScale() / size.signsScale();
        return new Rectangle2D.Double(
                scale * seat.xPx(), scale * seat.yPx(), scale * seat.widthPx(), scale * seat.heightPx());
    }

    /** A heavy frame with a bevelled corner, light beneath so that it shows on any picture. */
    private static void frame(Graphics2D g, Palette palette, Rectangle2D seat) {
        Shape frame = CellPen.bevelled(seat);
        g.setPaint(palette.ground());
        g.setStroke(new BasicStroke(7));
        g.draw(frame);
        g.setPaint(palette.against());
        g.setStroke(new BasicStroke(4));
        g.draw(frame);
    }
}
