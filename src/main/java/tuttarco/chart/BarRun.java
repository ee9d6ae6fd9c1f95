package tuttarco.chart;

import java.util.List;
import java.util.stream.IntStream;
import tuttarco.beats.BeatMap;

/**
 * Beats that are drawn together: a bar as it was played, or where no bars are known a few of the leader's strokes, named by
 * the number of the first. A bar is given by its beats' indices in the beat map; a repeated bar is a run of its own.
 *
 * @param lastIndex inclusive
 */
public record BarRun(String bar, int firstIndex, int lastIndex) {
    /** How many of the leader's strokes are drawn together where no bars are known (chosen: as beats in a bar of 4/4). */
    private static final int STROKES_TOGETHER = 4;

    public int beatCount() {
        return lastIndex - firstIndex + 1;
    }

    /** Whether a beat, counted from 0, carries the lesser stress in the middle of a bar of four or six (common practice). */
    public boolean strong(int beatFromZero) {
        return (beatCount() == 4 || beatCount() == 6) && beatFromZero == beatCount() / 2;
    }

    /** The runs in the order played. */
    public static List<BarRun> of(BeatMap map) {
        if (!map.inBars()) {
            return strokes(map.beats().size());
        }
        return map.bars().stream()
                .map(b -> new BarRun(b.number(), b.firstIndex(), b.lastIndex()))
                .toList();
    }

    private static List<BarRun> strokes(int count) {
        return IntStream.iterate(0, first -> first < count, first -> first + STROKES_TOGETHER)
                .mapToObj(first ->
                        new BarRun(Integer.toString(first + 1), first, Math.min(count, first + STROKES_TOGETHER) - 1))
                .toList();
    }
}
