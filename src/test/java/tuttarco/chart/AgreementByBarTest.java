package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class AgreementByBarTest extends ChartContract {
    @Override
    Chart chart() {
        return new AgreementByBar(SectionFixture.unified().comparison.bars());
    }

    @Override
    Chart chartNaming(String label) {
        return new AgreementByBar(SectionFixture.named(label).comparison.bars());
    }

    @Test
    void titleNamesTheWeakestBars() {
        assertEquals("Least together in bars 3 and 4: 88 % as marked", chart().title());
    }

    @Test
    void tableCountsByHand() {
        List<List<String>> rows = chart().table().rows();
        assertEquals(List.of("3", "28", "32", "88 %", "78–98 %"), rows.get(2));
        assertEquals(List.of("6", "16", "16", "100 %", "90–100 %"), rows.get(5));
        assertEquals(List.of("8", "28", "28", "100 %", "90–100 %"), rows.get(7));
    }

    @Test
    void unjudgedBarsAreSaid() {
        Chart unseen =
                new AgreementByBar(SectionFixture.nothingSeen().comparison.bars());
        assertEquals("No bar could be judged", unseen.title());
        assertEquals(
                List.of("1", "0", "0", "not judged", "–"), unseen.table().rows().get(0));
    }

    @Test
    void withoutBarsThereIsNoChart() {
        assertThrows(IllegalArgumentException.class, () -> new AgreementByBar(List.of()));
    }
}
