package tuttarco.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tuttarco.compare.Metric;
import tuttarco.season.Trend.Claim;
import tuttarco.season.Trend.Point;
import tuttarco.season.Trend.Subject;
import tuttarco.stats.Holm;
import tuttarco.stats.MannKendall;
import tuttarco.stats.Quantiles;

/**
 * Trends of one kind, of all players say, tested together: a figure rises or falls if the takes in their order do so more than
 * one order in twenty would, Holm's procedure over all of the kind included.
 */
final class Trends {
    /** The usual one in twenty. */
    private static final double LEVEL = 0.05;

    private Trends() {}

    /**
     * What is known of one.
     *
     * @param points one a take
     * @param least smallest change that may be claimed, in the metric's unit
     */
    record Row(Subject subject, Metric metric, List<Optional<Point>> points, double least) {
        List<Double> values() {
            return points.stream().flatMap(Optional::stream).map(Point::value).toList();
        }

        boolean testable() {
            return values().size() >= leastTakes(1);
        }
    }

    /** How many takes at least are needed to tell a trend of so many players, or of so many of another kind. */
    static int leastTakes(int rows) {
        int takes = 2;
        while (rows * MannKendall.leastP(takes) > LEVEL) {
            takes++;
        }
        return takes;
    }

    static List<Trend> of(List<Row> rows) {
        List<Row> tested = rows.stream().filter(Row::testable).toList();
        List<Double> ps = Holm.adjusted(
                tested.stream().map(r -> MannKendall.of(r.values()).p()).toList());
        int least = leastTakes(Math.max(1, tested.size()));
        return rows.stream()
                .map(row -> trend(
                        row, row.values().size() < least ? Optional.empty() : Optional.of(ps.get(tested.indexOf(row)))))
                .toList();
    }

    private static Trend trend(Row row, Optional<Double> p) {
        OptionalDouble change = change(row.points());
        Claim claim = p.isEmpty() ? Claim.TOO_FEW : Claim.NONE;
        if (p.isPresent() && p.get() <= LEVEL && Math.abs(change.getAsDouble()) >= row.least()) {
            claim = MannKendall.of(row.values()).s() > 0 ? Claim.RISING : Claim.FALLING;
        }
        return new Trend(
                row.subject(),
                row.metric(),
                row.points(),
                claim,
                p.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                change);
    }

    /**
     * From the first point to the last by the median slope (H. Theil 1950, Proc. K. Ned. Akad. Wet. 53:386; P. K. Sen 1968, J.
     * Am. Stat. Assoc. 63:1379).
     */
    private static OptionalDouble change(List<Optional<Point>> points) {
        List<Double> slopes = new ArrayList<>();
        int first = -1;
        int last = -1;
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).isPresent()) {
                first = first < 0 ? i : first;
                last = i;
                for (int j = 0; j < i; j++) {
                    if (points.get(j).isPresent()) {
                        slopes.add((points.get(i).get().value()
                                        - points.get(j).get().value())
                                / (i - j));
                    }
                }
            }
        }
        return slopes.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Quantiles.median(slopes) * (last - first));
    }
}
