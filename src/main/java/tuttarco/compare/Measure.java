package tuttarco.compare;

import java.util.Optional;
import tuttarco.stats.Interval;

/**
 * One figure of a section.
 *
 * @param count how much the figure rests on, in what the metric counts
 * @param value in the metric's unit; empty where there is too little to go by
 * @param interval in which the value lies with the settings' level of confidence; empty where none is known
 */
public record Measure(Metric metric, Scope scope, int count, Optional<Double> value, Optional<Interval> interval) {
    public Measure {
        if (value.isEmpty() && interval.isPresent()) {
            throw new IllegalArgumentException("an interval is about a value");
        }
    }
}
