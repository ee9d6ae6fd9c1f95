package tuttarco.season;

import java.util.List;

/**
 * Bars that were played in the same takes.
 *
 * @param bars by printed number, in the order of the part; adjoining ones in a {@linkplain Season#passages() passage}
 * @param takes index of each take that holds them all, in the season's order
 */
public record Passage(List<String> bars, List<Integer> takes) {
    public Passage {
        bars = List.copyOf(bars);
        takes = List.copyOf(takes);
    }

    public String firstBar() {
        return bars.get(0);
    }

    public String lastBar() {
        return bars.get(bars.size() - 1);
    }
}
