package tuttarco.compare;

import java.util.Optional;
import tuttarco.stats.Interval;

/** Whether a section bowed as one, told against what chance would do. */
public sealed interface Unity {
    /** What the bows say. */
    enum Kind {
        /** All bowed as one. */
        UNIFIED,
        /** Nobody bowed with anybody. */
        FREE,
        /** Partners at a desk bowed as one, desks did not. */
        BY_DESK,
        /** More together than chance, but not as one. */
        BETWEEN,
        /** What was read is too little, or repeats too evenly, to be told from chance. */
        UNCERTAIN;

        public String word() {
            return switch (this) {
                case UNIFIED -> "unified";
                case FREE -> "free";
                case BY_DESK -> "by desk";
                case BETWEEN -> "in between";
                case UNCERTAIN -> "not certain";
            };
        }
    }

    /** Why nothing is said. */
    enum Reason {
        PLAYERS("fewer than three players could be read on enough beats"),
        BEATS("too few beats could be read");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * How often players went the same way, over all pairs of them on all beats on which both could be read.
     *
     * @param agreement the share, 0 to 1
     * @param byChance the same if everybody bowed at will, from the same bows shifted in time
     * @param index the agreement with chance taken off: 1 all as one, 0 as by chance, and below where players went apart
     * @param interval in which the index would lie in 95 of 100 takes, were chance alone at work beside it
     * @param pValue share of the shifts that agreed as much by chance, 0 to 1, this one counted among them
     */
    record Agreement(double agreement, double byChance, double index, Interval interval, double pValue) {}

    /**
     * What was found.
     *
     * @param section over all pairs of players
     * @param desks over partners at a desk and over players of different desks, where there are both
     * @param players how many could be read on enough beats
     * @param beats how many beats at least two of them could be read on
     */
    record Told(Kind kind, Agreement section, Optional<Desks> desks, int players, int beats) implements Unity {}

    /** Partners at a desk, and players of different desks. */
    record Desks(Agreement partners, Agreement apart) {}

    /** Nothing can be said. */
    record NotTold(Reason reason) implements Unity {}
}
