package tuttarco.signal;

/**
 * The direction in which a plane motion goes back and forth, at each time: the first principal axis of the velocities
 * near that time. It turns slowly and never jumps to its opposite.
 *
 * <p>Where hardly anything moves nearby, the axis of the whole series counts.
 *
 * @param sigmaS standard deviation of the Gaussian window, seconds
 */
public record LocalAxis(double sigmaS) {
    /** The window is cut off at so many standard deviations. */
    private static final double REACH = 3;

    /**
     * Weight of the whole series beside the window: holds the axis through rests and while a turning body moves with the
     * arm. It bends a lasting turn: of a steady one by 60 degrees about half remains (closed form).
     */
    private static final double WHOLE_SHARE = 1;

    public LocalAxis {
        if (!(sigmaS > 0)) {
            throw new IllegalArgumentException("a window has a width, not " + sigmaS);
        }
    }

    /**
     * The axes at the given times.
     *
     * @param timesS strictly rising, seconds
     * @param vx velocities, {@code vy} likewise, one a time
     */
    public Axis[] along(double[] timesS, double[] vx, double[] vy) {
        double[] whole = new double[3];
        for (int i = 0; i < timesS.length; i++) {
            add(whole, 1.0 / timesS.length, vx[i], vy[i]);
        }
        Axis[] axes = new Axis[timesS.length];
        int first = 0;
        for (int i = 0; i < axes.length; i++) {
            while (timesS[first] < timesS[i] - REACH * sigmaS) {
                first++;
            }
            double[] moments = new double[3];
            double weights = 0;
            for (int j = first; j < timesS.length && timesS[j] <= timesS[i] + REACH * sigmaS; j++) {
                double z = (timesS[j] - timesS[i]) / sigmaS;
                double weight = Math.exp(-0.5 * z * z);
                weights += weight;
                add(moments, weight, vx[j], vy[j]);
            }
            for (int k = 0; k < moments.length; k++) {
                moments[k] += WHOLE_SHARE * weights * whole[k];
            }
            Axis axis = Axis.principal(moments[0], moments[1], moments[2]);
            axes[i] = i > 0 && axes[i - 1].along(axis.x(), axis.y()) < 0 ? axis.opposite() : axis;
        }
        return axes;
    }

    private static void add(double[] moments, double weight, double x, double y) {
        moments[0] += weight * x * x;
        moments[1] += weight * x * y;
        moments[2] += weight * y * y;
    }
}
