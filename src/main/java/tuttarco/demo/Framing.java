package tuttarco.demo;

/**
 * How the picture is framed against the one the section was laid out for.
 *
 * @param closer by how much larger things are, about the picture's middle, as a share
 * @param right how far they lie to the right of where they were, as a share of the picture's width
 * @param down how far below, as a share of its height
 */
record Framing(double closer, double right, double down) {
    static final Framing FIRST = new Framing(0, 0, 0);

    Framing {
        if (!(closer >= 0 && closer <= 1)) {
            throw new IllegalArgumentException("a picture comes closer by 0 to 1, not " + closer);
        }
        if (!(Math.abs(right) <= 1 && Math.abs(down) <= 1)) {
            throw new IllegalArgumentException("things move by -1 to 1 pictures, not " + right + " and " + down);
        }
    }

    /** A share of the way from the first framing to this one. */
    Framing share(double share) {
        return new Framing(closer * share, right * share, down * share);
    }
}
