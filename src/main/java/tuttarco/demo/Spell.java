package tuttarco.demo;

/**
 * A while in which something is so that is not so before and after; the way into it and out of it is part of it.
 *
 * @param wayS how long it takes to become so, and to cease to be so, at most a third of the whole, seconds
 */
record Spell(double startS, double endS, double wayS) {
    Spell {
        if (!(endS > startS)) {
            throw new IllegalArgumentException("a while ends after it starts: " + startS + " to " + endS);
        }
        wayS = Math.min(wayS, (endS - startS) / 3);
    }

    /** How much it is so at a time: 0 before and after, 1 in the middle, smooth between. */
    double share(double timeS) {
        return smooth((timeS - startS) / wayS) * smooth((endS - timeS) / wayS);
    }

    /** From 0 to 1 with level ends, while {@code u} goes from 0 to 1. */
    static double smooth(double u) {
        double v = Math.max(0, Math.min(1, u));
        return v * v * (3 - 2 * v);
    }
}
