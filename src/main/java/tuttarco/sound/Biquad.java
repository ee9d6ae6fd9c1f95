package tuttarco.sound;

/**
 * A filter of second order: {@code b0 + b1/z + b2/z^2} over {@code 1 + a1/z + a2/z^2}.
 *
 * <p>It is carried to another sampling rate by way of its analogue prototype: the bilinear transform is undone, and done again
 * so that the prototype's corner keeps its frequency ("pre-warped").
 */
record Biquad(double b0, double b1, double b2, double a1, double a2) {
    /** The filter that has the same analogue prototype at another rate as this one has at {@code ratePerS}. */
    Biquad at(double otherRatePerS, double ratePerS) {
        // with 1/z = (1 - x) / (1 + x) both polynomials are of x, which is i tan(pi f / rate) at the frequency f
        double corner = Math.sqrt((1 + a1 + a2) / (1 - a1 + a2));
        double cornerPerS = ratePerS / Math.PI * Math.atan(corner);
        double stretch = corner / Math.tan(Math.PI * cornerPerS / otherRatePerS);
        double[] b = sampled(b0 + b1 + b2, 2 * (b0 - b2) * stretch, (b0 - b1 + b2) * stretch * stretch);
        double[] a = sampled(1 + a1 + a2, 2 * (1 - a2) * stretch, (1 - a1 + a2) * stretch * stretch);
        return new Biquad(b[0] / a[0], b[1] / a[0], b[2] / a[0], a[1] / a[0], a[2] / a[0]);
    }

    /** The polynomial {@code p0 + p1 x + p2 x^2}, times {@code (1 + 1/z)^2 / 4}, as one of 1/z. */
    private static double[] sampled(double p0, double p1, double p2) {
        return new double[] {(p0 + p1 + p2) / 4, (p0 - p2) / 2, (p0 - p1 + p2) / 4};
    }

    /** What has passed through the filter, in the transposed direct form II. */
    static final class State {
        /** Less than this is silence: far below any sound, far above where arithmetic becomes slow. */
        private static final double SILENCE = 1e-100;

        private final Biquad filter;
        private double first;
        private double second;

        State(Biquad filter) {
            this.filter = filter;
        }

        double next(double in) {
            double out = filter.b0 * in + first;
            first = filter.b1 * in - filter.a1 * out + second;
            second = filter.b2 * in - filter.a2 * out;
            return out;
        }

        /** Lets what dies away die. */
        void settle() {
            if (Math.abs(first) < SILENCE && Math.abs(second) < SILENCE) {
                first = 0;
                second = 0;
            }
        }
    }
}
