package tuttarco.playback;

import java.awt.image.BufferedImage;

/** Takes the pictures of a clip as their time comes. It is called on the player's own thread and must return soon. */
public interface Sink {
    /**
     * A picture's time has come: while playing, after a seek or a step, and once more when the wanted size changed. The
     * picture stays as it is until the next call returns; the player then draws another one into it.
     *
     * @param picture upright, of the size last wanted by {@link ClipPlayer#fit}
     * @param timeS its presentation time, seconds of the clip
     */
    void shown(BufferedImage picture, double timeS);

    /** Playing ended, because it was told to or because the clip did. */
    void stopped();
}
