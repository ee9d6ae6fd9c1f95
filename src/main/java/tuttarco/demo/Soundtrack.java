package tuttarco.demo;

import java.util.List;
import java.util.Optional;
import tuttarco.video.SoundFormat;

/** What sounds in a room, one channel; any stretch of it can be had by itself, so a long clip takes no more memory. */
sealed interface Soundtrack permits Clicks, Tones, Talk, Together {
    SoundFormat FORMAT = SoundFormat.mono(44_100);

    /** Fills a block with the samples, -1 to 1, from the one with number {@code first} on; number 0 is at 0 s. */
    void fill(long first, float[] block);

    /** The samples between two times, seconds; stretches that follow each other leave no gap. */
    default float[] between(double startS, double endS) {
        long first = Math.round(startS * FORMAT.samplesPerS());
        float[] block = new float[(int) Math.max(0, Math.round(endS * FORMAT.samplesPerS()) - first)];
        fill(first, block);
        return block;
    }

    /** When a sample is heard, seconds. */
    static double timeS(long sample) {
        return (double) sample / FORMAT.samplesPerS();
    }

    /** The first sample at or after a time, within a block's bounds: 0 to its length. */
    static int indexAt(double timeS, long first, float[] block) {
        double index = Math.ceil(timeS * FORMAT.samplesPerS()) - first;
        return (int) Math.max(0, Math.min(block.length, index));
    }

    /** Empty for a silent scene. */
    static Optional<Soundtrack> of(Scene scene, Layout layout) {
        return switch (scene.sound()) {
            case NONE -> Optional.empty();
            case CLICKS -> Optional.of(new Clicks(scene.tempo().beats()));
            case TONES ->
                Optional.of(new Together(List.of(
                        Fingering.tones(scene, layout),
                        Talk.during(scene.tempo().pauses(), scene.seed()))));
        };
    }
}
