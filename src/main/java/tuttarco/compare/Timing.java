package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.PlayerTiming.Measured;
import tuttarco.seats.Player;
import tuttarco.stats.Holm;
import tuttarco.stats.Interval;
import tuttarco.stats.MedianInterval;
import tuttarco.stats.Quantiles;
import tuttarco.stats.SignedRank;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Reading;

/**
 * Who changes late or early, measured from the leader's changes, or without a leader from the median of the others'.
 *
 * <p>A lag is claimed where three things hold: the signed-rank test says that the lags lie beyond what errors may do that
 * all changes of a player share, Holm's procedure over all players seen often enough included; the median is at least one
 * standard error of a single lag; and there are changes enough to say so at all. What changes share no number of them
 * averages out; the method page tells how large it was.
 *
 * @param toLeader whether the lags are to the leader
 * @param lags what the players' figures come from, in their order
 * @param players in section order, without the leader the lags are to
 */
public record Timing(boolean toLeader, List<Lag> lags, List<PlayerTiming> players) {
    /** Of fewer changes the signed-rank test can't reach one in twenty: 2 / 2^5 is more. */
    public static final int LEAST_CHANGES = 6;

    /** A lag is explained by shared errors up to so many of their standard deviations (usual: one in 370 is beyond). */
    private static final double SHARED_DEVIATIONS = 3;

    private static final double MS_PER_S = 1000;

    public Timing {
        lags = List.copyOf(lags);
        players = List.copyOf(players);
    }

    /** Players of whom something is claimed, in section order. */
    public List<PlayerTiming> claimed() {
        return players.stream()
                .filter(p -> p.claim() == Claim.LATE || p.claim() == Claim.EARLY)
                .toList();
    }

    static Timing of(Comparison comparison, List<Bows> bows, CompareSettings settings) {
        boolean toLeader = comparison.players().stream().anyMatch(Player::leader);
        List<Lag> lags = toLeader ? comparison.lags() : toOthers(comparison, readings(bows), settings);
        List<Lag> enough =
                lags.stream().filter(l -> l.changes() >= LEAST_CHANGES).toList();
        List<Double> ps = Holm.adjusted(enough.stream()
                .map(l -> p(lagsMs(l), sharedMs(l.player(), bows)))
                .toList());
        return new Timing(
                toLeader,
                lags,
                lags.stream()
                        .map(l -> {
                            int index = enough.indexOf(l);
                            return timing(l, index < 0 ? Optional.empty() : Optional.of(ps.get(index)), bows, settings);
                        })
                        .toList());
    }

    /** The players' figures as the files tell them. */
    List<Measure> measures() {
        return players.stream()
                .flatMap(p -> Stream.of(
                        measure(Metric.LAG, p, Measured::medianMs, l -> Optional.of(l.intervalMs())),
                        measure(Metric.LAG_SPREAD, p, Measured::spreadMs, l -> Optional.empty()),
                        measure(Metric.SMALLEST_LAG, p, Measured::smallestMs, l -> Optional.empty())))
                .toList();
    }

    private static Measure measure(
            Metric metric,
            PlayerTiming player,
            Function<Measured, Double> value,
            Function<Measured, Optional<Interval>> interval) {
        return new Measure(
                metric,
                new Scope.OfPlayer(player.player()),
                player.changes(),
                player.lag().map(value),
                player.lag().flatMap(interval));
    }

    private static PlayerTiming timing(Lag lag, Optional<Double> p, List<Bows> bows, CompareSettings settings) {
        Optional<Double> errorMs = errorMs(lag.player(), bows);
        if (lag.pairs().isEmpty() || errorMs.isEmpty()) {
            return new PlayerTiming(lag.player(), lag.changes(), Optional.empty(), Claim.TOO_FEW);
        }
        List<Double> lagsMs = lagsMs(lag);
        double medianMs = Quantiles.median(lagsMs);
        Measured measured = new Measured(
                medianMs,
                Quantiles.middleHalf(lagsMs),
                MedianInterval.of(lagsMs, settings.level()),
                Math.max(errorMs.get(), sharedMs(lag.player(), bows)),
                p.orElse(1.0));
        return new PlayerTiming(lag.player(), lag.changes(), Optional.of(measured), claim(measured, p, settings));
    }

    private static Claim claim(Measured lag, Optional<Double> p, CompareSettings settings) {
        if (p.isEmpty()) {
            return Claim.TOO_FEW;
        }
        if (p.get() > 1 - settings.level() || Math.abs(lag.medianMs()) < lag.smallestMs()) {
            return Claim.NONE;
        }
        return lag.medianMs() > 0 ? Claim.LATE : Claim.EARLY;
    }

    private static List<Double> lagsMs(Lag lag) {
        return lag.pairs().stream().map(Lag.Pair::lagMs).toList();
    }

    /** Probability that lags lie so far beyond shared errors by chance; 1 where they don't. */
    private static double p(List<Double> lagsMs, double sharedMs) {
        double medianMs = Quantiles.median(lagsMs);
        double explainedMs = Math.copySign(sharedMs, medianMs);
        return Math.abs(medianMs) <= sharedMs
                ? 1
                : SignedRank.of(lagsMs.stream().map(l -> l - explainedMs).toList())
                        .p();
    }

    /** Standard error of a single lag, milliseconds. */
    private static Optional<Double> errorMs(Player player, List<Bows> bows) {
        return errorOfLagMs(player, bows, Timing::changeErrorS);
    }

    /** Up to where a lag is explained by what the changes of both players may be off by alike, milliseconds. */
    private static double sharedMs(Player player, List<Bows> bows) {
        return SHARED_DEVIATIONS
                * errorOfLagMs(player, bows, b -> Optional.of(b.sharedErrorS())).orElse(0.0);
    }

    /**
     * What the errors of two players make of a lag, milliseconds: the player's own and the leader's; without a leader, that of a
     * usual player in the leader's place.
     */
    private static Optional<Double> errorOfLagMs(
            Player player, List<Bows> bows, Function<Bows, Optional<Double>> errorS) {
        Optional<Double> ownS =
                bows.stream().filter(b -> b.player().equals(player)).findFirst().flatMap(errorS);
        Optional<Double> leaderS =
                bows.stream().filter(b -> b.player().leader()).findFirst().flatMap(errorS);
        Optional<Double> otherS = leaderS.or(() ->
                median(bows.stream().flatMap(b -> errorS.apply(b).stream()).toList()));
        return ownS.flatMap(own -> otherS.map(other -> MS_PER_S * Math.hypot(own, other)));
    }

    /** Median standard error of a player's changes, seconds. */
    private static Optional<Double> changeErrorS(Bows player) {
        List<Double> errorsS = new ArrayList<>();
        for (int i = 1; i < player.bows().size(); i++) {
            Bow before = player.bows().get(i - 1);
            Bow after = player.bows().get(i);
            boolean change = before.stroke().kind().direction().isPresent()
                    && after.stroke().kind().direction().isPresent()
                    && before.stroke().kind() != after.stroke().kind();
            if (change && after.start() instanceof Edge.Change edge) {
                errorsS.add(edge.standardErrorS());
            }
        }
        return median(errorsS);
    }

    private static Optional<Double> median(List<Double> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(Quantiles.median(values));
    }

    static List<Reading> readings(List<Bows> bows) {
        return bows.stream()
                .map(b -> new Reading(
                        b.player(), b.bows().stream().map(Bow::stroke).toList()))
                .sorted(Comparator.comparing(Reading::player, SectionOrder.COMPARATOR))
                .toList();
    }

    /** Lags to the median of the others, for each change seen of the player and of three others. */
    private static List<Lag> toOthers(Comparison comparison, List<Reading> section, CompareSettings settings) {
        Changes changes = Changes.of(comparison, section, settings);
        return section.stream()
                .map(r -> new Lag(
                        r.player(),
                        changes.changes().stream()
                                .flatMap(c -> c.toOthers(r.player()).stream())
                                .toList()))
                .toList();
    }
}
