package tuttarco.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.ui.VerticalAlignment;

/** Type, lines and spacing shared by all charts. Lengths are pixels of the chart at its own size. */
final class Look {
    static final Palette PALETTE = Palette.PAPER;

    /** The typeface as style sheets name it, with what stands in for it elsewhere. */
    static final String FAMILY = "'Open Sans', sans-serif";

    /** Spacing goes in steps of this many pixels. */
    static final int STEP_PX = 4;

    static final int BODY_PX = 14;
    static final int SMALL_PX = 12;
    static final int TITLE_PX = 18;

    static final BasicStroke HAIRLINE = line(1f);
    static final BasicStroke MIDDLING = line(1.4f);
    static final BasicStroke HEAVY = line(2.2f);
    static final BasicStroke DOTTED =
            new BasicStroke(1.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1f, new float[] {0.1f, 3f}, 0f);

    private static final Font REGULAR = bundled("OpenSans-Regular.ttf");
    private static final Font SEMIBOLD = bundled("OpenSans-Semibold.ttf");

    static {
        // the library would draw turned text as outlines, which no reader could read out
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private Look() {}

    static BasicStroke line(float widthPx) {
        return new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    static Font regular(int sizePx) {
        return REGULAR.deriveFont((float) sizePx);
    }

    static Font semibold(int sizePx) {
        return SEMIBOLD.deriveFont((float) sizePx);
    }

    /** The given font, or the system's own where it lacks a sign of the text. */
    static Font able(Font font, String text) {
        return font.canDisplayUpTo(text) < 0 ? font : new Font(Font.SANS_SERIF, Font.PLAIN, font.getSize());
    }

    /** An axis that gives each label a row, numbered from 0 at the top. */
    static SymbolAxis rows(List<String> labels) {
        SymbolAxis axis = new SymbolAxis(null, labels.toArray(String[]::new));
        dress(axis);
        axis.setTickLabelFont(able(regular(SMALL_PX), String.join("", labels)));
        axis.setGridBandsVisible(false);
        axis.setInverted(true);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        axis.setRange(-0.6, labels.size() - 0.4);
        return axis;
    }

    /** The mark of what is claimed, from its middle so many pixels to each corner. */
    static Shape diamond(double reachPx) {
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(0, -reachPx);
        diamond.lineTo(reachPx, 0);
        diamond.lineTo(0, reachPx);
        diamond.lineTo(-reachPx, 0);
        diamond.closePath();
        return diamond;
    }

    /** Small words at a place of a plot. */
    static XYTextAnnotation words(String text, double x, double y, TextAnchor anchor, boolean strong) {
        XYTextAnnotation words = new XYTextAnnotation(text, x, y);
        words.setFont(able(strong ? semibold(SMALL_PX) : regular(SMALL_PX), text));
        words.setPaint(strong ? PALETTE.ink() : PALETTE.secondary());
        words.setTextAnchor(anchor);
        return words;
    }

    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** A chart with its takeaway above, on paper, with nothing of a library's own around it. */
    static JFreeChart chart(String title, Plot plot) {
        JFreeChart chart = picture(plot);
        Font font = able(semibold(TITLE_PX), title);
        TextTitle heading = new TextTitle(
                title,
                font,
                PALETTE.ink(),
                RectangleEdge.TOP,
                HorizontalAlignment.LEFT,
                VerticalAlignment.TOP,
                new RectangleInsets(0, 0, 3 * STEP_PX, 0));
        heading.setMaximumLinesToDisplay(2);
        chart.setTitle(heading);
        chart.setPadding(new RectangleInsets(4 * STEP_PX, 4 * STEP_PX, 4 * STEP_PX, 4 * STEP_PX));
        return chart;
    }

    /** A chart whose words stand beside it, on paper, with nothing of a library's own around it. */
    static JFreeChart picture(Plot plot) {
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(PALETTE.ground());
        chart.setAntiAlias(true);
        dress(plot);
        return chart;
    }

    private static void dress(Plot plot) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
    }

    static void dress(XYPlot plot) {
        dress((Plot) plot);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainZeroBaselineVisible(false);
        plot.setRangeZeroBaselineVisible(false);
    }

    static void dress(ValueAxis axis) {
        axis.setTickLabelFont(regular(SMALL_PX));
        axis.setTickLabelPaint(PALETTE.ink());
        axis.setLabelFont(regular(SMALL_PX));
        axis.setLabelPaint(PALETTE.secondary());
        axis.setAxisLinePaint(PALETTE.secondary());
        axis.setAxisLineStroke(HAIRLINE);
        axis.setTickMarkPaint(PALETTE.secondary());
        axis.setTickMarkStroke(HAIRLINE);
    }

    /** Draws text with its right end at {@code rightPx}, shortened to fit; returns its width. */
    static double textEndingAt(Graphics2D g, String text, Font font, double rightPx, double middlePx, double roomPx) {
        Font fit = able(font, text);
        String shown = Words.shortened(text, g.getFontMetrics(fit), roomPx);
        double widthPx = widthPx(g, shown, fit);
        textStartingAt(g, shown, font, rightPx - widthPx, middlePx);
        return widthPx;
    }

    /** Draws text with its left end at {@code leftPx} and its middle at {@code middlePx}; returns its width. */
    static double textStartingAt(Graphics2D g, String text, Font font, double leftPx, double middlePx) {
        Font fit = able(font, text);
        g.setFont(fit);
        g.drawString(text, (float) leftPx, (float) baseline(g.getFontMetrics(fit), middlePx));
        return widthPx(g, text, fit);
    }

    private static double widthPx(Graphics2D g, String text, Font font) {
        return g.getFontMetrics(font).getStringBounds(text, g).getWidth();
    }

    private static double baseline(FontMetrics metrics, double middlePx) {
        return middlePx + (metrics.getAscent() - metrics.getDescent()) / 2.0;
    }

    private static Font bundled(String name) {
        try (InputStream in = Look.class.getResourceAsStream("fonts/" + name)) {
            return Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(in, name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled font " + name + " is damaged", e);
        }
    }
}
