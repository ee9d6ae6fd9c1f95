package tuttarco.chart;

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

    /** Draws nothing yet; a fresh chart at each call, equal for equal findings. */
    JFreeChart draw();

    /** What the picture shows, as a table. */
    ChartTable table();
}
