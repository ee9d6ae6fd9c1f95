package tuttarco.tracks;

import tuttarco.signal.Axis;

/**
 * How uncertain a velocity along the bow is, judged from the motion across the bow: what moves across is not bowing, and
 * about as much of it lies along.
 */
final class SideMotion {
    /**
     * Motion across the bow is pooled over this long to either side, seconds, and of it this share counts as noise along;
     * the rest is the arm's own curved way. Rendered scenes.
     */
    private static final double POOL_S = 1.0;

    private static final double NUISANCE = 0.3;

    /**
     * What moves across just now, pooled over this long to either side, seconds, tells more: a body that turns, or an arm
     * in front. Rendered scenes.
     */
    private static final double NOW_S = 0.1;

    private static final double NUISANCE_NOW = 0.5;

    /** Least noise of flow, shoulder widths per second: a twelfth of a working pixel between two frames. Rendered scenes. */
    private static final double FLOOR = 0.025;

    private SideMotion() {}

    /** Standard deviation of the velocity along {@code down} at each time, same unit as the velocities. */
    static double[] noise(Axis[] down, double[] timesS, double[] vx, double[] vy) {
        double[] across = new double[timesS.length];
        for (int i = 0; i < across.length; i++) {
            across[i] = down[i].across(vx[i], vy[i]);
        }
        double[] noise = pooled(across, timesS, POOL_S);
        double[] now = pooled(across, timesS, NOW_S);
        for (int i = 0; i < noise.length; i++) {
            noise[i] = Math.hypot(FLOOR, Math.max(NUISANCE * noise[i], NUISANCE_NOW * now[i]));
        }
        return noise;
    }

    /** Root mean square over the times to either side. */
    private static double[] pooled(double[] values, double[] timesS, double toEitherSideS) {
        double[] pooled = new double[values.length];
        double sum = 0;
        int first = 0;
        int end = 0;
        for (int i = 0; i < values.length; i++) {
            while (end < values.length && timesS[end] <= timesS[i] + toEitherSideS) {
                sum += square(values[end]);
                end++;
            }
            while (timesS[first] < timesS[i] - toEitherSideS) {
                sum -= square(values[first]);
                first++;
            }
            pooled[i] = Math.sqrt(Math.max(0, sum) / (end - first));
        }
        return pooled;
    }

    private static double square(double value) {
        return value * value;
    }
}
