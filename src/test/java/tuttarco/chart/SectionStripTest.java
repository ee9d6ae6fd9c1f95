package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import tuttarco.compare.Divergence.Against;
import tuttarco.take.Bowing;

/** As {@link SectionFixture} has it. */
class SectionStripTest {
    private static SectionStrip strip(SectionFixture fixture) {
        return new SectionByBeat(fixture.comparison, Against.MARKING, Bowing.UNIFIED).strip();
    }

    private static List<SectionStrip.Bar> bars(SectionStrip strip) {
        return strip.systems().stream().flatMap(List::stream).toList();
    }

    @Test
    void eachBarSaysWhenItsBeatsAre() {
        List<SectionStrip.Bar> bars = bars(strip(SectionFixture.unified()));
        assertEquals(12, bars.size());
        assertEquals("3", bars.get(2).number());
        assertEquals("5.000 5.500 6.000 6.500", bars.get(2).beatsS());
        assertEquals("7.000", bars.get(2).endS());
        assertEquals(11, bars.get(11).index());
    }

    @Test
    void aBarAfterAStopSaysSo() {
        List<SectionStrip.Bar> bars = bars(strip(SectionFixture.takenAgain()));
        assertEquals(
                List.of("7"),
                bars.stream()
                        .filter(SectionStrip.Bar::afterStop)
                        .map(SectionStrip.Bar::number)
                        .toList());
    }

    @Test
    void rowsAreNamedByDesksTheMarkingAboveAll() {
        List<SectionStrip.Name> names = strip(SectionFixture.unified()).names();
        assertEquals(9, names.size());
        assertEquals(new SectionStrip.Name("Marked", true, false, false), names.get(0));
        assertEquals(new SectionStrip.Name("Desk 1 outside", false, true, true), names.get(1));
        assertEquals(new SectionStrip.Name("Desk 1 inside", false, false, false), names.get(2));
        assertEquals(new SectionStrip.Name("Desk 2 outside", false, false, true), names.get(3));
    }

    /** In bar 3 eight rows go down, up, down, up and the seventh, one player, the other way. */
    @Test
    void eachCellHasItsSignWhereItStands() {
        Element bar = Jsoup.parse(bars(strip(SectionFixture.unified())).get(2).svg());
        assertEquals(
                List.of("0,0", "40,0"), places(bar.select(".sign-shown-down").attr("d")));
        assertEquals(14, places(bar.select(".sign-with-down").attr("d")).size());
        assertEquals(14, places(bar.select(".sign-with-up").attr("d")).size());
        assertEquals(
                List.of("0,144", "40,144"),
                places(bar.select(".sign-against-up").attr("d")));
        assertEquals(
                List.of("20,144", "60,144"),
                places(bar.select(".sign-against-down").attr("d")));
    }

    /** Corners of a path that goes by whole pixels, absolutely first and then by steps to the right or elsewhere. */
    private static List<String> places(String d) {
        List<String> places = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (String part : d.split("(?=[a-z])")) {
            String[] numbers = part.substring(1).trim().split("[ ,]+|(?<=\\d)(?=-)");
            for (int i = 0; i < numbers.length; i++) {
                switch (part.charAt(0)) {
                    case 'h' -> x += Double.parseDouble(numbers[i]);
                    case 'v' -> y += Double.parseDouble(numbers[i]);
                    default -> {
                        x += Double.parseDouble(numbers[i]);
                        y += Double.parseDouble(numbers[++i]);
                    }
                }
                places.add(Math.round(x) + "," + Math.round(y));
            }
        }
        return places;
    }

    @Test
    void everySignIsKeptOnceAndHasItsRule() {
        for (SectionFixture fixture : List.of(SectionFixture.unified(), SectionFixture.clean(30, 16))) {
            SectionStrip strip = strip(fixture);
            Document signs = Jsoup.parse(strip.signs());
            int stamped = 0;
            for (SectionStrip.Bar bar : bars(strip)) {
                for (Element path : Jsoup.parse(bar.svg()).select("path")) {
                    assertEquals(1, signs.select("marker#" + path.className()).size(), path.className());
                    assertTrue(
                            SectionStrip.css()
                                    .contains("." + path.className() + "{fill:none;marker:url(#" + path.className()
                                            + ")}"),
                            path.className());
                    stamped++;
                }
                String lines = Jsoup.parse(bar.svg()).select("use").attr("href");
                assertEquals(1, Jsoup.parse(strip.lines()).select("g" + lines).size(), lines);
            }
            assertTrue(stamped > 0);
        }
    }

    @Test
    void aLargeSectionHasSmallSigns() {
        assertFalse(strip(SectionFixture.unified()).large());
        SectionStrip large = strip(SectionFixture.clean(30, 16));
        assertTrue(large.large());
        assertFalse(
                Jsoup.parse(bars(large).get(0).svg()).select(".small-with-down").isEmpty());
    }
}
