package tuttarco.seats;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Calls players by their desk and place instead of by their labels. Whoever sits in several takes has one such name. */
public final class DeskLabels {
    /** Who sits nowhere. */
    private static final String SOMEBODY = "Somebody";

    private final Map<String, String> called = new LinkedHashMap<>();
    private final boolean moved;

    /**
     * @param players of one take or of several, with equal labels for one player; named after the place given first, and of
     *     several named after one place the first has the plain name, others a number behind it
     */
    public DeskLabels(List<? extends AtDesk> players) {
        Map<String, Integer> times = new HashMap<>();
        Set<String> sat = new HashSet<>();
        for (AtDesk player : players) {
            String plain = Desks.label(player.desk(), player.place());
            if (!called.containsKey(player.label())) {
                int count = times.merge(plain, 1, Integer::sum);
                called.put(player.label(), count == 1 ? plain : plain + " " + count);
            }
            sat.add(player.label() + " " + plain);
        }
        moved = sat.size() > called.size();
    }

    /** What a player is called, by the label. */
    public String of(String label) {
        return called.getOrDefault(label, SOMEBODY);
    }

    /** What a reader must know of these names, a sentence; empty where everybody kept his or her place. */
    public Optional<String> note() {
        return moved
                ? Optional.of(
                        "Some players changed places: everybody is called by the desk and place where he or she sat"
                                + " last, wherever that was before.")
                : Optional.empty();
    }
}
