package tuttarco.pose;

/**
 * One point of a body as the pose model sees it. The model guesses points it can't see too; how much a guess is worth,
 * its own probabilities tell only roughly.
 *
 * @param xPx in pixels of the picture, from its left edge; may lie outside
 * @param yPx from its top edge, downwards
 * @param visibility probability that the point is in the picture and nothing hides it
 * @param presence probability that the point is in the picture
 */
public record Landmark(double xPx, double yPx, double visibility, double presence) {
    public double distancePx(Landmark other) {
        return Math.hypot(xPx - other.xPx, yPx - other.yPx);
    }
}
