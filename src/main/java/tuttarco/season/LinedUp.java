package tuttarco.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tuttarco.bow.BowDirection;

/**
 * What two takes have in common: bars by their printed numbers, whatever the tempo and however often they were played, and
 * players by their labels, wherever they sat.
 *
 * @param bars in both takes, in the order of the first
 * @param firstOnlyBars in the first take only; {@code secondOnlyBars} in the second only
 * @param players in both takes, by label, in the order of the first
 * @param firstOnlyPlayers in the first take only; {@code secondOnlyPlayers} in the second only
 * @param remarkedBars of the bars in both, those marked otherwise in the second take, in part or whole
 */
public record LinedUp(
        List<String> bars,
        List<String> firstOnlyBars,
        List<String> secondOnlyBars,
        List<String> players,
        List<String> firstOnlyPlayers,
        List<String> secondOnlyPlayers,
        List<String> remarkedBars) {
    public LinedUp {
        bars = List.copyOf(bars);
        firstOnlyBars = List.copyOf(firstOnlyBars);
        secondOnlyBars = List.copyOf(secondOnlyBars);
        players = List.copyOf(players);
        firstOnlyPlayers = List.copyOf(firstOnlyPlayers);
        secondOnlyPlayers = List.copyOf(secondOnlyPlayers);
        remarkedBars = List.copyOf(remarkedBars);
    }

    /** Lines two takes up; a take without bars has none in common with any. */
    public static LinedUp of(TakeOnRecord first, TakeOnRecord second) {
        Set<String> before = TakeByBar.bars(first);
        Set<String> after = TakeByBar.bars(second);
        List<String> playersBefore = labels(first);
        List<String> playersAfter = labels(second);
        List<String> bars = before.stream().filter(after::contains).toList();
        return new LinedUp(
                bars,
                before.stream().filter(b -> !after.contains(b)).toList(),
                after.stream().filter(b -> !before.contains(b)).toList(),
                playersBefore.stream().filter(playersAfter::contains).toList(),
                playersBefore.stream().filter(p -> !playersAfter.contains(p)).toList(),
                playersAfter.stream().filter(p -> !playersBefore.contains(p)).toList(),
                remarked(bars, marking(first), marking(second)));
    }

    /** Whether there is a bar and a player in both. */
    public boolean anything() {
        return !bars.isEmpty() && !players.isEmpty();
    }

    private static List<String> labels(TakeOnRecord take) {
        return take.players().stream().map(PlayerOnRecord::label).toList();
    }

    /** A beat of the part. */
    private record Place(String bar, int beat) {}

    private static Map<Place, Optional<BowDirection>> marking(TakeOnRecord take) {
        Map<Place, Optional<BowDirection>> marking = new LinkedHashMap<>();
        take.beats().forEach(b -> marking.putIfAbsent(new Place(b.bar(), b.beat()), b.marked()));
        return marking;
    }

    /** Beats that one take has not, such as those before an entry in mid-bar, say nothing. */
    private static List<String> remarked(
            List<String> bars, Map<Place, Optional<BowDirection>> before, Map<Place, Optional<BowDirection>> after) {
        List<String> remarked = new ArrayList<>();
        before.forEach((place, direction) -> {
            if (after.containsKey(place) && !after.get(place).equals(direction) && !remarked.contains(place.bar())) {
                remarked.add(place.bar());
            }
        });
        return bars.stream().filter(remarked::contains).toList();
    }
}
