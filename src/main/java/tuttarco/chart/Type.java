package tuttarco.chart;

import java.awt.Font;

/** The typeface of charts, for what stands around them. */
public final class Type {
    private Type() {}

    /** Running text. */
    public static Font body() {
        return Look.regular(Look.BODY_PX);
    }

    /** Headings and what is chosen. */
    public static Font heading() {
        return Look.semibold(Look.TITLE_PX);
    }

    /** Figures in charts and small words. */
    public static Font small() {
        return Look.regular(Look.SMALL_PX);
    }

    /** Words that stand out of running text. */
    public static Font strong() {
        return Look.semibold(Look.BODY_PX);
    }

    /** The given font, or where it lacks a sign of the text, the system's own in its size. */
    public static Font able(Font font, String text) {
        return Look.able(font, text).deriveFont(font.getSize2D());
    }
}
