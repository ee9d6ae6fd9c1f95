package tuttarco.compare;

import java.util.Optional;
import tuttarco.seats.Player;

/**
 * How a player's bow changes lie to the leader's.
 *
 * @param changes number of changes that could be paired with one of the leader's
 * @param medianMs median delay, milliseconds; positive where the player changes after the leader; empty where no change
 *     could be paired
 */
public record Lag(Player player, int changes, Optional<Double> medianMs) {}
