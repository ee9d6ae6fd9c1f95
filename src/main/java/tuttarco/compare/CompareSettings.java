package tuttarco.compare;

/**
 * What counts as leaving the marking or the leader. Lengths in seconds, shares from 0 to 1.
 *
 * @param toleranceS longest time before and after each change of the marking (or of the leader) that is not judged
 * @param toleranceShare the same as a share of the shorter of the two strokes that meet there; the lesser of both holds
 * @param judgedShare least share of a beat's time that must be read as down or up for a verdict
 * @param leastAgainstS least time a beat must be bowed the other way to count as against
 * @param leastBeats least number of beats against that make a divergence
 * @param leastCertainty least probability that somebody is turned, on each beat of a divergence
 * @param longestDelayS longest delay, either way, that is taken for lateness rather than for turned bowing
 * @param longestLagS longest lag to the leader that is looked for, either way
 * @param level confidence level of the agreement intervals
 */
public record CompareSettings(
        double toleranceS,
        double toleranceShare,
        double judgedShare,
        double leastAgainstS,
        int leastBeats,
        double leastCertainty,
        double longestDelayS,
        double longestLagS,
        double level) {
    /**
     * Changes within 100 ms pass as together (common practice, no source) and at most half of a short stroke goes
     * unjudged; the rest was chosen on random passages: half a beat read, 80 ms against (over two frames at 30 a second),
     * two beats (a single beat is as likely a misreading), 200 ms late, 400 ms of lag, and the usual 95 %.
     * The least certainty comes from the operating curves in the method page.
     */
    public static final CompareSettings DEFAULT = new CompareSettings(0.1, 0.25, 0.5, 0.08, 2, 0.05, 0.2, 0.4, 0.95);

    public CompareSettings {
        if (!(toleranceS >= 0 && toleranceS <= 1)) {
            throw new IllegalArgumentException("the tolerance lies in 0 to 1 s, not " + toleranceS);
        }
        if (!(toleranceShare >= 0 && toleranceShare < 0.5)) {
            throw new IllegalArgumentException("the tolerance is less than half a stroke, not " + toleranceShare);
        }
        if (!(judgedShare > 0 && judgedShare <= 1)) {
            throw new IllegalArgumentException("the share judged lies in 0 to 1, not " + judgedShare);
        }
        if (!(leastAgainstS >= 0 && leastAgainstS <= 1)) {
            throw new IllegalArgumentException("the least time against lies in 0 to 1 s, not " + leastAgainstS);
        }
        if (leastBeats < 1) {
            throw new IllegalArgumentException("a divergence has at least one beat, not " + leastBeats);
        }
        if (!(leastCertainty >= 0 && leastCertainty < 1)) {
            throw new IllegalArgumentException("the least certainty lies in 0 to 1, not " + leastCertainty);
        }
        if (!(longestDelayS >= 0 && longestDelayS <= 2) || !(longestLagS >= 0 && longestLagS <= 2)) {
            throw new IllegalArgumentException(
                    "delays are looked for within 0 to 2 s, not " + longestDelayS + " and " + longestLagS);
        }
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a confidence level lies between 0 and 1, not " + level);
        }
    }
}
