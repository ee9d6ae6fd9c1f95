package tuttarco.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import tuttarco.compare.Verdict;
import tuttarco.stats.Quantiles;

/** A take's figures by printed bar; all playings of a bar count together. */
final class TakeByBar {
    private final TakeOnRecord take;
    private final Map<String, List<Integer>> beats = new LinkedHashMap<>();
    private final Map<String, PlayerOnRecord> players = new LinkedHashMap<>();

    TakeByBar(TakeOnRecord take) {
        this.take = take;
        IntStream.range(0, take.beats().size())
                .filter(i -> !take.beats().get(i).bar().isEmpty())
                .forEach(i -> beats.computeIfAbsent(take.beats().get(i).bar(), b -> new ArrayList<>())
                        .add(i));
        take.players().forEach(p -> players.put(p.label(), p));
    }

    /** Printed bars in the order first played; none where no bars are known. */
    static Set<String> bars(TakeOnRecord take) {
        return new TakeByBar(take).beats.keySet();
    }

    /** Empty of somebody who was not there. */
    Optional<PlayerOnRecord> player(String label) {
        return Optional.ofNullable(players.get(label));
    }

    /** How often a player went with what the verdicts are about, in a bar. */
    Tally tally(Function<PlayerOnRecord, List<Verdict>> verdicts, String player, String bar) {
        List<Verdict> all = verdicts.apply(players.get(player));
        List<Verdict> inBar = beats.get(bar).stream().map(all::get).toList();
        int with = count(inBar, Verdict.WITH);
        return new Tally(with, with + count(inBar, Verdict.AGAINST), inBar.size() - count(inBar, Verdict.REST));
    }

    private static int count(List<Verdict> verdicts, Verdict verdict) {
        return (int) verdicts.stream().filter(v -> v == verdict).count();
    }

    /** Lags of a player's changes in a bar, milliseconds. */
    List<Double> lagsMs(String player, String bar) {
        return players.get(player).lags().stream()
                .filter(l -> take.beats().get(l.beat()).bar().equals(bar))
                .map(PlayerOnRecord.LagOnRecord::lagMs)
                .toList();
    }

    /** Range of the middle half of some players' changes, milliseconds, median over a bar's beats; empty of fewer than four. */
    Optional<Double> spreadMs(List<String> labels, String bar) {
        List<Double> spreadsMs = beats.get(bar).stream()
                .map(beat ->
                        labels.stream().flatMap(l -> lagMs(l, beat).stream()).toList())
                .filter(lagsMs -> lagsMs.size() >= Quantiles.LEAST_MIDDLE_HALF)
                .map(Quantiles::middleHalf)
                .toList();
        return spreadsMs.isEmpty() ? Optional.empty() : Optional.of(Quantiles.median(spreadsMs));
    }

    /** Of the leader, to whom the others' lags are, it is none wherever anybody's is known. */
    private Optional<Double> lagMs(String player, int beat) {
        PlayerOnRecord who = players.get(player);
        if (who.leader()) {
            return take.players().stream().flatMap(p -> p.lags().stream()).anyMatch(l -> l.beat() == beat)
                    ? Optional.of(0.0)
                    : Optional.empty();
        }
        return who.lags().stream()
                .filter(l -> l.beat() == beat)
                .map(PlayerOnRecord.LagOnRecord::lagMs)
                .findFirst();
    }
}
