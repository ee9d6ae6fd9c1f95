package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;

/**
 * The section chart's measures: bars broken into systems as on a printed page, a new one after each stop. Lengths are pixels.
 *
 * @param systems the bars of each system
 * @param large whether the section is so large that its cells are narrower
 */
record Systems(List<List<BarRun>> systems, boolean large, int cellWidthPx, int cellHeightPx, int rows) {
    static final int NAMES_PX = 180;
    static final int BAR_NUMBERS_PX = 22;
    static final int GAP_PX = 28;

    /** A section larger than this is drawn with narrower cells, and more bars a system. */
    private static final int LARGE_SECTION = 20;

    /** Bars in a system of a small section (common practice in printed parts). */
    private static final int BARS = 8;

    private static final int BEATS = 32;

    /** So that a system fits on a page 900 px wide. */
    private static final int CELL_WIDTH_PX = 20;

    private static final int BEATS_LARGE = 64;

    static Systems of(BeatMap beats, int players, int rows) {
        boolean large = players > LARGE_SECTION;
        int mostBars = large ? 2 * BARS : BARS;
        int mostBeats = large ? BEATS_LARGE : BEATS;
        List<BarRun> bars = BarRun.of(beats);
        List<List<BarRun>> systems = new ArrayList<>();
        for (Run run : beats.runs()) {
            systems.addAll(even(
                    bars.stream().filter(bar -> run.holds(bar.firstIndex())).toList(), mostBars, mostBeats));
        }
        return new Systems(List.copyOf(systems), large, large ? 18 : CELL_WIDTH_PX, large ? 18 : 24, rows);
    }

    /** Bars played without a stop, about as many in every system. */
    private static List<List<BarRun>> even(List<BarRun> bars, int mostBars, int mostBeats) {
        int needed = broken(bars, mostBars, mostBeats).size();
        int evenly = (bars.size() + needed - 1) / needed;
        return broken(bars, evenly, mostBeats);
    }

    /** Bars in systems that are not longer than said, unless a single bar is. */
    static List<List<BarRun>> broken(List<BarRun> bars, int mostBars, int mostBeats) {
        List<List<BarRun>> systems = new ArrayList<>();
        List<BarRun> system = new ArrayList<>();
        int beats = 0;
        for (BarRun bar : bars) {
            boolean full = system.size() == mostBars || beats + bar.beatCount() > mostBeats;
            if (full && !system.isEmpty()) {
                systems.add(List.copyOf(system));
                system.clear();
                beats = 0;
            }
            system.add(bar);
            beats += bar.beatCount();
        }
        systems.add(List.copyOf(system));
        return List.copyOf(systems);
    }

    int widthPx() {
        int beats = systems.stream().mapToInt(Systems::beats).max().orElse(0);
        return NAMES_PX + beats * cellWidthPx;
    }

    int systemHeightPx() {
        return BAR_NUMBERS_PX + rows * cellHeightPx;
    }

    int heightPx() {
        return systems.size() * (systemHeightPx() + GAP_PX);
    }

    static int beats(List<BarRun> system) {
        return system.stream().mapToInt(BarRun::beatCount).sum();
    }
}
