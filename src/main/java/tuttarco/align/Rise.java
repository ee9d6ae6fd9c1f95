package tuttarco.align;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * What speaks for a tone to begin at a moment, by how loud its partials are around it: how much better that is told by a tone
 * that is half way up just then than by one that goes on evenly. Tones of several attacks are laid along it by least squares,
 * and their likelihoods averaged, so that a slow tone is placed no earlier than a quick one, and where nothing rises clearly,
 * nothing is said.
 */
final class Rise {
    /** How long tones take to speak, seconds: bowed strings 20 to 200 ms (chosen on synthesised sound). */
    private static final double[] ATTACKS_S = {0.02, 0.05, 0.1, 0.15, 0.2};

    /** How soon a tone that is played again has died away to a third after its bow stopped, seconds (chosen). */
    private static final double RINGS_S = 0.03;

    /** So much of each half hop tells something that its neighbours don't (chosen on synthesised sound). */
    private static final double NEW = 0.1;

    /** Squares about the mean that are less than this share of all squares are rounding. */
    private static final double LEAST = 1e-6;

    /** Points that a window is laid through on either side of its middle. */
    private static final int POINTS = 16;

    private final int back;
    private final int length;
    private final List<Tone> tones = new ArrayList<>();

    /**
     * How loud a tone of one attack is, each about its mean.
     *
     * @param rising what begins
     * @param falling what stops as it begins; all zero if other partials sounded before
     */
    private record Tone(double[] rising, double[] falling) {
        /** The part of the squares of a stretch's loudness about its mean that the tone tells. */
        double told(double[] loud, int from) {
            double up = dot(rising, loud, from);
            double down = dot(falling, loud, from);
            double rises = dot(rising, rising, 0);
            double falls = dot(falling, falling, 0);
            double both = dot(rising, falling, 0);
            double rise = falls * up - both * down;
            double fall = rises * down - both * up;
            if (fall > 0) {
                return rise > 0 ? (rise * up + fall * down) / (rises * falls - both * both) : 0;
            }
            return up > 0 ? up * up / rises : 0;
        }
    }

    /**
     * @param back half hops looked at before a moment, and {@code ahead} after it
     * @param again whether the same tone, if any, sounds before, and stops as it begins again
     */
    Rise(int back, int ahead, boolean again) {
        this.back = back;
        length = back + ahead + 1;
        for (double attackS : ATTACKS_S) {
            double[] rising = seen(s -> Math.max(0, Math.min(1, s / attackS + 0.5)));
            double[] falling =
                    again ? seen(s -> Math.min(1, Math.exp(-(s + attackS / 2) / RINGS_S))) : new double[length];
            tones.add(new Tone(rising, falling));
        }
    }

    /** Half hops of loudness needed for a number of moments, the first as many before the first moment as asked for. */
    int needed(int moments) {
        return moments + length - 1;
    }

    /** What speaks for a beginning at each moment, as a logarithm: nought or less where nothing rises. */
    double[] worth(double[] loud) {
        double[] worth = new double[loud.length - length + 1];
        for (int at = 0; at < worth.length; at++) {
            double mean = 0;
            for (int i = at; i < at + length; i++) {
                mean += loud[i] / length;
            }
            double squares = 0;
            double rounding = Double.MIN_NORMAL;
            for (int i = at; i < at + length; i++) {
                squares += (loud[i] - mean) * (loud[i] - mean);
                rounding += LEAST * loud[i] * loud[i];
            }
            double likelihood = 0;
            for (Tone tone : tones) {
                double untold = 1 - tone.told(loud, at) / (squares + rounding);
                likelihood += Math.pow(untold, -NEW * length / 2) / tones.size();
            }
            worth[at] = Math.log(likelihood);
        }
        return worth;
    }

    /** Loudness over seconds from a beginning as short spectra show it, each through Hann's window, about its mean. */
    private double[] seen(DoubleUnaryOperator loudness) {
        double[] seen = new double[length];
        double mean = 0;
        for (int i = 0; i < length; i++) {
            double weights = 0;
            for (int point = 1 - POINTS; point < POINTS; point++) {
                double off = (double) point / POINTS;
                double weight = 0.5 + 0.5 * Math.cos(Math.PI * off);
                double atS = (i - back) * SoundFeatures.FLUX_HOP_S + off * SoundFeatures.SHORT_WINDOW_S / 2;
                seen[i] += weight * loudness.applyAsDouble(atS);
                weights += weight;
            }
            seen[i] /= weights;
            mean += seen[i] / length;
        }
        for (int i = 0; i < length; i++) {
            seen[i] -= mean;
        }
        return seen;
    }

    private static double dot(double[] a, double[] b, int from) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[from + i];
        }
        return sum;
    }
}
