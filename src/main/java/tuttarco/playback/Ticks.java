package tuttarco.playback;

import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import tuttarco.video.ClipSound;

/** Clicks in the order of their times, and how they sound: short tones that die away. */
final class Ticks {
    /** Pitches of a click, hertz; that of strong beats is higher (common practice). */
    private static final double WEAK_HZ = 1000;

    private static final double STRONG_HZ = 1600;

    /** Heard over a section, far from the loudest there is (chosen). */
    private static final double PEAK = 0.5;

    private static final double LENGTH_S = 0.04;
    private static final double DYING_S = 0.008;

    /** Length of a tick, samples. */
    static final int LENGTH = (int) (LENGTH_S * ClipSound.SAMPLES_PER_S);

    static final Ticks NONE = new Ticks(List.of());

    private static final float[] WEAK = tone(WEAK_HZ);
    private static final float[] STRONG = tone(STRONG_HZ);

    private final TreeMap<Double, Click> byTime = new TreeMap<>();

    Ticks(List<Click> clicks) {
        clicks.forEach(click -> byTime.put(click.timeS(), click));
    }

    private static float[] tone(double hz) {
        float[] tone = new float[LENGTH];
        for (int i = 0; i < tone.length; i++) {
            double s = (double) i / ClipSound.SAMPLES_PER_S;
            tone[i] = (float) (PEAK * Math.exp(-s / DYING_S) * Math.sin(2 * Math.PI * hz * s));
        }
        return tone;
    }

    /** Those from one time of the clip up to before another. */
    Collection<Click> between(double fromS, double toS) {
        return byTime.subMap(fromS, toS).values();
    }

    /** Adds the sound of a click to both channels, as far as it falls into the block, beginning at a sample of it. */
    static void mix(Click click, float[] block, long at) {
        float[] tone = click.strong() ? STRONG : WEAK;
        int samples = block.length / ClipSound.CHANNELS;
        for (int i = (int) Math.max(0, -at); i < tone.length && at + i < samples; i++) {
            int place = (int) (at + i) * ClipSound.CHANNELS;
            for (int channel = 0; channel < ClipSound.CHANNELS; channel++) {
                block[place + channel] += tone[i];
            }
        }
    }
}
