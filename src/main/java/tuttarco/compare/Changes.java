package tuttarco.compare;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;
import tuttarco.stats.Quantiles;
import tuttarco.strokes.Reading;

/**
 * The section's bow changes: each one of the leader's, or without a leader of the player with the most, and who changed with
 * it.
 *
 * @param changes in time order
 */
record Changes(List<Together> changes) {
    private static final double MS_PER_S = 1000;

    /** Of fewer others a median is not the section's. */
    private static final int LEAST_OTHERS = 3;

    /**
     * A change made together.
     *
     * @param timeS when the one changed that all are paired with, seconds
     * @param to the direction after it
     * @param lagsMs how much later each player changed, by player; that one's is 0
     */
    record Together(double timeS, BowDirection to, Map<Player, Double> lagsMs) {
        /** How much later than the median of the others a player changed. */
        Optional<Lag.Pair> toOthers(Player player) {
            List<Double> othersMs = lagsMs.entrySet().stream()
                    .filter(e -> !e.getKey().equals(player))
                    .map(Map.Entry::getValue)
                    .toList();
            if (!lagsMs.containsKey(player) || othersMs.size() < LEAST_OTHERS) {
                return Optional.empty();
            }
            double medianMs = Quantiles.median(othersMs);
            return Optional.of(new Lag.Pair(timeS + medianMs / MS_PER_S, lagsMs.get(player) - medianMs));
        }
    }

    /** @param section the readings that were compared */
    static Changes of(Comparison comparison, List<Reading> section, CompareSettings settings) {
        Optional<Reading> first = section.stream()
                .max(Comparator.<Reading>comparingInt(r -> r.player().leader() ? 1 : 0)
                        .thenComparingInt(r -> Change.in(r.strokes()).size()));
        return first.map(f -> with(f, comparison, section, settings)).orElse(new Changes(List.of()));
    }

    private static Changes with(Reading first, Comparison comparison, List<Reading> section, CompareSettings settings) {
        Map<Double, Map<Player, Double>> byTime = new HashMap<>();
        for (Reading other : section) {
            Lag lag = known(other, first, comparison)
                    .orElseGet(() -> Lags.of(other, first, comparison.beats(), settings));
            for (Lag.Pair pair : lag.pairs()) {
                byTime.computeIfAbsent(pair.leaderS(), t -> new LinkedHashMap<>())
                        .put(other.player(), pair.lagMs());
            }
        }
        return new Changes(Change.in(first.strokes()).stream()
                .filter(c -> byTime.containsKey(c.timeS()))
                .map(c -> new Together(c.timeS(), c.to(), byTime.get(c.timeS())))
                .toList());
    }

    private static Optional<Lag> known(Reading other, Reading first, Comparison comparison) {
        return comparison.lags().stream()
                .filter(l -> first.player().leader() && l.player().equals(other.player()))
                .findFirst();
    }
}
