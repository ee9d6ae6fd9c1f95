package tuttarco.align;

import java.util.List;

/**
 * How well each sound of a guide fits each moment of a recording, against chance: its correlation with what sounds, less that
 * of the guide's sounds on average. Talk, noise and other music fit no sound better than another.
 */
final class Fit {
    /** A passage must fit this much better than chance, as a correlation (chosen). */
    static final double MARGIN = 0.06;

    /** At its ends a passage must fit better than this (chosen on synthesised sound). */
    static final double FAINT = 0.15;

    /** Fit of a frame that fits well (typical of what was heard). */
    static final double WELL = 0.4;

    /** What is expected of each sound, less that of the guide's sounds on average. */
    private final float[][] expected;

    Fit(Guide guide, SemitoneBands bands) {
        expected = guide.expected(bands);
        double[] shares = guide.shares();
        double[] mean = new double[SemitoneBands.COUNT];
        for (int c = 0; c < expected.length; c++) {
            for (int b = 0; b < mean.length; b++) {
                mean[b] += shares[c] * expected[c][b];
            }
        }
        for (float[] sound : expected) {
            for (int b = 0; b < mean.length; b++) {
                sound[b] -= (float) mean[b];
            }
        }
    }

    /** How well a sound fits a shape; a rest fits anything, no better and no worse than chance. */
    float of(float[] shape, int sound) {
        return sound == Guide.REST ? 0 : dot(expected[sound], shape) - (float) MARGIN;
    }

    /** How loud the bands are, by their amplitudes, in which a sound stands out against the one before it. */
    double level(float[] amplitudes, int sound, int before) {
        double level = 0;
        for (int b = 0; b < amplitudes.length; b++) {
            level += Math.max(0, expected[sound][b] - expected[before][b]) * amplitudes[b];
        }
        return level;
    }

    int sounds() {
        return expected.length;
    }

    /** Fits of all sounds to one shape, by sound. */
    void of(float[] shape, float[] fits) {
        for (int c = 0; c < fits.length; c++) {
            fits[c] = of(shape, c);
        }
    }

    private static float dot(float[] a, float[] b) {
        float sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Every {@code count} shapes drawn into one, which is of length one again unless all is silent. */
    static float[][] coarse(List<float[]> shapes, int count) {
        float[][] coarse = new float[(shapes.size() + count - 1) / count][SemitoneBands.COUNT];
        for (int i = 0; i < shapes.size(); i++) {
            float[] sum = coarse[i / count];
            for (int b = 0; b < sum.length; b++) {
                sum[b] += shapes.get(i)[b];
            }
        }
        for (float[] sum : coarse) {
            double length = Math.sqrt(dot(sum, sum));
            for (int b = 0; b < sum.length && length > 0; b++) {
                sum[b] /= (float) length;
            }
        }
        return coarse;
    }
}
