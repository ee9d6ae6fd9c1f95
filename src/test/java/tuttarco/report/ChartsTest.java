package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChartsTest extends OutputContract {
    @Override
    Output output() {
        return new Charts();
    }

    private List<String> names(AnalysedTake take) throws Exception {
        output().write(take, folder);
        return files(folder).stream().map(p -> p.getFileName().toString()).toList();
    }

    @Test
    void eachChartIsThereTwice() throws Exception {
        List<String> names = names(Fixtures.unified());
        assertEquals(2 * (8 + 8), names.size());
        assertEquals(List.of("agreement-by-bar.png", "agreement-by-bar.svg", "bow-01.png"), names.subList(0, 3));
    }

    @Test
    void withoutAPartTheLeaderIsTheMeasure() throws Exception {
        List<String> names = names(Fixtures.withoutPart());
        assertEquals(2 * (5 + 8), names.size());
        assertEquals("section-by-beat-leader.svg", names.get(25));
    }

    /** Who may change and bow at will is not compared with the leader. */
    @Test
    void ofAFreeTakeNoChartTellsWhoIsLate() throws Exception {
        List<String> names = names(Fixtures.free());
        assertTrue(names.contains("section-by-beat.svg"));
        assertFalse(names.contains("lag-by-player.svg"));
        assertFalse(names.contains("changes-around.svg"));
        assertFalse(names.contains("bow-by-player.svg"));
    }
}
