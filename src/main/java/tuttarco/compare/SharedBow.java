package tuttarco.compare;

import java.util.List;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;
import tuttarco.strokes.BowPart;

/** How much bow a player takes beside the leader, and where in it, in the strokes both played together. */
public record SharedBow(Player player, Amount amount, Ends ends) {
    /** How much bow. */
    public sealed interface Amount {
        /** Strokes of which both lengths are known. */
        int strokes();
    }

    /**
     * Enough strokes to compare.
     *
     * @param ratio see {@link Metric#BOW_AMOUNT}
     * @param interval of the ratio, with the settings' level of confidence
     * @param half whether about half or less of the leader's bow may be claimed
     */
    public record Amounts(int strokes, double ratio, Interval interval, boolean half) implements Amount {}

    /** Too few strokes to say anything of how much bow. */
    public record TooFewLengths(int strokes) implements Amount {}

    /** At which end of the bow. */
    public sealed interface Ends {
        /** Strokes of which the leader's lay near an end of the bow and the player's part of the bow is known. */
        int strokes();
    }

    /**
     * Enough strokes to compare.
     *
     * @param opposite those in which the player was at the other end
     * @param interval of their share, with the settings' level of confidence
     * @param apart whether it may be claimed that the player is at the other end
     */
    public record EndsKnown(int strokes, List<Opposite> opposite, Interval interval, boolean apart) implements Ends {
        public EndsKnown {
            opposite = List.copyOf(opposite);
        }

        /** Share of the strokes in which the player was at the other end, 0 to 1; see {@link Metric#OTHER_END}. */
        public double share() {
            return (double) opposite.size() / strokes;
        }
    }

    /** Too few strokes to say anything of the ends. */
    public record TooFewPlaces(int strokes) implements Ends {}

    /**
     * A stroke at the other end of the bow.
     *
     * @param startS when the player's stroke begins, seconds
     * @param part where the player's lay, frog or tip; the leader's lay at the other end
     */
    public record Opposite(double startS, BowPart part) {}
}
