package tuttarco.strokes;

import org.apache.commons.math3.special.Erf;
import tuttarco.tracks.ArmSample;

/**
 * How likely a velocity is while the arm goes down, goes up or rests.
 *
 * <p>While bowing, the speed is half-normal with the player's own scale s, in the direction of the stroke; at rest it is
 * zero. Both are seen through normal noise, which for the strokes gives the skew-normal density 2 N(v; 0, s^2 + n^2)
 * Phi(+-v s / (n sqrt(s^2 + n^2))).
 *
 * <p>Reference: A. Azzalini, A class of distributions which includes the normal ones, Scand. J. Statist. 12 (1985) 171.
 *
 * @param bowSpeed scale of the player's bow speed, root mean square, in the track's unit
 * @param restNoise standard deviation of the velocity of a resting arm, beyond the sample's own noise, same unit
 */
record BowModel(double bowSpeed, double restNoise) {
    private static final double LOG_SQRT_2PI = 0.5 * Math.log(2 * Math.PI);

    /** Log density for the states in the order of {@link HiddenMarkovReader}: down, up, still. */
    double[] logLikelihood(ArmSample.Seen sample) {
        double wide = Math.hypot(bowSpeed, sample.noise());
        double bowing = Math.log(2) + logNormal(sample.velocity(), wide);
        double lean = sample.velocity() * bowSpeed / (sample.noise() * wide);
        return new double[] {
            bowing + logPhi(lean),
            bowing + logPhi(-lean),
            logNormal(sample.velocity(), Math.hypot(restNoise, sample.noise()))
        };
    }

    private static double logNormal(double value, double deviation) {
        double z = value / deviation;
        return -0.5 * z * z - Math.log(deviation) - LOG_SQRT_2PI;
    }

    /** Logarithm of the standard normal distribution function, without underflow far out. */
    private static double logPhi(double z) {
        if (z > -5) {
            return Math.log(0.5 * Erf.erfc(-z / Math.sqrt(2)));
        }
        // Abramowitz & Stegun 26.2.12, first term
        return -0.5 * z * z - Math.log(-z) - LOG_SQRT_2PI;
    }
}
