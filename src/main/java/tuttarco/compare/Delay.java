package tuttarco.compare;

import java.util.List;
import tuttarco.strokes.Stroke;

/**
 * Finds how much later than a reference a player bows as a whole: the delay at which most of the time both bow the same
 * way. Needed because someone 200 ms late in strokes of 250 ms looks turned.
 *
 * <p>Strokes that repeat steadily fit again after a whole period, and fit turned after half of one. Turned bowing is
 * therefore a second hypothesis that must fit clearly better, and of equal fits the smaller delay is taken. A player who is
 * turned all the time in nothing but short strokes and late as well can't be told from one who is early; neither can a
 * delay that changes within the clip be followed.
 */
final class Delay {
    /** Step of the search, seconds: a third of a frame at 30 frames a second (chosen). */
    private static final double STEP_S = 0.01;
    /** How much better, as a share of time, turned bowing must fit than late bowing (chosen on random passages). */
    private static final double TURNED_HANDICAP = 0.1;
    /** What the longest delay costs, as a share of time; only decides between equal fits (chosen on random passages). */
    private static final double DELAY_COST = 0.02;
    /** Least time both bow, seconds, to estimate a delay at all (chosen). */
    private static final double LEAST_COMMON_S = 2;

    private Delay() {}

    /** Seconds, within {@code longestS} either way, positive where the player is late; 0 where there is too little to go by. */
    static double ofS(List<Stroke> played, List<Stroke> reference, double longestS) {
        int steps = (int) Math.round(longestS / STEP_S);
        double bestS = 0;
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 2 * steps; i++) {
            int step = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
            double fit = fit(played, reference, step * STEP_S) - DELAY_COST * Math.abs(step) / Math.max(1, steps);
            if (fit > best) {
                best = fit;
                bestS = step * STEP_S;
            }
        }
        return bestS;
    }

    private static double fit(List<Stroke> played, List<Stroke> reference, double delayS) {
        double agreeS = 0;
        double opposeS = 0;
        int first = 0;
        for (Stroke stroke : reference) {
            double startS = stroke.startS() + delayS;
            double endS = stroke.endS() + delayS;
            while (first < played.size() && played.get(first).endS() <= startS) {
                first++;
            }
            if (stroke.kind().direction().isEmpty()) {
                continue;
            }
            for (int i = first; i < played.size() && played.get(i).startS() < endS; i++) {
                double togetherS = Spans.overlapS(played.get(i), startS, endS);
                if (played.get(i).kind() == stroke.kind()) {
                    agreeS += togetherS;
                } else if (played.get(i).kind().direction().isPresent()) {
                    opposeS += togetherS;
                }
            }
        }
        double commonS = agreeS + opposeS;
        return commonS < LEAST_COMMON_S ? 0 : Math.max(agreeS / commonS, opposeS / commonS - TURNED_HANDICAP);
    }
}
