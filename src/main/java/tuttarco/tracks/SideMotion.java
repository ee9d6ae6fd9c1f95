package tuttarco.tracks;

import tuttarco.signal.Axis;

/**
 * How uncertain a velocity along the bow is, judged from the motion across the bow: what moves across is not bowing, and
 * about as much of it lies along.
 */
final class SideMotion {
    /** Motion across the bow is pooled over this long to either side, seconds. */
    private static final double POOL_S = 1.0;

    /** Share of the motion across that counts as noise along; the rest is the arm's own curved way. Rendered scenes. */
    private static final double NUISANCE = 0.3;

    /** Least noise of flow, shoulder widths per second: a twelfth of a working pixel between two frames. Rendered scenes. */
    private static final double FLOOR = 0.025;

    private SideMotion() {}

    /** Standard deviation of the velocity along {@code down} at each time, same unit as the velocities. */
    static double[] noise(Axis[] down, double[] timesS, double[] vx, double[] vy) {
        double[] noise = new double[timesS.length];
        double sum = 0;
        int first = 0;
        int end = 0;
        for (int i = 0; i < timesS.length; i++) {
            while (end < timesS.length && timesS[end] <= timesS[i] + POOL_S) {
                sum += square(down[end].across(vx[end], vy[end]));
                end++;
            }
            while (timesS[first] < timesS[i] - POOL_S) {
                sum -= square(down[first].across(vx[first], vy[first]));
                first++;
            }
            noise[i] = Math.hypot(FLOOR, NUISANCE * Math.sqrt(Math.max(0, sum) / (end - first)));
        }
        return noise;
    }

    private static double square(double value) {
        return value * value;
    }
}
