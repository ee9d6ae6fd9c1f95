package tuttarco.stats;

/** A range in which a figure lies with a stated level of confidence; both ends in the figure's own unit. */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval runs upwards, not from " + low + " to " + high);
        }
    }
}
