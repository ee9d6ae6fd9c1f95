package tuttarco.playback;

/** Tells how long has been played since it was started. */
interface Clock extends AutoCloseable {
    /** The longest wait at once, so that whoever waits looks up for orders; seconds (chosen). */
    double MOMENT_S = 0.01;

    /** Runs from 0 on. */
    void start();

    /** Stops at once and goes back to 0. */
    void halt();

    /** How long has been played, seconds. */
    double playedS();

    /** Waits until so much has been played, or for a moment if that takes longer. */
    default void await(double playedS) throws InterruptedException {
        double leftS = Math.min(playedS - playedS(), MOMENT_S);
        if (leftS > 0) {
            Thread.sleep((long) Math.ceil(leftS * 1000));
        }
    }

    @Override
    void close();
}
