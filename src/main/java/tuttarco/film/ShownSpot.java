package tuttarco.film;

import java.util.List;
import tuttarco.seats.Player;

/**
 * A place worth rehearsing as the film points it out.
 *
 * @param fromS when it begins, seconds of the clip; until {@code untilS}
 * @param players who are framed
 * @param words what happened, as the report tells it
 */
public record ShownSpot(double fromS, double untilS, List<Player> players, String words) {
    public ShownSpot {
        players = List.copyOf(players);
    }

    boolean at(double timeS) {
        return fromS <= timeS && timeS < untilS;
    }
}
