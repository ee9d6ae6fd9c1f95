package tuttarco.playback;

import java.util.Optional;

/** Where sound goes; it is a clock by how much of it was heard. Blocks are as {@link tuttarco.video.ClipSound} reads them. */
interface SoundOut extends Clock {
    /** How many samples of both channels it takes now. */
    int room();

    /** Takes a block for which there is room, to be heard after those before it. */
    void write(float[] block);

    /** What the user should know about the output, in one sentence: that it is gone. */
    default Optional<String> trouble() {
        return Optional.empty();
    }
}
