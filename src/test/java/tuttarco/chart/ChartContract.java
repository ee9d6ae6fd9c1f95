package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What every chart keeps to. */
abstract class ChartContract {
    /** A chart of {@link SectionFixture#unified()}, fresh at each call. */
    abstract Chart chart();

    /** A chart of a section whose first player has this label. */
    abstract Chart chartNaming(String label);

    @Test
    void keyIsAFileName() {
        assertTrue(chart().key().matches("[a-z0-9-]+"), chart().key());
    }

    @Test
    void titleAndHelpAreShort() {
        assertFalse(chart().title().isBlank());
        assertTrue(chart().title().length() <= 100, chart().title());
        assertTrue(chart().help().endsWith("."), chart().help());
    }

    @Test
    void pngHasTheChartsProportionsAndIsNotBlank() throws IOException {
        BufferedImage image = png(chart());
        double scale = ChartFiles.scale(chart());
        assertEquals(Math.floor(chart().widthPx() * scale), image.getWidth());
        assertEquals(Math.floor(chart().heightPx() * scale), image.getHeight());
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                colours.add(image.getRGB(x, y) & 0xFFFFFF);
            }
        }
        assertTrue(colours.contains(Palette.PAPER.ground().getRGB() & 0xFFFFFF));
        assertTrue(colours.size() > 10, colours.size() + " colours");
    }

    @Test
    void svgIsWellFormedTitledAndItsTextIsText() throws Exception {
        Element root = parsed(ChartFiles.svg(chart())).getDocumentElement();
        assertEquals("svg", root.getLocalName());
        assertEquals("0 0 " + chart().widthPx() + " " + chart().heightPx(), root.getAttribute("viewBox"));
        assertEquals(chart().title(), root.getElementsByTagName("title").item(0).getTextContent());
        assertTrue(root.getElementsByTagName("text").getLength() > 3);
        assertFalse(ChartFiles.svg(chart()).contains(" style="), "style attributes would be stopped by the page");
    }

    @Test
    void svgIsTheSameAtEachRunAndItsIdsAreItsOwn() throws Exception {
        String svg = ChartFiles.svg(chart());
        assertEquals(svg, ChartFiles.svg(chart()));
        NodeList all = parsed(svg).getElementsByTagName("*");
        assertTrue(all.getLength() > 10);
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            assertTrue(id.isEmpty() || id.startsWith(chart().key() + "-"), id);
        }
    }

    @Test
    void tableHasRowsAsWideAsItsHead() {
        ChartTable table = chart().table();
        assertNotNull(table.caption());
        assertTrue(table.rows().size() >= 12, table.rows().size() + " rows");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<b>&\"'",
                "名無し",
                "\uD83C\uDFBB\uD83C\uDFBB",
                "\u202Eהפוך",
                "lone \uD83C half",
                "no \uFFFE character",
                "@=+-"
            })
    void anyLabelCanBeDrawn(String label) throws Exception {
        parsed(ChartFiles.svg(chartNaming(label)));
        png(chartNaming(label));
    }

    @Test
    void aLabelOfTwoHundredLettersStaysInside() throws Exception {
        String label = "Ottoline ".repeat(22) + "ab";
        assertEquals(200, label.length());
        parsed(ChartFiles.svg(chartNaming(label)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "hi-IN-u-nu-deva"})
    void isTheSameInEveryLocale(String tag) {
        String here = ChartFiles.svg(chart());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertEquals(here, ChartFiles.svg(chart()));
        } finally {
            Locale.setDefault(before);
        }
    }

    static BufferedImage png(Chart chart) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ChartFiles.writePng(chart, out);
        return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
    }

    static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
