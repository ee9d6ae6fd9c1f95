package tuttarco.tracks;

/** How often the poses of a section's players may be taken: the more players, the seldomer each. */
final class PosePace {
    /**
     * Poses a second for a whole section of settled players; each costs about 30 ms of one core (measured), and twelve
     * players read no worse at one in 2.7 seconds than at one in two (rendered sections).
     */
    private static final double SECTION_PER_S = 4.5;

    /** A settled player's poses come this quickly at most, seconds: more of them read nothing better. */
    private static final double QUICKEST_S = 1;

    /** And this slowly: sixty rendered players read as well as at one in three seconds, and a third of the cost is saved. */
    private static final double SLOWEST_S = 5;

    /** How much sooner the next pose comes where there is doubt, and how soon at most, seconds. */
    private static final double SOONER = 4;

    private static final double SOONEST_S = 0.5;

    /** Where flow and pose disagree the next pose comes after this share of that; rendered scenes: 0.6 is worse. */
    private static final double AT_ONCE = 0.4;

    private int players;

    /** One more player shares the pace; all join before the first frame. */
    void join() {
        players++;
    }

    /** Time from one pose of a settled player to the next, seconds. */
    double settledS() {
        return Math.min(SLOWEST_S, Math.max(QUICKEST_S, players / SECTION_PER_S));
    }

    /** Time to the next pose of a player of whom little is known or who turns, seconds. */
    double soonS() {
        return Math.max(SOONEST_S, settledS() / SOONER);
    }

    /** Time to the next pose of a player on whom flow and pose disagree, seconds. */
    double atOnceS() {
        return AT_ONCE * soonS();
    }
}
