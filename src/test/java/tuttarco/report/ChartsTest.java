package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartsTest extends OutputContract {
    @Override
    Output output() {
        return new Charts();
    }

    private List<String> names(AnalysedTake take) throws IOException {
        output().write(take, folder);
        return files(folder).stream().map(p -> p.getFileName().toString()).toList();
    }

    @Test
    void eachChartIsThereTwice() throws IOException {
        List<String> names = names(Fixtures.unified());
        assertEquals(2 * (6 + 8), names.size());
        assertEquals(List.of("agreement-by-bar.png", "agreement-by-bar.svg", "bow-01.png"), names.subList(0, 3));
    }

    @Test
    void withoutAPartTheLeaderIsTheMeasure() throws IOException {
        List<String> names = names(Fixtures.withoutPart());
        assertEquals(2 * (3 + 8), names.size());
        assertEquals("section-by-beat-leader.svg", names.get(21));
    }
}
