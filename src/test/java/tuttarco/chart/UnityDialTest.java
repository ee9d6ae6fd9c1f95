package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import tuttarco.compare.Unity;
import tuttarco.compare.Unity.Agreement;
import tuttarco.compare.Unity.Desks;
import tuttarco.stats.Interval;

class UnityDialTest extends ChartContract {
    private static Agreement agreement(double index) {
        return new Agreement(0.5 + index / 2, 0.5, index, new Interval(index - 0.1, index + 0.1), 0.001);
    }

    @Override
    Chart chart() {
        return new UnityDial(new Unity.Told(
                Unity.Kind.BY_DESK, agreement(0.25), Optional.of(new Desks(agreement(0.9), agreement(-0.05))), 8, 128));
    }

    /** Nobody is named in it. */
    @Override
    Chart chartNaming(String label) {
        return chart();
    }

    @Test
    @Override
    void tableHasRowsAsWideAsItsHead() {
        assertEquals(
                List.of(
                        List.of("the section", "63 %", "50 %", "0.25", "0.15 to 0.35", "1 of 1000"),
                        List.of("partners at a desk", "95 %", "50 %", "0.9", "0.8 to 1.0", "1 of 1000"),
                        List.of("different desks", "48 %", "50 %", "−0.05", "−0.15 to 0.05", "1 of 1000")),
                chart().table().rows());
    }

    @Test
    void pointsStandWhereTheIndexIs() {
        XYDataset points = chart().draw().getXYPlot().getDataset();
        assertEquals(3, points.getItemCount(0));
        assertEquals(-0.05, points.getXValue(0, 0));
        assertEquals(0.9, points.getXValue(0, 1));
        assertEquals(0.25, points.getXValue(0, 2));
    }

    @Test
    void withoutDesksThereIsOneRow() {
        Chart alone = new UnityDial(new Unity.Told(Unity.Kind.FREE, agreement(0), Optional.empty(), 3, 64));
        assertEquals(1, alone.table().rows().size());
        assertTrue(alone.title().contains("freely"));
    }
}
