package tuttarco.compare;

import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.seats.Player;

/**
 * What came out of comparing a section's readings with its marking and its leader.
 *
 * @param players in section order: by desk, outside before inside, the leader first
 * @param beatReadings one list a player, in the order of {@code players}; each holds one reading a beat of the map
 * @param bars agreement with the marking, bar by bar in the order played; empty where there is no marking
 * @param lags how each player's changes lie to the leader's, in the order of {@code players}, without the leader; empty
 *     where there is no leader
 */
public record Comparison(
        List<Player> players,
        BeatMap beats,
        List<List<BeatReading>> beatReadings,
        List<BarAgreement> bars,
        List<Divergence> divergences,
        List<Lag> lags) {
    /** Of somebody who could be judged on fewer beats of the take no stretch is claimed (chosen). */
    public static final int LEAST_JUDGED_BEATS = 4;

    public Comparison {
        players = List.copyOf(players);
        beatReadings = beatReadings.stream().map(List::copyOf).toList();
        bars = List.copyOf(bars);
        divergences = List.copyOf(divergences);
        lags = List.copyOf(lags);
    }

    /** Whether the section was compared with a marking. */
    public boolean marked() {
        return !bars.isEmpty();
    }
}
