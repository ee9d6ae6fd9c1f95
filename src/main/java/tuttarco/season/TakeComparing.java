package tuttarco.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.EvennessComparing;
import tuttarco.compare.Metric;
import tuttarco.compare.Verdict;
import tuttarco.season.Changed.Of;
import tuttarco.stats.PairedDifference;
import tuttarco.stats.Quantiles;
import tuttarco.take.Bowing;

/**
 * Tries which figures changed from one take to another. For the section's share with the marking a pair is a player's bar, for a
 * bar's a player, for all else a bar; what is claimed of them is in {@link Claims}.
 */
final class TakeComparing {
    /**
     * No smaller change of one player's share is claimed. The worst of 154 players of rendered scenes was misread on 0.3 of
     * the beats throughout (method page); a leader who is misread makes as much of a difference to all others.
     */
    private static final double PLAYER_SHARE = 0.35;

    /**
     * The same of a section, times the square root of its players: in 39 of 40 pairs of simulated takes that were alike
     * reading made less of a difference (method page).
     */
    private static final double SECTION_SHARE = 0.13;

    /** No smaller change of the spread of changes is claimed, milliseconds: more than in any of them. */
    private static final double SPREAD_MS = 30;

    private final TakeOnRecord first;
    private final TakeOnRecord second;
    private final LinedUp common;
    private final TakeByBar before;
    private final TakeByBar after;
    private final boolean marked;
    private final boolean led;
    private final boolean unified;

    TakeComparing(TakeOnRecord first, TakeOnRecord second) {
        this.first = first;
        this.second = second;
        this.common = LinedUp.of(first, second);
        this.before = new TakeByBar(first);
        this.after = new TakeByBar(second);
        this.marked = first.marked() && second.marked();
        this.led = Stream.of(first, second).allMatch(t -> t.players().stream().anyMatch(PlayerOnRecord::leader));
        this.unified = first.bowing() == Bowing.UNIFIED && second.bowing() == Bowing.UNIFIED;
    }

    TakeAgainstTake compared() {
        Optional<Against> reference =
                marked ? Optional.of(Against.MARKING) : led ? Optional.of(Against.LEADER) : Optional.empty();
        List<PlayerBar> playerBars =
                common.anything() ? reference.map(this::playerBars).orElse(List.of()) : List.of();
        return new TakeAgainstTake(
                first,
                second,
                common,
                reference,
                playerBars,
                common.anything() ? new Claims(first, second).of(tried(reference, playerBars)) : List.of(),
                Stretches.in(common.bars(), playerBars));
    }

    private List<PlayerBar> playerBars(Against reference) {
        Function<PlayerOnRecord, List<Verdict>> verdicts =
                reference == Against.MARKING ? PlayerOnRecord::verdicts : PlayerOnRecord::leaderVerdicts;
        return common.players().stream()
                .flatMap(p -> common.bars().stream()
                        .map(b -> new PlayerBar(p, b, before.tally(verdicts, p, b), after.tally(verdicts, p, b))))
                .toList();
    }

    /** The section's figures, its share first where there is one; then the players', then the bars'. */
    private List<Tried> tried(Optional<Against> reference, List<PlayerBar> playerBars) {
        List<Optional<Tried>> tried = new ArrayList<>();
        if (reference.equals(Optional.of(Against.MARKING))) {
            double smallest = SECTION_SHARE / Math.sqrt(common.players().size());
            tried.add(share(Metric.WITH_MARKING, Of.SECTION, "", playerBars, smallest)
                    .map(Tried::byStudent));
        }
        if (led) {
            tried.add(withLeader(playerBars(Against.LEADER)));
        }
        tried.add(unified ? spread() : Optional.empty());
        tried.add(sound(Metric.LOUDNESS_SPREAD, BarEvenness::spreadLu, EvennessComparing::spread));
        tried.add(sound(Metric.DIP, BarEvenness::dipLu, EvennessComparing::dips));
        for (String player : common.players()) {
            reference.ifPresent(r -> tried.add(share(
                    metric(r),
                    Of.PLAYER,
                    player,
                    those(playerBars, b -> b.player().equals(player)),
                    PLAYER_SHARE)));
            tried.add(unified ? lag(player) : Optional.empty());
        }
        if (reference.equals(Optional.of(Against.MARKING))) {
            double smallest = SECTION_SHARE / Math.sqrt(common.players().size());
            common.bars()
                    .forEach(bar -> tried.add(share(
                            Metric.WITH_MARKING,
                            Of.BAR,
                            bar,
                            those(playerBars, b -> b.bar().equals(bar)),
                            smallest)));
        }
        return tried.stream().flatMap(Optional::stream).toList();
    }

    private static Metric metric(Against reference) {
        return reference == Against.MARKING ? Metric.WITH_MARKING : Metric.WITH_LEADER;
    }

    private static List<PlayerBar> those(List<PlayerBar> all, Predicate<PlayerBar> which) {
        return all.stream().filter(which).toList();
    }

    private static Optional<Tried> share(
            Metric metric, Of of, String name, List<PlayerBar> playerBars, double smallest) {
        List<PlayerBar> both = those(playerBars, b -> b.difference().isPresent());
        return tried(
                metric,
                of,
                name,
                both.stream().map(b -> b.difference().orElseThrow()).toList(),
                both,
                smallest);
    }

    /** A misread stroke of the leader's makes all others differ in that bar: bars are the pairs. */
    private Optional<Tried> withLeader(List<PlayerBar> playerBars) {
        List<PlayerBar> both = those(playerBars, b -> b.difference().isPresent());
        List<Double> differences = common.bars().stream()
                .map(bar -> both.stream()
                        .filter(b -> b.bar().equals(bar))
                        .mapToDouble(b -> b.difference().orElseThrow())
                        .average())
                .flatMap(d -> d.stream().boxed())
                .toList();
        return tried(Metric.WITH_LEADER, Of.SECTION, "", differences, both, PLAYER_SHARE);
    }

    private static Optional<Tried> tried(
            Metric metric, Of of, String name, List<Double> differences, List<PlayerBar> both, double smallest) {
        Tally before = both.stream().map(PlayerBar::first).reduce(Tally.NONE, Tally::plus);
        Tally after = both.stream().map(PlayerBar::second).reduce(Tally.NONE, Tally::plus);
        return both.isEmpty()
                ? Optional.empty()
                : Optional.of(new Tried(
                        metric, of, name, differences, before.share(), after.share(), smallest, Optional.empty()));
    }

    private Optional<Tried> spread() {
        List<double[]> pairs = common.bars().stream()
                .map(bar -> pair(before.spreadMs(common.players(), bar), after.spreadMs(common.players(), bar)))
                .flatMap(Optional::stream)
                .toList();
        return times(Metric.CHANGE_SPREAD, Of.SECTION, "", pairs, SPREAD_MS);
    }

    private Optional<Tried> lag(String player) {
        OptionalDouble seenBefore = before.player(player).orElseThrow().smallestMs();
        OptionalDouble seenAfter = after.player(player).orElseThrow().smallestMs();
        if (seenBefore.isEmpty() || seenAfter.isEmpty()) {
            return Optional.empty();
        }
        List<double[]> pairs = common.bars().stream()
                .map(bar -> pair(median(before.lagsMs(player, bar)), median(after.lagsMs(player, bar))))
                .flatMap(Optional::stream)
                .toList();
        return times(
                Metric.LAG, Of.PLAYER, player, pairs, Math.hypot(seenBefore.getAsDouble(), seenAfter.getAsDouble()));
    }

    private static Optional<double[]> pair(Optional<Double> before, Optional<Double> after) {
        return before.flatMap(b -> after.map(a -> new double[] {b, a}));
    }

    private static Optional<Double> median(List<Double> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(Quantiles.median(values));
    }

    private static Optional<Tried> times(Metric metric, Of of, String name, List<double[]> pairs, double smallestMs) {
        return pairs.isEmpty()
                ? Optional.empty()
                : Optional.of(new Tried(
                        metric,
                        of,
                        name,
                        pairs.stream().map(p -> p[1] - p[0]).toList(),
                        Quantiles.median(pairs.stream().map(p -> p[0]).toList()),
                        Quantiles.median(pairs.stream().map(p -> p[1]).toList()),
                        smallestMs,
                        Optional.empty()));
    }

    private interface SoundTest {
        Optional<PairedDifference> of(List<BarEvenness> first, List<BarEvenness> second);
    }

    private Optional<Tried> sound(Metric metric, Function<BarEvenness, OptionalDouble> figure, SoundTest test) {
        Map<String, Double> one = EvennessComparing.byBar(first.evenness(), figure);
        Map<String, Double> other = EvennessComparing.byBar(second.evenness(), figure);
        List<String> bars = one.keySet().stream().filter(other::containsKey).toList();
        return test.of(first.evenness(), second.evenness())
                .map(d -> new Tried(
                        metric,
                        Of.SECTION,
                        "",
                        bars.stream().map(b -> other.get(b) - one.get(b)).toList(),
                        mean(bars, one),
                        mean(bars, other),
                        0,
                        Optional.of(d)));
    }

    private static double mean(List<String> bars, Map<String, Double> values) {
        return bars.stream().mapToDouble(values::get).average().orElseThrow();
    }
}
