package tuttarco.playback;

/**
 * A short tick heard over the sound.
 *
 * @param timeS when, seconds of the clip
 * @param strong whether it is a higher tick, as for the first beat of a bar
 */
public record Click(double timeS, boolean strong) {
    public Click {
        if (!Double.isFinite(timeS)) {
            throw new IllegalArgumentException("a click has a time, not " + timeS);
        }
    }
}
