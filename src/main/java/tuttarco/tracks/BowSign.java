package tuttarco.tracks;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import tuttarco.signal.Axis;
import tuttarco.signal.LocalQuadratic;

/**
 * Which way along the bow's axis is down, and how sure that is.
 *
 * @param down unit vector in the picture, from frog to tip as the bow hand moves
 * @param confidence 0.5 (a guess) to 1
 */
record BowSign(Axis down, double confidence) {
    /** Slower drifts of the arm than this window, seconds, are posture, not bowing. */
    private static final LocalQuadratic POSTURE = new LocalQuadratic(2.0);

    /** Weights of the two cues in the log-odds that the sign is right; chosen on rendered and real seats. */
    private static final double DIRECTION_WEIGHT = 3;

    private static final double PLACE_WEIGHT = 6;

    /**
     * Judges the sign.
     *
     * @param vx velocities of the arm, shoulder widths per second; {@code vy} likewise
     * @param placeX where the moving arm is, share of the seat box; {@code placeY} likewise
     */
    static BowSign judge(
            DownBow expected, Axis axis, double[] timesS, double[] vx, double[] vy, double[] placeX, double[] placeY) {
        Axis way = expected.axis();
        double direction = expected.visibleShare() * axis.along(way.x(), way.y());
        double place = expected.visibleShare() * placeCue(axis, way, timesS, vx, vy, placeX, placeY);
        double logOdds = DIRECTION_WEIGHT * direction + PLACE_WEIGHT * place;
        double confidence = 1 / (1 + Math.exp(-Math.abs(logOdds)));
        return new BowSign(logOdds >= 0 ? axis : axis.opposite(), confidence);
    }

    /** Correlation of how far the bow has run along the axis with how far the arm is along the expected way. */
    private static double placeCue(
            Axis axis, Axis way, double[] timesS, double[] vx, double[] vy, double[] placeX, double[] placeY) {
        int n = timesS.length;
        double[] run = new double[n];
        double[] place = new double[n];
        for (int i = 0; i < n; i++) {
            double stepS = i == 0 ? 0 : timesS[i] - timesS[i - 1];
            run[i] = (i == 0 ? 0 : run[i - 1]) + stepS * axis.along(vx[i], vy[i]);
            place[i] = way.along(placeX[i], placeY[i]);
        }
        subtract(run, POSTURE.smooth(timesS, run));
        subtract(place, POSTURE.smooth(timesS, place));
        if (n < 3) {
            return 0;
        }
        double correlation = new PearsonsCorrelation().correlation(run, place);
        return Double.isFinite(correlation) ? correlation : 0;
    }

    private static void subtract(double[] from, double[] what) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= what[i];
        }
    }
}
