package tuttarco.signal;

/** A direction in the picture as a unit vector; x points right, y down. */
public record Axis(double x, double y) {
    public static Axis of(double x, double y) {
        double length = Math.hypot(x, y);
        if (!(length > 0)) {
            throw new IllegalArgumentException("a direction has a length");
        }
        return new Axis(x / length, y / length);
    }

    /**
     * The direction in which the points spread most: the first principal axis of their 2x2 covariance in closed form. It
     * points to the right (or down, where it is vertical).
     */
    public static Axis principal(double[] xs, double[] ys) {
        double meanX = mean(xs);
        double meanY = mean(ys);
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < xs.length; i++) {
            double dx = xs[i] - meanX;
            double dy = ys[i] - meanY;
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
        }
        return principal(xx, xy, yy);
    }

    /** The first principal axis of second moments. */
    static Axis principal(double xx, double xy, double yy) {
        double angleRad = 0.5 * Math.atan2(2 * xy, xx - yy);
        return new Axis(Math.cos(angleRad), Math.sin(angleRad));
    }

    public double along(double px, double py) {
        return x * px + y * py;
    }

    public double across(double px, double py) {
        return x * py - y * px;
    }

    public Axis opposite() {
        return new Axis(-x, -y);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return values.length == 0 ? 0 : sum / values.length;
    }
}
