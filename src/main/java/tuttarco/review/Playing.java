package tuttarco.review;

import java.nio.file.Path;
import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.files.InputException;

/** A clip's sound as it is played. */
public interface Playing extends AutoCloseable {
    void play();

    void pause();

    boolean playing();

    void seek(double timeS);

    /** Where the sound is, seconds of the clip. */
    double soundS();

    /** How fast, from 0.25 to 1. */
    void speed(double factor);

    /** Has the beats ticked over the sound, the first of a bar higher; none if empty. */
    void ticks(List<Beat> beats);

    @Override
    void close();

    /** Opens a clip to be played; it takes a while. */
    @FunctionalInterface
    interface Opening {
        /** @param stopped is told, on any thread, when playing ended */
        Playing open(Path video, Runnable stopped) throws InputException;
    }
}
