package tuttarco.demo;

/**
 * The section stops, someone says something, and they play on, perhaps from an earlier bar. Bars count from 1.
 *
 * @param afterBar the last bar played before it
 * @param pauseS how long nobody plays, seconds
 * @param fromBar where they go on
 */
record Stop(int afterBar, double pauseS, int fromBar) {
    Stop {
        if (afterBar < 1 || fromBar < 1 || !(pauseS > 0 && Double.isFinite(pauseS))) {
            throw new IllegalArgumentException(
                    "no stop is after bar " + afterBar + " for " + pauseS + " s to go on from bar " + fromBar);
        }
    }
}
