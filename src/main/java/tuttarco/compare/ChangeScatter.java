package tuttarco.compare;

import java.util.List;
import java.util.Map;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;

/**
 * How the players' changes lie to each other in the bars in which they lie widest apart.
 *
 * @param toLeader whether times are from the leader's change, or else from the median of all
 * @param togetherMs up to this much, either way, a change passes as together with the marking's, milliseconds
 * @param players in section order
 * @param bars in the order played; empty where no bars are known or too few players were seen to change
 */
public record ChangeScatter(boolean toLeader, double togetherMs, List<Player> players, List<InBar> bars) {
    /** More bars don't fit beside each other. */
    static final int MOST_BARS = 3;

    public ChangeScatter {
        players = List.copyOf(players);
        bars = List.copyOf(bars);
    }

    /**
     * A bar.
     *
     * @param spreadMs see {@link Metric#CHANGE_SPREAD}
     */
    public record InBar(Scope.InBar bar, double spreadMs, List<Change> changes) {
        public InBar {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A bow change that several made.
     *
     * @param to the direction after it
     * @param timeS when the leader changed, or half of those seen, seconds
     * @param lagsMs how much later each player changed who was seen to
     */
    public record Change(BowDirection to, double timeS, Map<Player, Double> lagsMs) {
        public Change {
            lagsMs = Map.copyOf(lagsMs);
        }
    }
}
