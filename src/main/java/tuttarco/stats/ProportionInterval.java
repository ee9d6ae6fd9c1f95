package tuttarco.stats;

import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/** How far a share seen in few trials can be trusted. */
public final class ProportionInterval {
    private ProportionInterval() {}

    /**
     * Wilson score interval of a proportion without continuity correction (Wilson 1927, J. Am. Stat. Assoc. 22:209;
     * method 3 in Newcombe 1998, Stat. Med. 17:857). It takes the trials to be independent of each other.
     *
     * @param successes 0 to {@code n}
     * @param n number of trials, at least 1
     * @param level confidence level, between 0 and 1 exclusive, such as 0.95
     * @throws IllegalArgumentException if a figure is out of its range
     */
    public static Interval wilson(int successes, int n, double level) {
        if (n < 1 || successes < 0 || successes > n) {
            throw new IllegalArgumentException(
                    "a proportion needs 0 <= successes <= n and n >= 1, not " + successes + " of " + n);
        }
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a confidence level lies between 0 and 1, not " + level);
        }
        ConfidenceInterval interval = new WilsonScoreInterval().createInterval(n, successes, level);
        return new Interval(Math.max(0, interval.getLowerBound()), Math.min(1, interval.getUpperBound()));
    }
}
