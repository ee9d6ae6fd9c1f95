package tuttarco.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Many tests at once: the step-down procedure of S. Holm 1979 (Scand. J. Stat. 6:65). Rejecting where the adjusted
 * probability is at most a level makes any false rejection at all as improbable as that level, however the tests depend on
 * each other.
 */
public final class Holm {
    private Holm() {}

    /** Adjusted probabilities, in the order of those given, each 0 to 1. */
    public static List<Double> adjusted(List<Double> ps) {
        List<Integer> order = IntStream.range(0, ps.size())
                .boxed()
                .sorted(Comparator.comparing(ps::get))
                .toList();
        List<Double> adjusted = new ArrayList<>(ps);
        double least = 0;
        for (int k = 0; k < order.size(); k++) {
            double p = ps.get(order.get(k));
            if (!(p >= 0 && p <= 1)) {
                throw new IllegalArgumentException("a probability lies in 0 to 1, not " + p);
            }
            least = Math.max(least, Math.min(1, (order.size() - k) * p));
            adjusted.set(order.get(k), least);
        }
        return List.copyOf(adjusted);
    }
}
