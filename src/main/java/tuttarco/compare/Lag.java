package tuttarco.compare;

import java.util.List;
import java.util.Optional;
import tuttarco.seats.Player;
import tuttarco.stats.Quantiles;

/**
 * How a player's bow changes lie to the leader's.
 *
 * @param pairs the player's changes that could be paired with one of the leader's, in time order
 */
public record Lag(Player player, List<Pair> pairs) {
    /**
     * A change of the leader's and the player's.
     *
     * @param leaderS when the leader changed, seconds
     * @param lagMs how much later the player changed, milliseconds
     */
    public record Pair(double leaderS, double lagMs) {}

    public Lag {
        pairs = List.copyOf(pairs);
    }

    /** Number of changes that could be paired. */
    public int changes() {
        return pairs.size();
    }

    /** Median delay, milliseconds, positive where the player changes after the leader; empty where nothing was paired. */
    public Optional<Double> medianMs() {
        return pairs.isEmpty()
                ? Optional.empty()
                : Optional.of(Quantiles.median(pairs.stream().map(Pair::lagMs).toList()));
    }
}
