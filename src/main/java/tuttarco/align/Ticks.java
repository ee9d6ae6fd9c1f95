package tuttarco.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tuttarco.files.InputException;
import tuttarco.video.SoundTrack;

/**
 * Short sounds in a recording: moments at which some bands of the spectrum stand out against what sounds both before and
 * after, as a metronome's tick does and a played note does not.
 *
 * @param timesS when each is strongest, seconds from the clip's start, in order
 * @param strengths by how much they stand out: the sum over the bands of the square of the logarithm of the power ratio
 */
record Ticks(double[] timesS, double[] strengths) {
    /** Samples of a spectrum, 12 ms: shorter than a tick rings. */
    private static final int WINDOW = 256;

    private static final int HOP = WINDOW / 2;
    static final double HOP_S = (double) HOP / SoundTrack.SAMPLES_PER_S;

    /** Where metronomes tick and microphones hear them; hertz (chosen). */
    private static final double LOWEST_HZ = 400;

    private static final double HIGHEST_HZ = 10_000;

    /** A third of an octave each. */
    private static final int BANDS = 14;

    /** What a tick is compared with lies at least so far before its middle; hops, 17 ms. */
    private static final int BEFORE = 3;

    /** ... and so far after it, hops, 52 ms: ticks ring 30 ms or so (chosen). */
    private static final int AFTER = 9;

    /** ... and is taken over so long, hops, 64 ms. */
    private static final int AROUND = 11;

    /** A band stands out by this at most, logarithm of the power ratio: 13 dB; so that no band counts alone. */
    private static final double MOST = 3;

    /** Ticks follow each other no closer than this; hops, 93 ms. */
    private static final int CLOSEST = 16;

    /** The powers that count as silence, of 16-bit sound's rounding. */
    private static final double SILENCE = 1e-6;

    static Ticks of(Path recording) throws InputException, InterruptedException {
        List<float[]> powers = new ArrayList<>();
        try (SoundTrack track = SoundTrack.open(recording)) {
            Spectra spectra = new Spectra(WINDOW);
            float[] samples = new float[WINDOW + HOP];
            float[] block = new float[2 * HOP];
            int count = track.read(samples);
            while (count > 0) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("stopped while listening for clicks");
                }
                spectra.of(samples, 0, HOP);
                powers.add(bands(spectra.first));
                powers.add(bands(spectra.second));
                count = track.read(block);
                SoundFeatures.shift(samples, block, count);
            }
            return of(powers, track.startS() + HOP_S);
        }
    }

    private static float[] bands(double[] power) {
        float[] bands = new float[BANDS];
        double octaves = Math.log(HIGHEST_HZ / LOWEST_HZ);
        for (int bin = 1; bin < power.length; bin++) {
            double hz = (double) bin * SoundTrack.SAMPLES_PER_S / WINDOW;
            int band = (int) Math.floor(BANDS * Math.log(hz / LOWEST_HZ) / octaves);
            if (band >= 0 && band < BANDS) {
                bands[band] += (float) power[bin];
            }
        }
        return bands;
    }

    private static Ticks of(List<float[]> powers, double firstS) {
        double[] strengths = new double[powers.size()];
        for (int i = 0; i < strengths.length; i++) {
            strengths[i] = strength(powers, i);
        }
        List<Double> timesS = new ArrayList<>();
        List<Double> peaks = new ArrayList<>();
        for (int i = 1; i < strengths.length - 1; i++) {
            if (strengths[i] > 0 && isPeak(strengths, i)) {
                double bend = strengths[i - 1] - 2 * strengths[i] + strengths[i + 1];
                double offset = bend < 0 ? 0.5 * (strengths[i - 1] - strengths[i + 1]) / bend : 0;
                timesS.add(firstS + (i + offset) * HOP_S);
                peaks.add(strengths[i]);
            }
        }
        return new Ticks(
                timesS.stream().mapToDouble(t -> t).toArray(),
                peaks.stream().mapToDouble(p -> p).toArray());
    }

    private static boolean isPeak(double[] strengths, int i) {
        for (int k = Math.max(0, i - CLOSEST); k <= Math.min(strengths.length - 1, i + CLOSEST); k++) {
            if (strengths[k] > strengths[i] || strengths[k] == strengths[i] && k < i) {
                return false;
            }
        }
        return true;
    }

    private static double strength(List<float[]> powers, int i) {
        double strength = 0;
        for (int b = 0; b < BANDS; b++) {
            double before = mean(powers, b, i - BEFORE - AROUND, i - BEFORE);
            double after = mean(powers, b, i + AFTER, i + AFTER + AROUND);
            double out = Math.log((powers.get(i)[b] + SILENCE) / (Math.max(before, after) + SILENCE));
            double clipped = Math.max(0, Math.min(MOST, out));
            strength += clipped * clipped;
        }
        return strength;
    }

    /** Mean power between two frames; beyond the recording is silence. */
    private static double mean(List<float[]> powers, int band, int from, int to) {
        double sum = 0;
        for (int i = Math.max(0, from); i < Math.min(powers.size(), to); i++) {
            sum += powers.get(i)[band];
        }
        return sum / (to - from);
    }
}
