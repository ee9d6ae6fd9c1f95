package tuttarco.beats;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Tells a stop from beats that a list leaves out, by the pace of the beats around.
 *
 * <p>Beats left out pass at about the pace of their neighbours, but for a fermata. From one listed beat to the next the
 * playing must have stopped if the time is longer or shorter than that by more than {@link #LEAST_S}: nobody skips bars, or
 * waits and goes on, without a stop.
 */
final class Pace {
    /** How many times slower or quicker than around it a stretch may be (common practice, no source: ritardando, a new tempo). */
    private static final double CHANGE = 1.5;

    /** How many times quicker than around it nothing is played (chosen: no tempo changes by so much within a step). */
    private static final double QUICKEST = 4;

    /** How many steps longer a fermata or a breath may last: it about doubles its note (common practice, no source). */
    private static final double HELD_STEPS = 2;

    /** Less than this, seconds, is no stop: one can't put the bow down, say where from and begin (chosen). */
    private static final double LEAST_S = 2;

    /** Steps looked at, to either side: a stop among them doesn't move their median (chosen). */
    private static final int AROUND = 4;

    /** Shortest way of each step from beat to beat; NaN where it isn't known. */
    private final double[] ways;

    private final double[] timesS;

    /**
     * @param ways the shortest way from each beat to the next, in any unit; NaN where it isn't known
     * @param timesS times of the beats, seconds
     */
    Pace(double[] ways, double[] timesS) {
        this.ways = ways.clone();
        this.timesS = timesS.clone();
    }

    /**
     * What is usual around a step: medians, the lower of two, for stops only lengthen.
     *
     * @param stepWay way of a step; NaN where nothing is known of the steps around
     * @param secondsAWay seconds a unit of way
     */
    record Usual(double stepWay, double secondsAWay) {}

    /** What is usual around the step from beat number {@code index} to the next. */
    Usual around(int index) {
        int[] steps = IntStream.rangeClosed(Math.max(0, index - AROUND), Math.min(ways.length - 1, index + AROUND))
                .filter(i -> i != index && !Double.isNaN(ways[i]))
                .toArray();
        return new Usual(
                median(Arrays.stream(steps).mapToDouble(i -> ways[i]).toArray()),
                median(Arrays.stream(steps)
                        .mapToDouble(i -> takenS(i) / ways[i])
                        .toArray()));
    }

    /** Whether there must have been a stop, if it went so far from beat number {@code index} to the next. */
    boolean stopped(int index, double way, Usual usual) {
        double expectedS = way * usual.secondsAWay();
        double longestS = CHANGE * expectedS + HELD_STEPS * usual.stepWay() * usual.secondsAWay();
        boolean odd = takenS(index) > longestS || takenS(index) < expectedS / CHANGE;
        return odd && Math.abs(takenS(index) - expectedS) > LEAST_S;
    }

    /** Whether so far can't have been played from beat number {@code index} to the next: there was no time for it. */
    boolean impossible(int index, double way, Usual usual) {
        boolean skips = way > usual.stepWay();
        return skips && stopped(index, way, usual) && takenS(index) < way * usual.secondsAWay() / QUICKEST;
    }

    private double takenS(int index) {
        return timesS[index + 1] - timesS[index];
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values.length == 0 ? Double.NaN : values[(values.length - 1) / 2];
    }
}
