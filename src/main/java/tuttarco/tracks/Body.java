package tuttarco.tracks;

/**
 * What poses showed of a player over a clip.
 *
 * @param bowHand the hand that bows as the picture shows it
 * @param shoulderWidthPx median, as if the player faced the camera, pixels
 */
public record Body(Hand bowHand, double shoulderWidthPx) {}
