package tuttarco.review;

import java.util.Optional;

/**
 * Keeps what is chosen and what is seen together. The clip shows whole pictures, so a time that was asked for stays chosen
 * while its picture is seen; and pictures from before the clip has come there are passed over.
 */
public final class Following {
    /** How far past a time that was asked for the first picture seen while playing may lie, seconds (chosen). */
    private static final double ARRIVED_WITHIN_S = 1;

    private final double pictureS;
    private Optional<Double> soughtS = Optional.empty();
    /** Time of the picture that is seen there; empty until it is. */
    private Optional<Double> arrivedAtS = Optional.empty();

    /** @param pictureS how long a picture is seen, seconds */
    public Following(double pictureS) {
        this.pictureS = pictureS;
    }

    /** The clip was told to go to a time, seconds. */
    public void sought(double timeS) {
        soughtS = Optional.of(timeS);
        arrivedAtS = Optional.empty();
    }

    /** The clip was told to play, or stands still again: whatever is seen next is where it is. */
    public void begins() {
        soughtS = Optional.empty();
        arrivedAtS = Optional.empty();
    }

    /**
     * A picture is seen.
     *
     * @param seenS its time, seconds
     * @return the time to choose; empty if the one that is chosen stays
     */
    public Optional<Double> seen(double seenS, boolean playing) {
        if (soughtS.isEmpty()) {
            return Optional.of(seenS);
        }
        if (arrivedAtS.isPresent()) {
            return arrivedAtS.get() == seenS && !playing ? Optional.empty() : follows(seenS);
        }
        double aheadS = seenS - soughtS.get();
        boolean there = Math.abs(aheadS) < 1.5 * pictureS || playing && aheadS > 0 && aheadS < ARRIVED_WITHIN_S;
        if (there && playing) {
            return follows(seenS);
        }
        arrivedAtS = there ? Optional.of(seenS) : Optional.empty();
        return Optional.empty();
    }

    private Optional<Double> follows(double seenS) {
        begins();
        return Optional.of(seenS);
    }

    /** The time of which the readings are shown over a picture: the chosen one where the clip stands at it. */
    public double shownS(double seenS) {
        return arrivedAtS.isPresent() ? soughtS.orElse(seenS) : seenS;
    }
}
