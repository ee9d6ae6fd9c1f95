package tuttarco.signal;

/**
 * Smooths a series that need not be evenly spaced: at each time the value of the quadratic that fits the points within a
 * window best in the least-squares sense. Nothing is shifted in time.
 *
 * <p>On evenly spaced points this is the Savitzky-Golay filter of degree two.
 *
 * <p>Reference: A. Savitzky, M. J. E. Golay, Smoothing and differentiation of data by simplified least squares
 * procedures, Anal. Chem. 36 (1964) 1627.
 *
 * <p>Differences from the paper: points may lie anywhere in time, and at the ends the window is cut off instead of the
 * series.
 *
 * @param halfWindowS points up to this many seconds away take part
 */
public record LocalQuadratic(double halfWindowS) {
    /** Rounding of time stamps, seconds: containers count in microseconds or coarser. */
    private static final double TIME_ROUNDING_S = 1e-6;

    public LocalQuadratic {
        if (!(halfWindowS > 0)) {
            throw new IllegalArgumentException("a window has a width, not " + halfWindowS);
        }
    }

    /**
     * Smoothed values at the same times.
     *
     * @param timesS strictly rising, seconds
     * @param values one a time, in any unit
     */
    public double[] smooth(double[] timesS, double[] values) {
        if (timesS.length != values.length) {
            throw new IllegalArgumentException(timesS.length + " times for " + values.length + " values");
        }
        double[] smoothed = new double[values.length];
        int first = 0;
        int last = -1;
        for (int i = 0; i < values.length; i++) {
            while (timesS[first] < timesS[i] - halfWindowS - TIME_ROUNDING_S) {
                first++;
            }
            while (last + 1 < timesS.length && timesS[last + 1] <= timesS[i] + halfWindowS + TIME_ROUNDING_S) {
                last++;
            }
            smoothed[i] = valueAt(timesS, values, first, last, timesS[i]);
        }
        return smoothed;
    }

    /** Value at {@code atS} of the best quadratic through the points first..last; a mean where there are fewer than three. */
    private static double valueAt(double[] timesS, double[] values, int first, int last, double atS) {
        int n = last - first + 1;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        double s4 = 0;
        double y0 = 0;
        double y1 = 0;
        double y2 = 0;
        for (int j = first; j <= last; j++) {
            double x = timesS[j] - atS;
            double xx = x * x;
            s1 += x;
            s2 += xx;
            s3 += xx * x;
            s4 += xx * xx;
            y0 += values[j];
            y1 += x * values[j];
            y2 += xx * values[j];
        }
        if (n < 3) {
            return y0 / n;
        }
        // Cramer's rule for the constant term of the normal equations [n s1 s2; s1 s2 s3; s2 s3 s4] c = [y0 y1 y2]
        double c00 = s2 * s4 - s3 * s3;
        double c01 = s1 * s4 - s2 * s3;
        double c02 = s1 * s3 - s2 * s2;
        double determinant = n * c00 - s1 * c01 + s2 * c02;
        return (y0 * c00 - s1 * (y1 * s4 - y2 * s3) + s2 * (y1 * s3 - y2 * s2)) / determinant;
    }
}
