package tuttarco.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Metric;

/**
 * What changed from one take to another, and whether that is more than noise.
 *
 * @param common what the two have in common; all figures rest on that alone
 * @param reference what the bows are compared with: the marking where both takes have one, else the leader; empty where
 *     neither will do
 * @param playerBars how each common player went in each common bar, player by player
 * @param changes the section's figures, then the players', then the bars'
 * @param stretches where the readings of the two differ most, the greatest first; more than a hint only where a claim agrees
 */
public record TakeAgainstTake(
        TakeOnRecord first,
        TakeOnRecord second,
        LinedUp common,
        Optional<Against> reference,
        List<PlayerBar> playerBars,
        List<Changed> changes,
        List<Stretch> stretches) {
    public TakeAgainstTake {
        playerBars = List.copyOf(playerBars);
        changes = List.copyOf(changes);
        stretches = List.copyOf(stretches);
    }

    /** Sets the second take beside the first; takes without a bar or a player in common have nothing to show. */
    public static TakeAgainstTake of(TakeOnRecord first, TakeOnRecord second) {
        return new TakeComparing(first, second).compared();
    }

    /**
     * The last take beside the first, then, of more than two, each beside the one before it.
     *
     * @param takes at least two, in the order played
     */
    public static List<TakeAgainstTake> among(List<TakeOnRecord> takes) {
        if (takes.size() < 2) {
            throw new IllegalArgumentException("one take alone has none to be set beside");
        }
        List<TakeAgainstTake> pairs = new ArrayList<>(List.of(of(takes.get(0), takes.get(takes.size() - 1))));
        for (int i = 1; i < takes.size() && takes.size() > 2; i++) {
            pairs.add(of(takes.get(i - 1), takes.get(i)));
        }
        return List.copyOf(pairs);
    }

    /** Changes that are shown, in the order of all. */
    public List<Changed> shown() {
        return changes.stream().filter(c -> c.claim().shown()).toList();
    }

    /** What became of a figure; empty where there was nothing to compare. */
    public Optional<Changed> of(Metric metric, Changed.Of of, String name) {
        return changes.stream()
                .filter(c -> c.metric() == metric && c.of() == of && c.name().equals(name))
                .findFirst();
    }

    /** All common players' beats of a common bar in the first take, or in the second. */
    public Tally bar(String bar, boolean inFirst) {
        return playerBars.stream()
                .filter(b -> b.bar().equals(bar))
                .map(inFirst ? PlayerBar::first : PlayerBar::second)
                .reduce(Tally.NONE, Tally::plus);
    }
}
