package tuttarco.playback;

import java.util.Optional;
import tuttarco.video.ClipSound;

/** Gives sound to where it is heard, for one run after the other, on a thread of its own. */
final class Feeder {
    /** Samples of both channels given at once: 20 ms. */
    private static final int BLOCK = ClipSound.SAMPLES_PER_S / 50;

    private static final long LOOK_EVERY_MS = 2;

    private final SoundOut out;
    private final Optional<ClipSound> sound;
    private final Handing runs;
    private final float[] block = new float[BLOCK * ClipSound.CHANNELS];
    private volatile Ticks ticks = Ticks.NONE;

    Feeder(SoundOut out, Optional<ClipSound> sound, Handing runs) {
        this.out = out;
        this.sound = sound;
        this.runs = runs;
    }

    void ticks(Ticks heard) {
        ticks = heard;
    }

    /** Works until no run will come any more. */
    void work() throws InterruptedException {
        try {
            for (Optional<Run> run = runs.next(); run.isPresent(); run = runs.next()) {
                if (run.get().moving()) {
                    feed(run.get());
                }
            }
        } finally {
            sound.ifPresent(ClipSound::close);
        }
    }

    private void feed(Run run) throws InterruptedException {
        try (Heard heard = new Heard(sound, run.course(), run.speed(), BLOCK)) {
            while (!run.over()) {
                if (out.room() < BLOCK) {
                    Thread.sleep(LOOK_EVERY_MS);
                    continue;
                }
                heard.fill(block, ticks);
                run.sound(out, block);
            }
        }
    }
}
