package tuttarco.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import tuttarco.files.InputException;
import tuttarco.video.SoundTrack;

/**
 * What alignment hears of a recording.
 *
 * @param shapes one {@linkplain SemitoneBands#shape shape} a hop, the first centred on the first sample
 * @param flux how much louder the spectrum grows, as a share of what there is, at every half hop from the first sample on
 * @param levels the amplitude in each semitone band, heard briefly, at every half hop from the first sample on
 * @param startS when the first sample sounds
 */
record SoundFeatures(List<float[]> shapes, float[] flux, List<float[]> levels, SemitoneBands bands, double startS) {
    /** From one spectrum to the next, samples: 23 ms. */
    private static final int HOP = 512;

    static final double HOP_S = (double) HOP / SoundTrack.SAMPLES_PER_S;

    /** Samples of a spectrum for onsets, 46 ms: short beside a note. */
    private static final int SHORT_WINDOW = 1024;

    static final double SHORT_WINDOW_S = (double) SHORT_WINDOW / SoundTrack.SAMPLES_PER_S;

    static final double FLUX_HOP_S = HOP_S / 2;

    /** What is 20 dB softer than all around it is background, as a share of its power (EBU Tech 3342 leaves out as much). */
    private static final double BACKGROUND = 0.01;

    /** ... so long before and after it, seconds. */
    private static final double AROUND_S = 2;

    /** The first short spectrum that holds sound alone, and no silence from before the recording. */
    static final int FIRST_WHOLE = SHORT_WINDOW / HOP;

    /** Half hops from one short spectrum to that it is compared with (chosen: half a window). */
    private static final int FLUX_LAG = 2;

    /** The tuning is taken from every so many spectra. */
    private static final int TUNING_EVERY = 4;

    /** So many pairs of spectra are heard by all processors before the next are read: 12 s, 5 MB. */
    private static final int TOGETHER = 256;

    /** Whether more than background is heard around a shape's middle. */
    boolean sounds(int frame) {
        for (float value : shapes.get(frame)) {
            if (value != 0) {
                return true;
            }
        }
        return false;
    }

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
        ThreadLocal<Spectra> longs = ThreadLocal.withInitial(() -> new Spectra(SemitoneBands.WINDOW));
        try (SoundTrack track = SoundTrack.open(recording)) {
            hear(
                    track,
                    TUNING_EVERY,
                    samples -> spectra(longs.get(), samples).first.clone(),
                    tuning::add);
        }
        SemitoneBands bands = new SemitoneBands(tuning.semitones());
        List<float[]> shapes = new ArrayList<>();
        BriefEar ear = new BriefEar(bands.ofWindow(SHORT_WINDOW));
        try (SoundTrack track = SoundTrack.open(recording)) {
            hear(
                    track,
                    1,
                    samples -> {
                        Spectra spectra = spectra(longs.get(), samples);
                        return new Moment(bands.shape(spectra.first), bands.shape(spectra.second), ear.heard(samples));
                    },
                    moment -> {
                        shapes.add(moment.first);
                        shapes.add(moment.second);
                        ear.add(moment.brief);
                    });
            return new SoundFeatures(sounding(shapes, ear.levels), ear.flux(), ear.levels, bands, track.startS());
        }
    }

    /** The shapes, but silence where what is heard is no more than what stays when nobody plays. */
    private static List<float[]> sounding(List<float[]> shapes, List<float[]> levels) {
        double[] upTo = new double[levels.size() + 1];
        for (int i = 0; i < levels.size(); i++) {
            double power = 0;
            for (float amplitude : levels.get(i)) {
                power += (double) amplitude * amplitude;
            }
            upTo[i + 1] = upTo[i] + power;
        }
        float[] silence = new float[SemitoneBands.COUNT];
        int around = (int) (AROUND_S / FLUX_HOP_S);
        List<float[]> sounding = new ArrayList<>();
        for (int frame = 0; frame < shapes.size(); frame++) {
            int at = 2 * frame;
            int from = Math.max(0, at - around);
            int to = Math.min(levels.size(), at + around + 1);
            double usual = (upTo[to] - upTo[from]) / (to - from);
            sounding.add(upTo[at + 1] - upTo[at] < BACKGROUND * usual ? silence : shapes.get(frame));
        }
        return sounding;
    }

    private static Spectra spectra(Spectra spectra, float[] samples) {
        spectra.of(samples, 0, HOP);
        return spectra;
    }

    /** What is heard at two hops: their shapes, and what short spectra tell at their four half hops. */
    private record Moment(float[] first, float[] second, Brief[] brief) {}

    /** A short spectrum: its bins' powers compressed, and the amplitudes in semitone bands. */
    private record Brief(float[] compressed, float[] amplitudes) {}

    /**
     * Hears a recording two hops at a time, on all processors.
     *
     * @param ear hears the samples of two spectra, the first's from 0 on, the second's a hop later; called by several threads
     * @param heard takes what was heard, in the order of time
     */
    private static <T> void hear(SoundTrack track, int every, Function<float[], T> ear, Consumer<T> heard)
            throws InterruptedException {
        float[] samples = new float[SemitoneBands.WINDOW + HOP];
        float[] block = new float[2 * HOP];
        // before the first sample and after the last lies silence
        float[] lead = new float[SemitoneBands.WINDOW / 2 + HOP];
        long read = track.read(lead);
        System.arraycopy(lead, 0, samples, SemitoneBands.WINDOW / 2, lead.length);
        List<float[]> together = new ArrayList<>();
        long pairs = 0;
        for (long middle = 0; middle < read; middle += block.length) {
            if (Thread.interrupted()) {
                throw new InterruptedException("stopped while hearing the recording");
            }
            if (pairs++ % every == 0) {
                together.add(samples.clone());
            }
            int count = track.read(block);
            read += count;
            shift(samples, block, count);
            if (together.size() == TOGETHER || middle + block.length >= read) {
                together.parallelStream().map(ear).toList().forEach(heard);
                together.clear();
            }
        }
    }

    static void shift(float[] samples, float[] block, int count) {
        System.arraycopy(samples, block.length, samples, 0, samples.length - block.length);
        System.arraycopy(block, 0, samples, samples.length - block.length, count);
        Arrays.fill(samples, samples.length - block.length + count, samples.length, 0);
    }

    /** Spectral flux and levels at every half hop. */
    private static final class BriefEar {
        /**
         * Power is raised to this: the more it is compressed, the more a flux leads the beginnings, and the more so the
         * less noise there is (chosen on synthesised sound, where so much leads by 4 ms at most).
         */
        private static final double COMPRESSION = 0.7;

        /** Bins from 170 Hz to 5.2 kHz. */
        private static final int LOWEST_BIN = 8;

        private static final int HIGHEST_BIN = 240;

        private final SemitoneBands bands;
        private final List<float[]> levels = new ArrayList<>();
        private final ThreadLocal<Spectra> shorts = ThreadLocal.withInitial(() -> new Spectra(SHORT_WINDOW));
        private final List<float[]> last = new ArrayList<>();
        private float[] values = new float[1 << 12];
        private int count;

        BriefEar(SemitoneBands bands) {
            this.bands = bands;
        }

        /** The four short spectra around the middles of two long ones. */
        Brief[] heard(float[] samples) {
            Spectra spectra = shorts.get();
            Brief[] brief = new Brief[4];
            for (int i = 0; i < brief.length; i += 2) {
                int from = (SemitoneBands.WINDOW - SHORT_WINDOW + i * HOP) / 2;
                spectra.of(samples, from, from + HOP / 2);
                brief[i] = brief(spectra.first);
                brief[i + 1] = brief(spectra.second);
            }
            return brief;
        }

        private Brief brief(double[] power) {
            return new Brief(compressed(power), bands.amplitudes(power));
        }

        private static float[] compressed(double[] power) {
            float[] compressed = new float[HIGHEST_BIN - LOWEST_BIN];
            for (int k = 0; k < compressed.length; k++) {
                compressed[k] = (float) Math.pow(power[LOWEST_BIN + k], COMPRESSION);
            }
            return compressed;
        }

        void add(Brief[] spectra) {
            for (Brief brief : spectra) {
                levels.add(brief.amplitudes);
                float[] now = brief.compressed;
                double all = 0;
                for (float value : now) {
                    all += value;
                }
                double grown = 0;
                if (last.size() == FLUX_LAG) {
                    float[] before = last.remove(0);
                    // that a recording begins is no growth of what it holds
                    before = count < FIRST_WHOLE + FLUX_LAG ? now : before;
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

        float[] flux() {
            return Arrays.copyOf(values, count);
        }
    }
}
