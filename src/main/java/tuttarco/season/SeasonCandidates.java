package tuttarco.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Verdict;
import tuttarco.season.SeasonCandidate.InTake;
import tuttarco.stats.ChanceCount;
import tuttarco.stats.Holm;
import tuttarco.stats.SeveralOf;

/**
 * Finds bars that are left in the same way take after take, be it by many players or by a few each time.
 *
 * <p>On a beat marked down there is one way to leave it. So each beat that is marked alike in two takes or more is asked: in how
 * many takes was it left by more players than would leave, or be misread on, any beat? Each player has a chance of that of
 * his or her own in each take, by how often it happened in the take's other bars; how many come together by chance gives each
 * take a probability, and those of the takes together say whether more than half of them show it. Holm's procedure over all
 * beats of the season keeps a false bar in a whole season as seldom as {@link #LEVEL}. Players are taken to be misread
 * independently of each other; a take in which a whole desk went astray for a reason of its own counts as one take.
 */
final class SeasonCandidates {
    /** At most one season in a hundred may show a bar by chance. */
    private static final double LEVEL = 0.01;

    private final List<TakeOnRecord> takes;

    /** For each take the indices of its beats by place. */
    private final List<Map<Marked, List<Integer>>> placed;

    private final List<List<Rates>> rates;

    /** A beat of the part as it was marked. */
    private record Marked(String bar, int beat, BowDirection direction) {}

    private SeasonCandidates(List<TakeOnRecord> takes) {
        this.takes = takes;
        this.placed = takes.stream().map(SeasonCandidates::placed).toList();
        this.rates = takes.stream()
                .map(t -> t.players().stream()
                        .map(p -> new Rates(t.beats(), p.verdicts()))
                        .toList())
                .toList();
    }

    private static Map<Marked, List<Integer>> placed(TakeOnRecord take) {
        Map<Marked, List<Integer>> placed = new LinkedHashMap<>();
        if (take.marked() && Season.counts(take)) {
            IntStream.range(0, take.beats().size()).forEach(i -> {
                BeatOnRecord beat = take.beats().get(i);
                beat.marked()
                        .map(direction -> new Marked(beat.bar(), beat.beat(), direction))
                        .ifPresent(at -> placed.computeIfAbsent(at, a -> new ArrayList<>())
                                .add(i));
            });
        }
        return placed;
    }

    /** How often a player was against, in all and by bar. */
    private static final class Rates {
        private final Map<String, int[]> byBar = new HashMap<>();
        private final int[] all = new int[2];

        Rates(List<BeatOnRecord> beats, List<Verdict> verdicts) {
            for (int i = 0; i < beats.size(); i++) {
                int against = verdicts.get(i) == Verdict.AGAINST ? 1 : 0;
                int judged = against + (verdicts.get(i) == Verdict.WITH ? 1 : 0);
                int[] bar = byBar.computeIfAbsent(beats.get(i).bar(), b -> new int[2]);
                bar[0] += against;
                bar[1] += judged;
                all[0] += against;
                all[1] += judged;
            }
        }

        /** Chance of being against on a beat of a bar, by the other bars; never quite none, by Laplace's rule of succession. */
        double outside(String bar) {
            int[] in = byBar.get(bar);
            return (all[0] - in[0] + 1.0) / (all[1] - in[1] + 2.0);
        }
    }

    static List<SeasonCandidate> in(List<TakeOnRecord> takes) {
        return new SeasonCandidates(takes).found();
    }

    private List<SeasonCandidate> found() {
        Map<Marked, List<Double>> ps = new LinkedHashMap<>();
        for (int take = 0; take < takes.size(); take++) {
            for (Marked at : placed.get(take).keySet()) {
                chance(take, at)
                        .ifPresent(p ->
                                ps.computeIfAbsent(at, a -> new ArrayList<>()).add(p));
            }
        }
        ps.values().removeIf(p -> p.size() < 2);
        List<Marked> asked = List.copyOf(ps.keySet());
        List<Double> adjusted = Holm.adjusted(asked.stream()
                .map(ps::get)
                .map(p -> SeveralOf.p(p, p.size() / 2 + 1))
                .toList());
        Map<String, TreeMap<Integer, Found>> bars = new LinkedHashMap<>();
        for (int i = 0; i < asked.size(); i++) {
            if (adjusted.get(i) <= LEVEL) {
                Marked at = asked.get(i);
                bars.computeIfAbsent(at.bar(), b -> new TreeMap<>())
                        .merge(
                                at.beat(),
                                new Found(at, adjusted.get(i)),
                                (one, other) -> one.p() <= other.p() ? one : other);
            }
        }
        return bars.values().stream()
                .map(beats -> candidate(List.copyOf(beats.values())))
                .toList();
    }

    private record Found(Marked at, double p) {}

    /** Probability that so many left a beat in a take by chance; empty where nobody could be judged. */
    private Optional<Double> chance(int take, Marked at) {
        List<Double> chances = new ArrayList<>();
        int against = 0;
        for (int player = 0; player < takes.get(take).players().size(); player++) {
            List<Verdict> verdicts = takes.get(take).players().get(player).verdicts();
            double chance = rates.get(take).get(player).outside(at.bar());
            for (int beat : placed.get(take).get(at)) {
                if (verdicts.get(beat) == Verdict.AGAINST) {
                    against++;
                    chances.add(chance);
                } else if (verdicts.get(beat) == Verdict.WITH) {
                    chances.add(chance);
                }
            }
        }
        return chances.isEmpty() ? Optional.empty() : Optional.of(ChanceCount.atLeast(against, chances));
    }

    private SeasonCandidate candidate(List<Found> left) {
        String bar = left.get(0).at().bar();
        List<Marked> beats = left.stream().map(Found::at).toList();
        List<InTake> inTakes = new ArrayList<>();
        Map<Marked, int[]> downAndUp = new HashMap<>();
        for (int take = 0; take < takes.size(); take++) {
            List<Integer> at = indices(take, beats);
            if (!at.isEmpty()) {
                InTake inTake = inTake(take, at, bar, downAndUp);
                if (inTake.judged() > 0) {
                    inTakes.add(inTake);
                }
            }
        }
        return new SeasonCandidate(
                bar,
                downAndUp.entrySet().stream()
                        .map(e -> new SeasonCandidate.Beat(
                                e.getKey().beat(),
                                e.getKey().direction(),
                                beats.contains(e.getKey()),
                                most(e.getValue())))
                        .sorted(Comparator.comparingInt(SeasonCandidate.Beat::beat)
                                .thenComparing(SeasonCandidate.Beat::marked))
                        .toList(),
                inTakes,
                left.stream().mapToDouble(Found::p).min().orElseThrow());
    }

    private List<Integer> indices(int take, List<Marked> beats) {
        return beats.stream()
                .flatMap(b -> placed.get(take).getOrDefault(b, List.of()).stream())
                .toList();
    }

    /** Also counts what those who left did on all beats of the bar. */
    private InTake inTake(int take, List<Integer> at, String bar, Map<Marked, int[]> downAndUp) {
        List<String> left = new ArrayList<>();
        int judged = 0;
        for (PlayerOnRecord player : takes.get(take).players()) {
            boolean against = at.stream().anyMatch(i -> player.verdicts().get(i) == Verdict.AGAINST);
            boolean with = at.stream().anyMatch(i -> player.verdicts().get(i) == Verdict.WITH);
            judged += against || with ? 1 : 0;
            if (against) {
                left.add(player.label());
            }
            placed.get(take).forEach((beat, indices) -> {
                if (beat.bar().equals(bar)) {
                    int[] count = downAndUp.computeIfAbsent(beat, b -> new int[2]);
                    indices.stream()
                            .filter(i -> against)
                            .flatMap(i -> player.played().get(i).direction().stream())
                            .forEach(d -> count[d.ordinal()]++);
                }
            });
        }
        return new InTake(take, left, judged);
    }

    private static Optional<BowDirection> most(int[] downAndUp) {
        return downAndUp[0] == downAndUp[1]
                ? Optional.empty()
                : Optional.of(downAndUp[0] > downAndUp[1] ? BowDirection.DOWN : BowDirection.UP);
    }
}
