package tuttarco.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tuttarco.files.InputException;
import tuttarco.video.SoundTrack;

/**
 * What alignment hears of a recording.
 *
 * @param shapes one {@linkplain SemitoneBands#shape shape} a hop, the first centred on the first sample
 * @param flux how much louder the spectrum grows, as a share of what there is, at every half hop from the first sample on
 * @param startS when the first sample sounds
 */
record SoundFeatures(List<float[]> shapes, float[] flux, SemitoneBands bands, double startS) {
    /** From one spectrum to the next, samples: 23 ms. */
    private static final int HOP = 512;

    static final double HOP_S = (double) HOP / SoundTrack.SAMPLES_PER_S;

    /** Samples of a spectrum for onsets, 46 ms: short beside a note. */
    private static final int SHORT_WINDOW = 1024;

    static final double FLUX_HOP_S = HOP_S / 2;

    /** Half hops from one short spectrum to that it is compared with (chosen: half a window). */
    private static final int FLUX_LAG = 2;

    /** The tuning is taken from every so many spectra. */
    private static final int TUNING_EVERY = 4;

    /** When a shape's middle sounds, seconds from the clip's start. */
    double timeS(int frame) {
        return startS + frame * HOP_S;
    }

    double endS() {
        return timeS(shapes.size());
    }

    /** When the growth that a value of the flux tells lies, seconds from the clip's start. */
    double fluxTimeS(int index) {
        return startS + (index - FLUX_LAG / 2.0) * FLUX_HOP_S;
    }

    /** The value of the flux that tells the growth at a time. */
    int fluxIndex(double timeS) {
        return (int) Math.round((timeS - startS) / FLUX_HOP_S + FLUX_LAG / 2.0);
    }

    /**
     * Hears a recording twice, first for the tuning; it is never held whole.
     *
     * @throws InputException if there is no sound to hear
     */
    static SoundFeatures of(Path recording) throws InputException, InterruptedException {
        Tuning tuning = new Tuning();
        try (SoundTrack track = SoundTrack.open(recording)) {
            hear(track, TUNING_EVERY, (spectra, samples) -> tuning.add(spectra.first));
        }
        SemitoneBands bands = new SemitoneBands(tuning.semitones());
        List<float[]> shapes = new ArrayList<>();
        FluxMeter flux = new FluxMeter();
        try (SoundTrack track = SoundTrack.open(recording)) {
            hear(track, 1, (spectra, samples) -> {
                shapes.add(bands.shape(spectra.first));
                shapes.add(bands.shape(spectra.second));
                flux.add(samples);
            });
            return new SoundFeatures(shapes, flux.values(), bands, track.startS());
        }
    }

    private interface Listener {
        /** Two spectra that follow each other, and the samples of both: the first's begin at 0, the second's a hop later. */
        void hear(Spectra spectra, float[] samples);
    }

    private static void hear(SoundTrack track, int every, Listener listener) throws InterruptedException {
        Spectra spectra = new Spectra(SemitoneBands.WINDOW);
        float[] samples = new float[SemitoneBands.WINDOW + HOP];
        float[] block = new float[2 * HOP];
        // before the first sample and after the last lies silence
        float[] lead = new float[SemitoneBands.WINDOW / 2 + HOP];
        long heard = track.read(lead);
        System.arraycopy(lead, 0, samples, SemitoneBands.WINDOW / 2, lead.length);
        long pairs = 0;
        for (long middle = 0; middle < heard; middle += block.length) {
            if (Thread.interrupted()) {
                throw new InterruptedException("stopped while hearing the recording");
            }
            if (pairs++ % every == 0) {
                spectra.of(samples, 0, HOP);
                listener.hear(spectra, samples);
            }
            int count = track.read(block);
            heard += count;
            shift(samples, block, count);
        }
    }

    static void shift(float[] samples, float[] block, int count) {
        System.arraycopy(samples, block.length, samples, 0, samples.length - block.length);
        System.arraycopy(block, 0, samples, samples.length - block.length, count);
        Arrays.fill(samples, samples.length - block.length + count, samples.length, 0);
    }

    /** Spectral flux at every half hop. */
    private static final class FluxMeter {
        /**
         * Power is raised to this: the more it is compressed, the more a flux leads the beginnings, and the more so the
         * less noise there is (chosen on synthesised sound, where so much leads by 4 ms at most).
         */
        private static final double COMPRESSION = 0.7;

        /** Bins from 170 Hz to 5.2 kHz. */
        private static final int LOWEST_BIN = 8;

        private static final int HIGHEST_BIN = 240;
        private final Spectra spectra = new Spectra(SHORT_WINDOW);
        private final List<float[]> last = new ArrayList<>();
        private float[] values = new float[1 << 12];
        private int count;

        void add(float[] samples) {
            int from = (SemitoneBands.WINDOW - SHORT_WINDOW) / 2;
            int half = HOP / 2;
            spectra.of(samples, from, from + half);
            add(spectra.first, spectra.second);
            spectra.of(samples, from + 2 * half, from + 3 * half);
            add(spectra.first, spectra.second);
        }

        private void add(double[]... powers) {
            for (double[] power : powers) {
                float[] now = new float[HIGHEST_BIN - LOWEST_BIN];
                double all = 0;
                for (int k = 0; k < now.length; k++) {
                    now[k] = (float) Math.pow(power[LOWEST_BIN + k], COMPRESSION);
                    all += now[k];
                }
                double grown = 0;
                if (last.size() == FLUX_LAG) {
                    float[] before = last.remove(0);
                    for (int k = 0; k < now.length; k++) {
                        grown += Math.max(0, now[k] - before[k]);
                    }
                }
                last.add(now);
                push((float) (all > 0 ? grown / all : 0));
            }
        }

        private void push(float value) {
            if (count == values.length) {
                values = Arrays.copyOf(values, 2 * count);
            }
            values[count++] = value;
        }

        float[] values() {
            return Arrays.copyOf(values, count);
        }
    }
}
