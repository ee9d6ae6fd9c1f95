package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;

/**
 * A bar as it was played, by its beats' indices in the beat map; a repeated bar is a run of its own.
 *
 * @param lastIndex inclusive
 */
public record BarRun(String bar, int firstIndex, int lastIndex) {
    public int beatCount() {
        return lastIndex - firstIndex + 1;
    }

    /** The runs in the order played. */
    public static List<BarRun> of(BeatMap map) {
        List<BarRun> runs = new ArrayList<>();
        List<Beat> beats = map.beats();
        int start = 0;
        for (int i = 1; i <= beats.size(); i++) {
            if (i == beats.size() || startsBar(beats.get(i - 1), beats.get(i))) {
                runs.add(new BarRun(beats.get(start).bar(), start, i - 1));
                start = i;
            }
        }
        return List.copyOf(runs);
    }

    private static boolean startsBar(Beat before, Beat beat) {
        return !beat.bar().equals(before.bar()) || beat.beat() <= before.beat();
    }
}
