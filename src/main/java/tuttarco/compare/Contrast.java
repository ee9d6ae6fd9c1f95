package tuttarco.compare;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.stats.Holm;
import tuttarco.stats.Permutation;

/**
 * Two groups of players side by side. Beats of one player hang together, so the players are what is compared: each one's
 * share with the marking, or with the leader where nothing is marked.
 *
 * @param oneShare mean share of the players of the one group, 0 to 1; {@code otherShare} of the other
 * @param p probability of means at least so far apart if the groups meant nothing, adjusted over the contrasts
 */
public record Contrast(Scope one, Scope other, double oneShare, double otherShare, double p) {
    /** Fewer players a group can't show anything. */
    private static final int LEAST_PLAYERS = 2;

    static List<Contrast> in(Comparison comparison) {
        List<Scope> groups = Scope.groups(comparison.players());
        return adjusted(Stream.of(
                        between(comparison, groups, Scope.OfPlace.class),
                        between(comparison, groups, Scope.OfHalf.class))
                .flatMap(Optional::stream)
                .toList());
    }

    private static Optional<Contrast> between(Comparison comparison, List<Scope> groups, Class<? extends Scope> sort) {
        List<Scope> two = groups.stream().filter(sort::isInstance).toList();
        if (two.size() < 2) {
            return Optional.empty();
        }
        List<Double> one = shares(comparison, two.get(0));
        List<Double> other = shares(comparison, two.get(1));
        return Math.min(one.size(), other.size()) < LEAST_PLAYERS
                ? Optional.empty()
                : Optional.of(new Contrast(two.get(0), two.get(1), mean(one), mean(other), Permutation.p(one, other)));
    }

    private static List<Double> shares(Comparison comparison, Scope group) {
        return IntStream.range(0, comparison.players().size())
                .filter(i -> group.holds(comparison.players().get(i)))
                .mapToObj(i -> share(comparison, comparison.beatReadings().get(i)))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Double> share(Comparison comparison, List<BeatReading> player) {
        List<Verdict> verdicts = player.stream()
                .map(r -> comparison.marked() ? r.verdict() : r.leaderVerdict())
                .toList();
        double with = Collections.frequency(verdicts, Verdict.WITH);
        double judged = with + Collections.frequency(verdicts, Verdict.AGAINST);
        return judged == 0 ? Optional.empty() : Optional.of(with / judged);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static List<Contrast> adjusted(List<Contrast> contrasts) {
        List<Double> ps = Holm.adjusted(contrasts.stream().map(Contrast::p).toList());
        return IntStream.range(0, contrasts.size())
                .mapToObj(i -> contrasts.get(i).withP(ps.get(i)))
                .toList();
    }

    private Contrast withP(double adjusted) {
        return new Contrast(one, other, oneShare, otherShare, adjusted);
    }
}
