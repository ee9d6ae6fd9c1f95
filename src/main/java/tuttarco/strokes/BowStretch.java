package tuttarco.strokes;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import tuttarco.signal.Curve;

/**
 * The stretch of bow that a player uses, from the strokes' nearest end to their farthest, and where in it a stroke lies.
 *
 * <p>Poses show how far the hand is from the strings, but seldom and with scatter; the integral of the velocity shows
 * its moves always, but drifts. So the integral is shifted by the mean difference of the two over some seconds.
 *
 * <p>The stretch is cut in thirds. It is not known how much of the bow it is; but it is long and begins near the strings
 * only if the player uses most of the bow, and only then a third is claimed.
 *
 * <p>All constants were chosen on the rendered scenes.
 *
 * @param place of the hand over time, shoulder widths from the strings
 * @param scatter standard deviation of what single poses show of the place, same unit
 * @param from where the stretch begins, nearest to the strings; {@code to} likewise where it ends
 */
record BowStretch(Curve place, double scatter, double from, double to) {
    /** Poses within this time to either side are averaged, seconds. */
    private static final double POSES_S = 5;

    /** A player uses most of the bow if the strokes reach over this length or more, shoulder widths. */
    private static final double SHORTEST = 0.9;

    /** ... and begin at most this far from the strings, shoulder widths. */
    private static final double FARTHEST_FROG = 0.5;

    /** One mistaken end in fifty does not widen the stretch, percent. */
    private static final double OUTSIDE = 2;

    /** Of the scatter of single poses this share is left in a place. */
    private static final double SCATTER_LEFT = 0.5;

    /** Uncertainty of a place that no pose is to blame for, as a share of the stretch. */
    private static final double OWN_ERROR = 0.05;

    /** A third less sure than this is not claimed. */
    private static final double LEAST_CONFIDENCE = 0.8;

    /** A third of the stretch, and how likely the middle of a stroke lies in it. */
    record Third(BowPart part, double confidence) {}

    /**
     * The stretch over which strokes ran.
     *
     * @param run how far the hand has run towards the tip, shoulder widths from anywhere
     * @param reach distance from the strings as poses show it, shoulder widths
     */
    static BowStretch of(Curve run, Curve reach, List<Stroke> strokes) {
        double[] apart = reach.values().clone();
        for (int i = 0; i < apart.length; i++) {
            apart[i] -= run.values()[i];
        }
        double[] shift = new Curve(run.timesS(), apart).movingMean(POSES_S).values();
        double[] placed = run.values().clone();
        double scatter = 0;
        for (int i = 0; i < placed.length; i++) {
            placed[i] += shift[i];
            scatter += Math.pow(apart[i] - shift[i], 2) / placed.length;
        }
        Curve place = new Curve(run.timesS(), placed);
        double[] ends = strokes.stream()
                .flatMapToDouble(s -> DoubleStream.of(place.at(s.startS()), place.at(s.endS())))
                .toArray();
        return new BowStretch(
                place,
                Math.sqrt(scatter),
                StatUtils.percentile(ends, OUTSIDE),
                StatUtils.percentile(ends, 100 - OUTSIDE));
    }

    /** The third in which the middle of a stroke lies, empty where it is not certain enough to claim. */
    Optional<Third> part(Stroke stroke) {
        double length = to - from;
        if (length < SHORTEST || from > FARTHEST_FROG) {
            return Optional.empty();
        }
        double middle = ((place.at(stroke.startS()) + place.at(stroke.endS())) / 2 - from) / length;
        NormalDistribution likely =
                new NormalDistribution(null, middle, Math.hypot(OWN_ERROR, SCATTER_LEFT * scatter / length));
        double notFrog = 1 - likely.cumulativeProbability(1.0 / 3);
        double tip = 1 - likely.cumulativeProbability(2.0 / 3);
        double[] chances = {1 - notFrog, notFrog - tip, tip};
        return List.of(BowPart.values()).stream()
                .map(part -> new Third(part, chances[part.ordinal()]))
                .filter(third -> third.confidence() >= LEAST_CONFIDENCE)
                .findFirst();
    }
}
