package tuttarco.align;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/** Power spectra of two stretches of sound at a time: one as the real, one as the imaginary part of one transform. */
final class Spectra {
    private final double[] window;
    private final double[][] work;
    /** Power by bin, bins up to half the rate, of the first and of the second stretch. */
    final double[] first;

    final double[] second;

    /** @param length samples of a stretch, a power of two */
    Spectra(int length) {
        window = new double[length];
        for (int i = 0; i < length; i++) {
            // Hann's window
            window[i] = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / length);
        }
        work = new double[2][length];
        first = new double[length / 2];
        second = new double[length / 2];
    }

    /** Takes the spectra of the stretches that begin at two places of the samples. */
    void of(float[] samples, int firstFrom, int secondFrom) {
        int length = window.length;
        for (int i = 0; i < length; i++) {
            work[0][i] = window[i] * samples[firstFrom + i];
            work[1][i] = window[i] * samples[secondFrom + i];
        }
        FastFourierTransformer.transformInPlace(work, DftNormalization.STANDARD, TransformType.FORWARD);
        double[] re = work[0];
        double[] im = work[1];
        first[0] = re[0] * re[0];
        second[0] = im[0] * im[0];
        for (int k = 1; k < length / 2; k++) {
            // a real signal's spectrum at -k is the conjugate of that at k
            double sumRe = (re[k] + re[length - k]) / 2;
            double sumIm = (im[k] - im[length - k]) / 2;
            double differenceRe = (im[k] + im[length - k]) / 2;
            double differenceIm = (re[length - k] - re[k]) / 2;
            first[k] = sumRe * sumRe + sumIm * sumIm;
            second[k] = differenceRe * differenceRe + differenceIm * differenceIm;
        }
    }
}
