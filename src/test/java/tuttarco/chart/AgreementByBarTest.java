package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.ui.Layer;
import org.junit.jupiter.api.Test;

class AgreementByBarTest extends ChartContract {
    private static Chart of(SectionFixture fixture) {
        return new AgreementByBar(fixture.comparison.bars(), fixture.beats);
    }

    @Override
    Chart chart() {
        return of(SectionFixture.unified());
    }

    @Override
    Chart chartNaming(String label) {
        return of(SectionFixture.named(label));
    }

    @Test
    void titleNamesTheWeakestBars() {
        assertEquals("Least together in bars 3 and 4: 88 % as marked", chart().title());
    }

    @Test
    void tableCountsByHand() {
        List<List<String>> rows = chart().table().rows();
        assertEquals(List.of("3", "0:05.0", "28", "32", "88 %", "78–98 %"), rows.get(2));
        assertEquals(List.of("6", "0:11.0", "16", "16", "100 %", "90–100 %"), rows.get(5));
        assertEquals(List.of("8", "0:15.0", "28", "28", "100 %", "90–100 %"), rows.get(7));
    }

    @Test
    void aBarThatWasPlayedAgainIsTwoBarsWithALineAtTheStop() {
        Chart again = of(SectionFixture.takenAgain());
        assertEquals(
                List.of("7 0:13.0", "8 0:15.0", "7 0:17.0", "8 0:19.0"),
                again.table().rows().subList(6, 10).stream()
                        .map(row -> row.get(0) + " " + row.get(1))
                        .toList());
        List<?> lines = List.copyOf(again.draw().getXYPlot().getDomainMarkers(Layer.BACKGROUND));
        assertEquals(1, lines.size());
        assertEquals(7.5, ((ValueMarker) lines.get(0)).getValue());
        assertEquals(null, chart().draw().getXYPlot().getDomainMarkers(Layer.BACKGROUND));
    }

    @Test
    void unjudgedBarsAreSaid() {
        Chart unseen = of(SectionFixture.nothingSeen());
        assertEquals("No bar could be judged", unseen.title());
        assertEquals(
                List.of("1", "0:01.0", "0", "0", "not judged", "–"),
                unseen.table().rows().get(0));
    }

    @Test
    void withoutBarsThereIsNoChart() {
        assertThrows(
                IllegalArgumentException.class, () -> new AgreementByBar(List.of(), SectionFixture.unified().beats));
    }
}
