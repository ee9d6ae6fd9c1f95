package tuttarco.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Charts as PNG and SVG. */
public final class ChartFiles {
    /** Pixels of a picture for each pixel of the chart, where there is room: sharp on a phone's screen and on paper. */
    private static final double SHARP = 2;

    /** No picture gets more pixels than this, about 100 MB in memory. */
    private static final double MOST_PIXELS = 24e6;

    private ChartFiles() {}

    public static void writePng(Chart chart, OutputStream out) throws IOException {
        double scale = scale(chart);
        int widthPx = (int) Math.max(1, Math.floor(chart.widthPx() * scale));
        int heightPx = (int) Math.max(1, Math.floor(chart.heightPx() * scale));
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(scale, scale);
            draw(chart, g);
        } finally {
            g.dispose();
        }
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java cannot write PNG pictures");
        }
    }

    /** Pixels of the PNG for each pixel of the chart. */
    static double scale(Chart chart) {
        double area = (double) chart.widthPx() * chart.heightPx();
        return Math.min(SHARP, Math.sqrt(MOST_PIXELS / area));
    }

    /** An SVG element with text as text and no style attributes, titled and described for screen readers. */
    public static String svg(Chart chart) {
        return text(element(chart));
    }

    /**
     * The same in pieces, one below the other, that are no higher than asked, pixels, as far as the chart may be cut. The
     * first holds all; the others show their part of it.
     */
    public static List<String> pieces(Chart chart, int mostPx) {
        List<Integer> ends = ends(chart, mostPx);
        Element whole = element(chart);
        if (ends.size() == 1) {
            return List.of(text(whole));
        }
        Element all = (Element) whole.appendChild(whole.getOwnerDocument().createElementNS(SvgTidy.SVG_NS, "g"));
        all.setAttribute("id", chart.key() + "-all");
        while (whole.getFirstChild() != all) {
            all.appendChild(whole.getFirstChild());
        }
        List<String> pieces = new ArrayList<>();
        int topPx = 0;
        for (int endPx : ends) {
            Element piece = topPx == 0 ? whole : shown(all, whole);
            piece.setAttribute("viewBox", "0 " + topPx + " " + chart.widthPx() + " " + (endPx - topPx));
            piece.setAttribute("height", Integer.toString(endPx - topPx));
            pieces.add(text(piece));
            topPx = endPx;
        }
        return pieces;
    }

    /** Where pieces end: each as late as may be. */
    private static List<Integer> ends(Chart chart, int mostPx) {
        List<Integer> ends = new ArrayList<>();
        int topPx = 0;
        int last = 0;
        for (int cutPx : Stream.concat(chart.cutsPx().stream(), Stream.of(chart.heightPx()))
                .toList()) {
            if (cutPx - topPx > mostPx && last > topPx) {
                ends.add(last);
                topPx = last;
            }
            last = cutPx;
        }
        ends.add(chart.heightPx());
        return ends;
    }

    private static Element shown(Element all, Element whole) {
        Element piece = (Element) whole.cloneNode(false);
        piece.removeAttribute("role");
        piece.removeAttribute("aria-labelledby");
        piece.setAttribute("aria-hidden", "true");
        Element use = piece.getOwnerDocument().createElementNS(SvgTidy.SVG_NS, "use");
        use.setAttribute("href", "#" + all.getAttribute("id"));
        piece.appendChild(use);
        return piece;
    }

    private static Element element(Chart chart) {
        Document document = emptyDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(1);
        context.setEmbeddedFontsOn(false);
        context.setIDGenerator(new KeyedIds(chart.key()));
        SvgPen g = new SvgPen(context);
        g.setSVGCanvasSize(new Dimension(chart.widthPx(), chart.heightPx()));
        draw(chart, g);
        Element root = g.getRoot();
        SvgTidy.tidy(chart, document, root);
        return root;
    }

    private static String text(Element root) {
        StringWriter out = new StringWriter();
        try {
            Transformer plain = TransformerFactory.newInstance().newTransformer();
            plain.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            plain.transform(new DOMSource(root), new StreamResult(out));
        } catch (TransformerException e) {
            throw new IllegalStateException("every Java can write out a document", e);
        }
        return out.toString();
    }

    /** The chart as the text of an SVG file of its own, in UTF-8. */
    public static String svgFile(Chart chart) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(chart);
    }

    private static Document emptyDocument() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SvgTidy.SVG_NS, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java has a plain XML builder", e);
        }
    }

    private static void draw(Chart chart, Graphics2D g) {
        draw(chart, chart.draw(), g);
    }

    /** Draws onto white paper, at the chart's own size: the ground is left as it is. */
    public static void drawOnPaper(Chart chart, Graphics2D g) {
        JFreeChart drawing = chart.draw();
        drawing.setBackgroundPaint(null);
        draw(chart, drawing, g);
    }

    private static void draw(Chart chart, JFreeChart drawing, Graphics2D g) {
        Look.smooth(g);
        drawing.draw(g, new Rectangle2D.Double(0, 0, chart.widthPx(), chart.heightPx()));
    }
}
