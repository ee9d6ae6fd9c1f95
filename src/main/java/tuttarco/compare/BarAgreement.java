package tuttarco.compare;

import java.util.Optional;
import tuttarco.stats.Interval;

/**
 * How much of one bar the section bowed as marked.
 *
 * @param bar the bar number as printed
 * @param firstIndex index of the bar's first beat in the beat map; {@code lastIndex} its last, inclusive
 * @param with number of player-beats judged {@link Verdict#WITH}
 * @param judged number of player-beats judged with or against
 * @param interval 95 % Wilson score interval of {@code with / judged}; empty where nothing was judged
 */
public record BarAgreement(
        String bar, int firstIndex, int lastIndex, int with, int judged, Optional<Interval> interval) {}
