package tuttarco.analysis;

import java.nio.file.Path;
import java.util.Optional;
import tuttarco.files.InputException;
import tuttarco.sound.LevelCurve;
import tuttarco.video.SoundTrack;

/**
 * How loud a clip is from beginning to end.
 *
 * @param curve empty where the clip has no sound that can be read
 * @param trouble what to tell the reader if the sound is damaged; a sentence
 */
public record HeardLevel(Optional<LevelCurve> curve, Optional<String> trouble) {
    /** Samples read at a time: about a fifth of a second. */
    private static final int BLOCK = 4096;

    static HeardLevel of(Path video) throws InterruptedException {
        try (SoundTrack track = SoundTrack.open(video)) {
            LevelCurve.Gathering level = new LevelCurve.Gathering(SoundTrack.SAMPLES_PER_S, track.startS());
            float[] block = new float[BLOCK];
            for (int count = track.read(block); count > 0; count = track.read(block)) {
                level.add(block, count);
                if (Thread.interrupted()) {
                    throw new InterruptedException();
                }
            }
            return new HeardLevel(Optional.of(level.curve()), track.trouble());
        } catch (InputException silent) {
            return new HeardLevel(Optional.empty(), Optional.empty());
        }
    }
}
