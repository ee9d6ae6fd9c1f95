package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tuttarco.compare.Divergence.Against;
import tuttarco.take.Bowing;

class StampsTest {
    private static Path2D squares(int count) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < count; i++) {
            path.append(new Rectangle2D.Double(10 * i, 2, 4, 4), false);
        }
        return path;
    }

    @Test
    void whatRepeatsIsToldOnce() {
        Path2D path = squares(5);
        path.append(new Rectangle2D.Double(100, 2, 3, 9), false);
        Stamps stamps = Stamps.of(path);
        List<Point2D> places = List.of(
                new Point2D.Double(0, 2),
                new Point2D.Double(10, 2),
                new Point2D.Double(20, 2),
                new Point2D.Double(30, 2),
                new Point2D.Double(40, 2));
        assertEquals(Map.of("m0 0h4v4h-4z", places), stamps.places());
        assertEquals("m100 2h3v9h-3z", PathText.of(stamps.others()));
    }

    @Test
    void aFewAreLeftAsTheyAre() {
        assertEquals(Map.of(), Stamps.of(squares(4)).places());
        assertEquals(PathText.of(squares(4)), PathText.of(Stamps.of(squares(4)).others()));
    }

    /** The shade of down-bows, down and up signs stand as markers without a stroke of the page's. */
    @Test
    void theSectionsSignsAreMarkers() throws Exception {
        Document svg = ChartContract.parsed(ChartFiles.svg(
                new SectionByBeat(SectionFixture.clean(8, 32).comparison, Against.MARKING, Bowing.UNIFIED)));
        assertTrue(svg.getElementsByTagName("marker").getLength() >= 3);
        for (int i = 0; i < svg.getElementsByTagName("marker").getLength(); i++) {
            Element sign = (Element) svg.getElementsByTagName("marker").item(i).getFirstChild();
            assertEquals("none", sign.getAttribute("stroke"));
            assertTrue(sign.getAttribute("fill").startsWith("rgb("), sign.getAttribute("fill"));
        }
    }
}
