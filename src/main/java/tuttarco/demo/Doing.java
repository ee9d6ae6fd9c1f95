package tuttarco.demo;

/**
 * A player does something other than bowing for a while; the way into it and out of it is part of that while.
 *
 * @param aheadS how far it is, at its start, in what repeats itself, so that neighbours don't move as one
 */
record Doing(Activity activity, double startS, double endS, double aheadS) {
    /** How long the hands take into it and out of it, seconds (chosen by eye). */
    private static final double WAY_S = 0.6;

    Doing {
        if (!(endS > startS)) {
            throw new IllegalArgumentException("what is done ends after it starts: " + startS + " to " + endS);
        }
    }

    /** What becomes of a player's stance at a time; unchanged before and after. */
    Stance change(Stance playing, double timeS) {
        double wayS = Math.min(WAY_S, (endS - startS) / 3);
        double share = Activity.smooth((timeS - startS) / wayS) * Activity.smooth((endS - timeS) / wayS);
        return playing.towards(
                activity.at(playing, (timeS - startS) / (endS - startS), aheadS + timeS - startS), share);
    }
}
