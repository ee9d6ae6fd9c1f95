package tuttarco.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tuttarco.compare.Comparison;

/** Finds where the readings of two takes differ most. */
final class Stretches {
    /** A bar differs where at least this share of the beats does (chosen). */
    private static final double BAR_SHARE = 0.5;

    private final List<String> bars;
    private final Map<List<String>, List<PlayerBar>> found = new LinkedHashMap<>();

    private Stretches(List<String> bars) {
        this.bars = bars;
    }

    /**
     * The stretches of all players, those with the same bars as one, the greatest first.
     *
     * @param bars in order
     * @param playerBars of all players in these bars, each player's in order
     */
    static List<Stretch> in(List<String> bars, List<PlayerBar> playerBars) {
        Map<String, List<PlayerBar>> byPlayer = new LinkedHashMap<>();
        playerBars.forEach(b ->
                byPlayer.computeIfAbsent(b.player(), p -> new ArrayList<>()).add(b));
        Stretches more = new Stretches(bars);
        Stretches less = new Stretches(bars);
        byPlayer.values().forEach(player -> more.gather(player, 1));
        byPlayer.values().forEach(player -> less.gather(player, -1));
        List<Stretch> all = new ArrayList<>(more.stretches());
        all.addAll(less.stretches());
        all.sort(Comparator.comparingDouble(Stretches::beats).reversed());
        return List.copyOf(all);
    }

    /** How many beats were bowed otherwise, of those judged in both takes. */
    private static double beats(Stretch stretch) {
        return Math.abs(stretch.second().share() - stretch.first().share())
                * Math.min(stretch.first().judged(), stretch.second().judged());
    }

    private void gather(List<PlayerBar> player, int sign) {
        List<PlayerBar> open = new ArrayList<>();
        for (PlayerBar bar : player) {
            boolean differs = sign * bar.difference().orElse(0) >= BAR_SHARE;
            boolean adjoins = open.isEmpty()
                    || bars.indexOf(bar.bar())
                            == bars.indexOf(open.get(open.size() - 1).bar()) + 1;
            if (!differs || !adjoins) {
                close(open);
                open.clear();
            }
            if (differs) {
                open.add(bar);
            }
        }
        close(open);
    }

    private void close(List<PlayerBar> stretch) {
        Tally first = stretch.stream().map(PlayerBar::first).reduce(Tally.NONE, Tally::plus);
        Tally second = stretch.stream().map(PlayerBar::second).reduce(Tally.NONE, Tally::plus);
        if (Math.min(first.judged(), second.judged()) >= Comparison.LEAST_JUDGED_BEATS) {
            found.computeIfAbsent(stretch.stream().map(PlayerBar::bar).toList(), b -> new ArrayList<>())
                    .addAll(stretch);
        }
    }

    private List<Stretch> stretches() {
        return found.entrySet().stream()
                .map(e -> new Stretch(
                        e.getValue().stream().map(PlayerBar::player).distinct().toList(),
                        e.getKey(),
                        e.getValue().stream().map(PlayerBar::first).reduce(Tally.NONE, Tally::plus),
                        e.getValue().stream().map(PlayerBar::second).reduce(Tally.NONE, Tally::plus)))
                .toList();
    }
}
