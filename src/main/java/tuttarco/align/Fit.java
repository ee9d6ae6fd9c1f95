package tuttarco.align;

import java.util.List;

/**
 * How well each chord of a part fits each moment of a recording, against chance: its correlation with what sounds, less that
 * of the part's chords on average. Talk, noise and other music fit no chord better than another.
 */
final class Fit {
    /** A passage must fit this much better than chance, as a correlation (chosen). */
    static final double MARGIN = 0.06;

    /** Fit of a frame that fits well (typical of what was heard). */
    static final double WELL = 0.4;

    /** What a step costs that does not go on evenly, so that a long chord is not stretched at will (chosen; 0.02 to 0.1 made little
     * difference). */
    static final float UNEVEN = 0.05f;

    private final float[][] expected;
    private final double[] shares;

    Fit(PartChords part, SemitoneBands bands) {
        expected = part.chords().stream().map(bands::expected).toArray(float[][]::new);
        shares = part.shares();
    }

    /** Fits of all chords to one shape, by chord; a rest fits anything, no better and no worse than chance. */
    void of(float[] shape, float[] fits) {
        double chance = MARGIN;
        for (int c = 0; c < expected.length; c++) {
            fits[c] = dot(expected[c], shape);
            chance += shares[c] * fits[c];
        }
        for (int c = 0; c < fits.length; c++) {
            fits[c] -= (float) chance;
        }
        fits[PartChords.REST] = 0;
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
