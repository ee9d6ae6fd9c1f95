package tuttarco.demo;

import java.util.Arrays;
import tuttarco.beats.Beat;
import tuttarco.bow.Instrument;
import tuttarco.video.ClipWriter;

/** What is heard: a click on every beat, or tones that follow the bows, strong at the frog and weak at the tip. */
final class Soundtrack {
    private static final double CLICK_S = 0.03;
    private static final double CLICK_HZ = 1500;
    /** Overtones of a bowed string fall as one over their number (Helmholtz motion gives a sawtooth). */
    private static final int OVERTONES = 8;
    /** Loudness at the tip against the frog (chosen). */
    private static final double AT_TIP = 0.45;

    private static final double LOUDEST = 0.6 * Short.MAX_VALUE;
    /** Bow speed at which a tone is full, usable bows a second (chosen). */
    private static final double FULL_SPEED = 0.5;
    /** Samples over which loudness is taken as steady, here about 1.5 ms. */
    private static final int STEADY = 64;

    private final Scene scene;
    private final Layout layout;
    private long done;

    Soundtrack(Scene scene, Layout layout) {
        this.scene = scene;
        this.layout = layout;
    }

    /** The samples from where the last call ended to a time. */
    short[] until(double endS) {
        long end = Math.round(endS * ClipWriter.SOUND_HZ);
        double[] wave = new double[(int) Math.max(0, end - done)];
        switch (scene.sound()) {
            case NONE -> Arrays.fill(wave, 0);
            case CLICKS -> clicks(wave);
            case TONES -> layout.performers().forEach(p -> tone(wave, p));
        }
        short[] samples = new short[wave.length];
        for (int i = 0; i < wave.length; i++) {
            samples[i] = (short) (LOUDEST * Math.max(-1, Math.min(1, wave[i])));
        }
        done += wave.length;
        return samples;
    }

    private void clicks(double[] wave) {
        for (Beat beat : scene.tempo().beats().beats()) {
            for (int i = 0; i < wave.length; i++) {
                double sinceS = (done + i) / (double) ClipWriter.SOUND_HZ - beat.timeS();
                if (sinceS >= 0 && sinceS < CLICK_S) {
                    wave[i] += Math.sin(2 * Math.PI * CLICK_HZ * sinceS) * (1 - sinceS / CLICK_S);
                }
            }
        }
    }

    private void tone(double[] wave, Performer performer) {
        double pitchHz = pitchHz(performer.instrument());
        double share = 0.9 / Math.sqrt(layout.performers().size());
        for (int i = 0; i < wave.length; i += STEADY) {
            double loud = share * loudness(performer, (done + i) / (double) ClipWriter.SOUND_HZ);
            for (int k = i; k < Math.min(i + STEADY, wave.length); k++) {
                wave[k] += loud * sawtooth(pitchHz * (done + k) / ClipWriter.SOUND_HZ + 0.1 * performer.index());
            }
        }
    }

    private static double loudness(Performer performer, double timeS) {
        Travel travel = performer.motion().at(timeS);
        if (travel.kind().direction().isEmpty()) {
            return 0;
        }
        double speed = Math.min(1, Math.abs(travel.speed(timeS)) / FULL_SPEED);
        return Math.sqrt(speed) * (1 - (1 - AT_TIP) * travel.place(timeS));
    }

    private static double sawtooth(double turns) {
        double sum = 0;
        for (int n = 1; n <= OVERTONES; n++) {
            sum += Math.sin(2 * Math.PI * n * turns) / n;
        }
        return sum * 0.5;
    }

    private static double pitchHz(Instrument instrument) {
        return switch (instrument) {
            case VIOLIN -> 440;
            case VIOLA -> 293.7;
            case CELLO -> 146.8;
            case BASS -> 73.4;
            case VIOL -> 196;
        };
    }
}
