package tuttarco.demo;

/** A player turns aside with chest and instrument for a while; the chair stays where it is. */
record Swivel(double byDeg, Spell spell) {
    /** How long a player takes to turn, seconds (chosen). */
    static final double WAY_S = 1.5;

    /** By how much the chest is turned from where it points else, clockwise from above, degrees. */
    double deg(double timeS) {
        return byDeg * spell.share(timeS);
    }
}
