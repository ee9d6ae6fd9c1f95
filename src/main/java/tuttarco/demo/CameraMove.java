package tuttarco.demo;

/** How the framing changes from a clip's beginning, where it is the first, to its end. */
sealed interface CameraMove {
    CameraMove NONE = new Drifts(Framing.FIRST);

    /** The framing at a share of the clip, 0 to 1. */
    Framing at(double share);

    /** The framing farthest from the first. */
    Framing to();

    /** Evenly, as a slow pan or zoom does. */
    record Drifts(Framing to) implements CameraMove {
        @Override
        public Framing at(double share) {
            return to.share(share);
        }
    }

    /** In the clip's middle, all at once. */
    record Cuts(Framing to) implements CameraMove {
        @Override
        public Framing at(double share) {
            return share < 0.5 ? Framing.FIRST : to;
        }
    }
}
