package tuttarco.strokes;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What a swing tells by itself and beside its neighbours, in log-odds. All settings were chosen on rendered scenes.
 *
 * <p>Two cues tell bowing from what else an arm does. A bow takes the hand a good way, plucking and clapping do not. And
 * strokes follow each other to and fro at once and about equally far, while a hand that turns a page or scratches a nose
 * rests in between. A bow that is set anew goes back more quickly than the player's strokes, in a shorter time, and
 * leaves the line along which the player bows.
 *
 * @param swings those that move, in time order
 * @param cutOff which of them begin or end with the clip: how far they went is not known
 */
record SwingEvidence(List<Swing> swings, List<Boolean> cutOff) {
    /** No way longer than the first counts for more, shoulder widths: a longer stroke is no likelier bowed. */
    private static final double BOWED_WAY = 0.3;

    private static final NormalDistribution BOWED = normal(Math.log(BOWED_WAY), 1);

    /** Plucks, claps and the like; and reaching for something. Natural logarithms of shoulder widths. */
    private static final NormalDistribution SMALL = normal(Math.log(0.1), 0.35);

    private static final NormalDistribution REACHING = normal(Math.log(0.35), 0.9);
    private static final double SMALL_SHARE = 0.8;

    /** One swing's way tells no more than this, either way. */
    private static final double WAY_AGAINST = -2;

    private static final double WAY_FOR = 1.2;

    /**
     * A short way tells nothing against a bow that is seen foreshortened or half hidden. Plucks and claps take less time,
     * seconds, and a resting body sways more slowly, shoulder widths per second.
     */
    private static final double SLOW_S = 0.45;

    private static final double DRIFT = 0.2;

    /** Swings in turn follow each other within this time, seconds, and go as far as each other within this ratio. */
    private static final double GAP_S = 0.2;

    private static final double ALIKE = 3.5;

    /** A swing that has such a neighbour on neither side, on one, on both. */
    private static final double[] IN_TURN = {-0.5, 0.2, 0.3};

    /** Speed and least curve of a bow that is set anew, natural logarithms against the player's usual ones. */
    private static final double SWIFTER = 0.4;

    private static final double SPEED_SPREAD = 0.25;
    private static final double MORE_CURVED = 1.6;
    private static final double CURVE_SPREAD = 1;

    /** How long setting it takes, and how long a stroke, natural logarithms of seconds. */
    private static final NormalDistribution SETTING_LASTS = normal(Math.log(0.3), 0.2);

    private static final NormalDistribution STROKES_LAST = normal(Math.log(0.7), 0.6);

    /** A single swing tells no more than this about having been set anew. */
    private static final double MOST_SETTING = 5;

    /** Straighter than this can't be told from straight: energy across over energy along. */
    private static final double STRAIGHT = 0.005;

    /** What a player's own strokes are like. */
    record Usual(double speed, double curve) {}

    private static NormalDistribution normal(double mean, double deviation) {
        return new NormalDistribution(null, mean, deviation);
    }

    /** For bowing against anything else. */
    double bowing(int i) {
        Swing swing = swings.get(i);
        if (swing.quick()) {
            return 0;
        }
        double way = way(swing.size());
        boolean wayUnknown = cutOff.get(i) || swing.stroke().lengthS() > SLOW_S && swing.peak() > DRIFT;
        int neighbours = (answers(i - 1) ? 1 : 0) + (answers(i) ? 1 : 0);
        return (wayUnknown ? Math.max(0, way) : way) + IN_TURN[neighbours];
    }

    private static double way(double size) {
        double log = Math.log(size);
        double other = SMALL_SHARE * SMALL.density(log) + (1 - SMALL_SHARE) * REACHING.density(log);
        double odds = BOWED.logDensity(Math.min(log, Math.log(BOWED_WAY))) - Math.log(other);
        return Math.max(WAY_AGAINST, Math.min(WAY_FOR, odds));
    }

    /** Whether a swing is at once followed by one the other way that is about as long. */
    private boolean answers(int i) {
        if (i < 0 || i + 1 >= swings.size()) {
            return false;
        }
        Swing swing = swings.get(i);
        Swing next = swings.get(i + 1);
        double ratio = next.size() / swing.size();
        boolean alike = cutOff.get(i) || cutOff.get(i + 1) || ratio < ALIKE && ratio > 1 / ALIKE;
        double gapS = next.stroke().startS() - swing.stroke().endS();
        return !swing.quick() && !next.quick() && swing.way() * next.way() < 0 && gapS < GAP_S && alike;
    }

    /** For a bow that is set anew against a stroke. */
    double setting(int i, Optional<Usual> usual) {
        Swing swing = swings.get(i);
        if (swing.quick() || cutOff.get(i) || usual.isEmpty()) {
            return -MOST_SETTING;
        }
        double swifter = Math.log(swing.peak() / usual.get().speed());
        double moreCurved = Math.log(curve(swing) / usual.get().curve());
        double log = Math.log(swing.stroke().lengthS());
        double odds = against(swifter, SWIFTER, SPEED_SPREAD)
                + against(moreCurved, Math.max(MORE_CURVED, moreCurved), CURVE_SPREAD)
                + SETTING_LASTS.logDensity(log)
                - STROKES_LAST.logDensity(log);
        return Math.min(MOST_SETTING, odds);
    }

    /** Log-odds of a value under a normal distribution about the shift, against one about nought above nought. */
    private static double against(double value, double shift, double spread) {
        double usual = Math.max(0, value) / spread;
        double shifted = (value - shift) / spread;
        return 0.5 * (usual * usual - shifted * shifted);
    }

    /** The curve that counts. */
    static double curve(Swing swing) {
        return Math.max(STRAIGHT, swing.curve());
    }
}
