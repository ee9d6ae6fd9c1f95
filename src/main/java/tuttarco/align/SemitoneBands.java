package tuttarco.align;

import java.util.List;
import tuttarco.video.SoundTrack;

/**
 * What a short stretch of sound holds in each semitone. Only the shape over the semitones is kept, not the loudness:
 * amplitudes are compressed to their root, their mean is taken off and their length made one, so that the product of two
 * shapes is their correlation, and even noise takes nothing but contrast away.
 */
final class SemitoneBands {
    /** Lowest band, as a MIDI note number: a cello's lowest string; below it two semitones share a bin of the spectrum. */
    static final int LOWEST = 36;

    /** Six octaves: up to the highest notes of a violin and their first partials. */
    static final int COUNT = 72;

    /** Samples of one spectrum, 186 ms: tells semitones apart from about 90 Hz on. */
    static final int WINDOW = 4096;

    private static final double A4_HZ = 440;
    private static final int A4 = 69;
    private static final double BIN_HZ = binHz(WINDOW);

    /** Partials of a bowed string fall as one over their number: Helmholtz motion is a sawtooth. */
    private static final int PARTIALS = 10;

    private final double tuningSemitones;
    /** Where each bin lies on the bands, from 0; bins beyond them lie outside 0 to COUNT - 1. */
    private final double[] bandOfBin;

    /** @param tuningSemitones how far the players' A lies above 440 Hz */
    SemitoneBands(double tuningSemitones) {
        this(tuningSemitones, WINDOW);
    }

    private SemitoneBands(double tuningSemitones, int window) {
        this.tuningSemitones = tuningSemitones;
        bandOfBin = new double[window / 2];
        for (int bin = 1; bin < bandOfBin.length; bin++) {
            bandOfBin[bin] = semitone(bin * binHz(window)) - tuningSemitones - LOWEST;
        }
        bandOfBin[0] = -1;
    }

    private static double binHz(int window) {
        return (double) SoundTrack.SAMPLES_PER_S / window;
    }

    /** The same bands of spectra of so many samples; where these are short, low semitones share a bin. */
    SemitoneBands ofWindow(int samples) {
        return new SemitoneBands(tuningSemitones, samples);
    }

    /** The MIDI note number of a frequency, in equal temperament on A4 = 440 Hz. */
    static double semitone(double hz) {
        return A4 + 12 * Math.log(hz / A4_HZ) / Math.log(2);
    }

    static double binOf(double hz) {
        return hz / BIN_HZ;
    }

    static double hzOf(double bin) {
        return bin * BIN_HZ;
    }

    /** The shape of a power spectrum given by its bins; all zero for silence. */
    float[] shape(double[] powerOfBin) {
        return normalised(powers(powerOfBin));
    }

    /** The amplitude in each band of a power spectrum given by its bins. */
    float[] amplitudes(double[] powerOfBin) {
        double[] bands = powers(powerOfBin);
        float[] amplitudes = new float[COUNT];
        for (int b = 0; b < COUNT; b++) {
            amplitudes[b] = (float) Math.sqrt(bands[b]);
        }
        return amplitudes;
    }

    private double[] powers(double[] powerOfBin) {
        double[] bands = new double[COUNT];
        for (int bin = 1; bin < bandOfBin.length; bin++) {
            double at = bandOfBin[bin];
            int low = (int) Math.floor(at);
            if (low >= -1 && low < COUNT) {
                double share = at - low;
                if (low >= 0) {
                    bands[low] += (1 - share) * powerOfBin[bin];
                }
                if (low + 1 < COUNT) {
                    bands[low + 1] += share * powerOfBin[bin];
                }
            }
        }
        return bands;
    }

    private static float[] normalised(double[] bands) {
        double mean = 0;
        for (int b = 0; b < COUNT; b++) {
            bands[b] = Math.sqrt(Math.sqrt(bands[b]));
            mean += bands[b] / COUNT;
        }
        double square = 0;
        for (int b = 0; b < COUNT; b++) {
            bands[b] -= mean;
            square += bands[b] * bands[b];
        }
        float[] shape = new float[COUNT];
        if (square > 0) {
            double length = Math.sqrt(square);
            for (int b = 0; b < COUNT; b++) {
                shape[b] = (float) (bands[b] / length);
            }
        }
        return shape;
    }

    /** The shape a chord of bowed strings should have. */
    float[] expected(List<Integer> pitches) {
        double[] power = new double[WINDOW / 2];
        for (int pitch : pitches) {
            for (int k = 1; k <= PARTIALS; k++) {
                add(power, k * A4_HZ * Math.pow(2, (pitch + tuningSemitones - A4) / 12), 1.0 / k);
            }
        }
        return shape(power);
    }

    /** Adds a sine as the spectrum shows it through a Hann window, whose main lobe is two bins wide each way. */
    private static void add(double[] power, double hz, double amplitude) {
        double centre = binOf(hz);
        for (int bin = (int) Math.ceil(centre - 2); bin <= centre + 2; bin++) {
            if (bin > 0 && bin < power.length) {
                double seen = amplitude * hannLobe(bin - centre);
                power[bin] += seen * seen;
            }
        }
    }

    private static double hannLobe(double x) {
        if (Math.abs(x) < 1e-9) {
            return 1;
        }
        if (Math.abs(Math.abs(x) - 1) < 1e-9) {
            return 0.5;
        }
        return Math.sin(Math.PI * x) / (Math.PI * x) / (1 - x * x);
    }
}
