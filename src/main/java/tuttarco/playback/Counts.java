package tuttarco.playback;

/**
 * How well a clip was played since it was opened.
 *
 * @param shown pictures shown while playing
 * @param dropped pictures passed over because the next one's time had come
 * @param worstOffsetMs how far from its time a picture was handed over at worst, milliseconds of the clock that the sound keeps
 */
public record Counts(long shown, long dropped, double worstOffsetMs) {}
