package tuttarco.demo;

/**
 * A player does something other than bowing for a while.
 *
 * @param aheadS how far it is, at its start, in what repeats itself, so that neighbours don't move as one
 * @param pace how quickly what repeats itself goes, as a multiple of what is usual
 */
record Doing(Activity activity, Spell spell, double aheadS, double pace) {
    /** How long the hands take into it and out of it, seconds (chosen by eye). */
    static final double WAY_S = 0.6;

    /** What becomes of a player's stance at a time; unchanged before and after. */
    Stance change(Stance playing, double timeS) {
        double sinceS = timeS - spell.startS();
        double lengthS = spell.endS() - spell.startS();
        return playing.towards(activity.at(playing, sinceS / lengthS, aheadS + pace * sinceS), spell.share(timeS));
    }
}
