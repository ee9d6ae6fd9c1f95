package tuttarco.beats;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Tells a stop from beats that a list leaves out, by the pace of the beats around.
 *
 * <p>Beats left out pass at about the pace of their neighbours. From one listed beat to the next the playing must have
 * stopped if the time is more than {@link #TIMES} times too long or too short for the way, and more than {@link #LEAST_S}
 * so: even a fermata or a breath is shorter, and nobody skips bars without a stop.
 */
final class Pace {
    /** A fermata about doubles its beat, and few pieces change their tempo by more at once (common practice, no source). */
    private static final double TIMES = 4;

    /** Less than this, seconds, is no stop: one can't put the bow down, say where from and begin (chosen). */
    private static final double LEAST_S = 2;

    /** Ways looked at, to either side: a stop among them doesn't move their median (chosen). */
    private static final int AROUND = 4;

    private final double[] timesS;
    /** Seconds a unit of way from each beat to the next; NaN where it isn't known. */
    private final double[] paces;

    /**
     * @param ways the shortest way from each beat to the next, in any unit; NaN where it isn't known
     * @param timesS times of the beats, seconds
     */
    Pace(double[] ways, double[] timesS) {
        this.timesS = timesS.clone();
        paces = new double[ways.length];
        for (int i = 0; i < ways.length; i++) {
            paces[i] = (timesS[i + 1] - timesS[i]) / ways[i];
        }
    }

    /**
     * Seconds a unit of way usual around beat number {@code index} and the next: the median of the ways around, the lower of
     * two, for stops only lengthen.
     */
    OptionalDouble usualAfter(int index) {
        List<Double> around = new ArrayList<>();
        for (int i = Math.max(0, index - AROUND); i <= Math.min(paces.length - 1, index + AROUND); i++) {
            if (i != index && !Double.isNaN(paces[i])) {
                around.add(paces[i]);
            }
        }
        if (around.isEmpty()) {
            return OptionalDouble.empty();
        }
        Collections.sort(around);
        return OptionalDouble.of(around.get((around.size() - 1) / 2));
    }

    /** Whether the playing must have stopped if it went so far from beat number {@code index} to the next. */
    boolean stopped(int index, double way, OptionalDouble usual) {
        if (usual.isEmpty()) {
            return false;
        }
        double takenS = timesS[index + 1] - timesS[index];
        double expectedS = way * usual.getAsDouble();
        boolean otherPace = takenS > TIMES * expectedS || expectedS > TIMES * takenS;
        return otherPace && Math.abs(takenS - expectedS) > LEAST_S;
    }
}
