package tuttarco.report;

import java.util.List;

/** What {@code analyse} writes, in this order: the results note the files of all others. */
public final class Outputs {
    private Outputs() {}

    public static List<Output> all() {
        return List.of(
                new ReportPage(),
                new Charts(),
                new StrokesCsv(),
                new BowsCsv(),
                new BeatsCsv(),
                new DivergencesCsv(),
                new LagsCsv(),
                new MetricsCsv(),
                new ResultsJson());
    }
}
