package tuttarco.chart;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Makes a drawn SVG element fit to stand in a page among others and to be read out. */
final class SvgTidy {
    static final String SVG_NS = "http://www.w3.org/2000/svg";
    private static final String GENERIC_DEFS = "genericDefs";

    private SvgTidy() {}

    /** Names the picture by its title, gives all ids the chart's prefix, and says the typeface as style sheets do. */
    static void tidy(Chart chart, Document document, Element root) {
        weights(root);
        root.setAttribute("font-family", Look.FAMILY);
        NodeList all = root.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            weights(element);
            unspace(element);
            unclip(element, chart);
            if (element.getAttribute("id").equals(GENERIC_DEFS)) {
                element.setAttribute("id", chart.key() + "-" + GENERIC_DEFS);
            }
        }
        SvgGathering.gather(root);
        String titleId = chart.key() + "-title";
        root.setAttribute("viewBox", "0 0 " + chart.widthPx() + " " + chart.heightPx());
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", titleId);
        Element title = document.createElementNS(SVG_NS, "title");
        title.setAttribute("id", titleId);
        title.setTextContent(Words.plain(chart.title()));
        root.insertBefore(title, root.getFirstChild());
    }

    /** The first clip is the whole picture, which clips itself. */
    private static void unclip(Element element, Chart chart) {
        if (element.getAttribute("clip-path").equals("url(#" + chart.key() + "-clipPath1)")) {
            element.removeAttribute("clip-path");
        }
    }

    /** A drawing names each weight as a family of its own; pages know one family, the whole picture's, with weights. */
    private static void weights(Element element) {
        String family = element.getAttribute("font-family");
        if (!family.isEmpty()) {
            element.removeAttribute("font-family");
            element.setAttribute("font-weight", family.contains("Semibold") ? "600" : "400");
        }
    }

    /** Only spaces at an end or beside each other need to be kept. */
    private static void unspace(Element element) {
        String text = element.getTextContent();
        if (text.equals(text.strip()) && !text.contains("  ")) {
            element.removeAttribute("xml:space");
        }
    }
}
