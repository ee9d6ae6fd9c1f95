package tuttarco.chart;

import java.util.List;
import org.jfree.chart.JFreeChart;

/** A picture of something that was compared, and the same in words and figures for who can't see it. */
public interface Chart {
    /** The chart's file name without ending: lower-case letters, digits and hyphens. */
    String key();

    /** What the picture shows, in one line. */
    String title();

    /** How to read it, in a sentence or two. */
    String help();

    int widthPx();

    int heightPx();

    /** Where the picture may be cut so that each piece fits on paper, pixels from its top; nowhere where it stays whole. */
    default List<Integer> cutsPx() {
        return List.of();
    }

    /** Draws nothing yet; a fresh chart at each call, equal for equal findings. */
    JFreeChart draw();

    /** What the picture shows, as a table. */
    ChartTable table();
}
