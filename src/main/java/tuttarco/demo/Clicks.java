package tuttarco.demo;

import java.util.Arrays;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;

/** A click on every beat, the first of a bar higher, as a metronome does; a click ends where the next begins. */
record Clicks(BeatMap beats) implements Soundtrack {
    /** Length of a click (chosen: short enough to be heard as one). */
    static final double LENGTH_S = 0.03;

    static final double STRONG_HZ = 1500;
    static final double WEAK_HZ = 1000;
    private static final double LOUDEST = 0.8;

    @Override
    public void fill(long first, float[] block) {
        Arrays.fill(block, 0);
        for (Beat beat : beats.beats()) {
            int end = Soundtrack.indexAt(beat.timeS() + LENGTH_S, first, block);
            for (int i = Soundtrack.indexAt(beat.timeS(), first, block); i < end; i++) {
                block[i] = click(beat, Soundtrack.timeS(first + i) - beat.timeS());
            }
        }
    }

    private static float click(Beat beat, double sinceS) {
        double pitchHz = beat.beat() == 1 ? STRONG_HZ : WEAK_HZ;
        return (float) (LOUDEST * (1 - sinceS / LENGTH_S) * Math.sin(2 * Math.PI * pitchHz * sinceS));
    }
}
