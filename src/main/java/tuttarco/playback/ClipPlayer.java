package tuttarco.playback;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tuttarco.files.InputException;
import tuttarco.video.ClipFacts;

/**
 * Plays a clip: its pictures go to a {@link Sink} when the sound has come to their time. Orders return at once and are
 * carried out on the player's own threads, so they may come from any thread; an order that is overtaken by the next is left out.
 */
public final class ClipPlayer implements AutoCloseable {
    private ClipPlayer() {}

    /**
     * Opens a clip, standing still at its first picture, which the sink gets soon. This may take a while: not for a
     * window's thread.
     *
     * @throws InputException if there is no such file or it is not a video that can be read
     */
    public static ClipPlayer open(Path video, Sink sink) throws InputException {
        throw new UnsupportedOperationException("not yet");
    }

    /** Plays on from where the clip stands; from its start, or the loop's, where it stands at the end. */
    public void play() {}

    /** Stands still at the picture that is seen. */
    public void pause() {}

    public boolean playing() {
        return false;
    }

    /** Goes to the picture that is seen at a time, seconds of the clip, and plays on from there if it was playing. */
    public void seek(double timeS) {}

    /** Stands still so many pictures later, or earlier if negative. */
    public void step(int pictures) {}

    /** How fast it is played, 1 as it was filmed; the pitch stays. From 0.25 to 1. */
    public void speed(double factor) {}

    public double speed() {
        return 1;
    }

    /** Plays a stretch again and again, or no longer. */
    public void loop(Optional<Loop> stretch) {}

    public Optional<Loop> loop() {
        return Optional.empty();
    }

    /** Has ticks heard over the sound at these times; none if empty. */
    public void clicks(List<Click> clicks) {}

    /** What is wanted of the pictures: as large as fits into this many pixels, the sides in the clip's proportion. */
    public void fit(int widthPx, int heightPx) {}

    /** Time of the picture that was shown last, seconds of the clip. */
    public double timeS() {
        return 0;
    }

    /** Where the sound is, seconds of the clip; while it stands still, the picture's time. */
    public double soundS() {
        return 0;
    }

    public ClipFacts facts() {
        throw new UnsupportedOperationException("not yet");
    }

    public Counts counts() {
        return new Counts(0, 0, 0);
    }

    /** What the user should know about how this clip is heard or seen, in one sentence: no sound, a damaged end. */
    public Optional<String> note() {
        return Optional.empty();
    }

    /** Stops and lets go of everything. */
    @Override
    public void close() {}
}
