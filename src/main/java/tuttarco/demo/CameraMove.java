package tuttarco.demo;

import java.util.List;

/** How the framing changes from a clip's beginning, where it is the first, to its end. */
sealed interface CameraMove {
    CameraMove NONE = new Drifts(Framing.FIRST);

    /** The framing of the first view at a share of the clip, 0 to 1. */
    Framing at(double share);

    /** The framing farthest from the first. */
    Framing to();

    /** How much of the picture another view has taken at a share of the clip: 0 before a cut to it, 1 after. */
    double otherView(double share);

    /** Evenly, as a slow pan or zoom does. */
    record Drifts(Framing to) implements CameraMove {
        @Override
        public Framing at(double share) {
            return to.share(share);
        }

        @Override
        public double otherView(double share) {
            return 0;
        }
    }

    /**
     * To another view and back as often as there are cuts.
     *
     * @param at middle of each cut as a share of the clip, in order
     * @param over share of the clip that each takes: none for a hard cut, else a dissolve
     */
    record Cuts(Framing to, List<Double> at, double over) implements CameraMove {
        public Cuts {
            at = List.copyOf(at);
        }

        @Override
        public Framing at(double share) {
            return Framing.FIRST;
        }

        @Override
        public double otherView(double share) {
            double other = 0;
            for (int i = 0; i < at.size(); i++) {
                double done = share < at.get(i) ? 0 : 1;
                if (over > 0) {
                    done = Math.max(0, Math.min(1, (share - at.get(i)) / over + 0.5));
                }
                other += i % 2 == 0 ? done : -done;
            }
            return other;
        }
    }
}
