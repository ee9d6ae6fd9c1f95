package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.compare.Departure.BackAt;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;

/**
 * Where to work first: the stretches of a comparison gathered by cause, those that weigh most first.
 *
 * <p>One cause have, within a run: players who left within a beat of each other, wherever they found back; a player whose desk
 * partner is away already; a player who was not seen back since the last stretch; and all who bow freely at the same time.
 * Apart from the leader counts only what is not told already: where the player left the marking at the same time, or the
 * leader did, that is the cause.
 */
public final class RehearsalList {
    /** How far apart, beats, players may leave for one cause (chosen, as for divergences). */
    private static final int SAME_CAUSE_BEATS = 1;

    private final Comparison comparison;
    private final List<List<Departure>> causes = new ArrayList<>();

    private RehearsalList(Comparison comparison) {
        this.comparison = comparison;
    }

    /** The spots in the order to rehearse them. */
    public static List<Spot> of(Comparison comparison) {
        List<Spot> spots = new ArrayList<>();
        for (Against against : Against.values()) {
            for (Standing standing : List.of(Standing.TURNED, Standing.FREE)) {
                new RehearsalList(comparison)
                        .gathered(against, standing)
                        .forEach(cause -> spots.add(new Spot(against, standing, cause)));
            }
        }
        return spots.stream()
                .sorted(Comparator.comparingDouble(Spot::weight).reversed().thenComparingInt(Spot::firstIndex))
                .toList();
    }

    private List<List<Departure>> gathered(Against against, Standing standing) {
        comparison.divergences().stream()
                .filter(d -> d.against() == against && d.standing() == standing)
                .flatMap(d -> d.departures().stream())
                .filter(d -> against == Against.MARKING || !toldAlready(d))
                .sorted(Comparator.comparingInt(Departure::firstIndex)
                        .thenComparing(Departure::player, SectionOrder.COMPARATOR))
                .forEach(d -> causes.stream()
                        .filter(cause -> sameCause(cause, d, standing))
                        .findFirst()
                        .ifPresentOrElse(cause -> cause.add(d), () -> causes.add(new ArrayList<>(List.of(d)))));
        return causes;
    }

    private boolean toldAlready(Departure fromLeader) {
        return comparison.divergences().stream()
                .filter(d -> d.against() == Against.MARKING)
                .flatMap(d -> d.departures().stream())
                .anyMatch(d -> d.meets(fromLeader)
                        && (d.player().leader() || d.player().equals(fromLeader.player())));
    }

    private boolean sameCause(List<Departure> cause, Departure next, Standing standing) {
        BeatMap beats = comparison.beats();
        if (!beats.runOf(cause.get(0).firstIndex()).equals(beats.runOf(next.firstIndex()))) {
            return false;
        }
        return next.firstIndex() - cause.get(0).firstIndex() <= SAME_CAUSE_BEATS
                || cause.stream()
                        .anyMatch(d ->
                                d.meets(next) && (standing == Standing.FREE || sameDesk(d.player(), next.player())))
                || cause.stream().anyMatch(d -> d.player().equals(next.player()) && !backBefore(d, next));
    }

    private static boolean sameDesk(Player a, Player b) {
        return a.desk() == b.desk();
    }

    private static boolean backBefore(Departure earlier, Departure later) {
        return Optional.of(earlier.back())
                .filter(BackAt.class::isInstance)
                .filter(b -> ((BackAt) b).index() < later.firstIndex())
                .isPresent();
    }
}
