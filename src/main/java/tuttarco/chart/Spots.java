package tuttarco.chart;

import java.util.Comparator;
import java.util.List;
import tuttarco.compare.Divergence;
import tuttarco.seats.Player;

/** Which divergences to look at first: those with the most players over the most beats that are the surest. */
public final class Spots {
    private static final Comparator<Divergence> FIRST =
            Comparator.comparingDouble(Spots::weight).reversed().thenComparingInt(Divergence::firstIndex);

    private Spots() {}

    /** Player-beats times confidence. */
    static double weight(Divergence divergence) {
        return divergence.players().size() * divergence.beatCount() * divergence.confidence();
    }

    /** The divergences in the order to rehearse them. */
    public static List<Divergence> inOrder(List<Divergence> divergences) {
        return divergences.stream().sorted(FIRST).toList();
    }

    /** Those of one reference in the order to rehearse them. */
    public static List<Divergence> against(List<Divergence> divergences, Divergence.Against reference) {
        return inOrder(
                divergences.stream().filter(d -> d.against() == reference).toList());
    }

    /** One player's of one reference, in the order played. */
    public static List<Divergence> of(Player player, List<Divergence> divergences, Divergence.Against reference) {
        return divergences.stream()
                .filter(d -> d.against() == reference && d.players().contains(player))
                .sorted(Comparator.comparingInt(Divergence::firstIndex))
                .toList();
    }
}
