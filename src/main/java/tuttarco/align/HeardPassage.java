package tuttarco.align;

/**
 * Some bars of the part and when they were heard.
 *
 * @param fromBar the first of them, as printed; {@code toBar} the last
 * @param fromS when that begins, seconds from the clip's start; {@code toS} when the last is left
 * @param doubt 0 if nothing else fits the sound, 1 where it fits no better than it may by chance
 */
public record HeardPassage(String fromBar, String toBar, double fromS, double toS, double doubt) {}
