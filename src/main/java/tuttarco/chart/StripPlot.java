package tuttarco.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;
import tuttarco.score.Part;

/** Draws a part's strip in systems, the key below, and the awkward places in words. */
final class StripPlot extends Plot {
    private static final int KEY_PX = 28;
    private static final int SENTENCE_PX = 18;

    /** Awkward places told below the strip; all of them are in the table. */
    private static final int MOST_SENTENCES = 40;

    private final transient Part part;
    private final transient LaidStrip strip;

    StripPlot(Part part, LaidStrip strip) {
        this.part = part;
        this.strip = strip;
    }

    /** Room for what stands below the systems. */
    static int notesPx(Part part) {
        return KEY_PX
                + SENTENCE_PX * Math.min(MOST_SENTENCES + 1, part.awkward().size());
    }

    @Override
    public String getPlotType() {
        return "bowing of a part";
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area, Point2D anchor, PlotState parent, PlotRenderingInfo info) {
        AffineTransform before = g.getTransform();
        g.translate(area.getX(), area.getY());
        strip.draw(g, Look.PALETTE);
        g.setTransform(before);
        double y = area.getY() + strip.heightPx();
        g.setPaint(Look.PALETTE.ink());
        Look.textStartingAt(g, LaidStrip.KEY, Look.regular(Look.SMALL_PX), area.getX(), y);
        drawSentences(g, area, y + KEY_PX - SENTENCE_PX / 2.0);
    }

    private void drawSentences(Graphics2D g, Rectangle2D area, double top) {
        Font font = Look.regular(Look.SMALL_PX);
        double y = top;
        for (int i = 0; i < Math.min(MOST_SENTENCES, part.awkward().size()); i++) {
            String sentence = (i + 1) + "  " + Words.plain(part.awkward().get(i).spoken(part.bars()));
            Look.textStartingAt(
                    g, Words.shortened(sentence, g.getFontMetrics(font), area.getWidth()), font, area.getX(), y);
            y += SENTENCE_PX;
        }
        int more = part.awkward().size() - MOST_SENTENCES;
        if (more > 0) {
            Look.textStartingAt(g, "and " + more + " more", font, area.getX(), y);
        }
    }
}
