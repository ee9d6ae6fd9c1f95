package tuttarco.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;

/**
 * A place worth rehearsing: stretches of one cause.
 *
 * @param departures in the order they began, those that began together in section order; at least one
 */
public record Spot(Against against, Standing standing, List<Departure> departures) {
    public Spot {
        departures = List.copyOf(departures);
        if (departures.isEmpty()) {
            throw new IllegalArgumentException("a spot is somebody's");
        }
    }

    /** A desk partner who did the same later. */
    public record Followed(Player first, Player second, int beatsLater) {}

    /** Index in the beat map of the first beat somebody left on. */
    public int firstIndex() {
        return departures.stream().mapToInt(Departure::firstIndex).min().orElseThrow();
    }

    /** Index in the beat map of the last beat somebody was away on. */
    public int lastIndex() {
        return departures.stream().mapToInt(Departure::lastIndex).max().orElseThrow();
    }

    /** In section order. */
    public List<Player> players() {
        return departures.stream()
                .map(Departure::player)
                .distinct()
                .sorted(SectionOrder.COMPARATOR)
                .toList();
    }

    /** What to rehearse first: beats of all players, each times its confidence. */
    public double weight() {
        return departures.stream()
                .mapToDouble(d -> d.beatCount() * d.confidence())
                .sum();
    }

    /** Mean over the beats of all players. */
    public double confidence() {
        return weight() / departures.stream().mapToInt(Departure::beatCount).sum();
    }

    /** Who did it first at each desk where both did, and how much later the other one. */
    public List<Followed> followed() {
        return departures.stream()
                .flatMap(first -> departures.stream()
                        .filter(second -> second.player().desk()
                                        == first.player().desk()
                                && second.player().place() != first.player().place()
                                && second.firstIndex() > first.firstIndex()
                                && second.meets(first))
                        .findFirst()
                        .map(second ->
                                new Followed(first.player(), second.player(), second.firstIndex() - first.firstIndex()))
                        .stream())
                .toList();
    }

    /** Index of the first beat on which all were back; empty where somebody was not seen back. */
    public Optional<Integer> backIndex() {
        List<Departure.Back> backs = lastOfEach().map(Departure::back).toList();
        return backs.stream().allMatch(Departure.BackAt.class::isInstance)
                ? backs.stream().map(b -> ((Departure.BackAt) b).index()).max(Integer::compare)
                : Optional.empty();
    }

    /** How those who were seen back found back, one entry a player. */
    public List<Departure.Way> waysBack() {
        return lastOfEach()
                .map(Departure::back)
                .filter(Departure.BackAt.class::isInstance)
                .map(b -> ((Departure.BackAt) b).way())
                .toList();
    }

    private Stream<Departure> lastOfEach() {
        return departures.stream()
                .filter(d -> departures.stream()
                        .noneMatch(o -> o.player().equals(d.player()) && o.firstIndex() > d.firstIndex()));
    }
}
