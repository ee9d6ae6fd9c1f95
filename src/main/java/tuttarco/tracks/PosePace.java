package tuttarco.tracks;

/** How often the poses of a section's players may be taken: the more players, the seldomer each. */
final class PosePace {
    /** Poses a second for the whole section; each costs about 30 ms of one core (measured), so that two cores keep up. */
    private static final double SECTION_PER_S = 24;

    /** One player's poses come this quickly at most, seconds: more of them read nothing better (real clips and scenes). */
    private static final double QUICKEST_S = 1;

    private int players;

    /** One more player shares the pace; all join before the first frame. */
    void join() {
        players++;
    }

    /** Time from one pose of a settled player to the next, seconds. */
    double settledS() {
        return Math.max(QUICKEST_S, players / SECTION_PER_S);
    }

    /** Time to the next pose of a player of whom little is known or who turns, seconds. */
    double soonS() {
        return settledS() / 2;
    }
}
