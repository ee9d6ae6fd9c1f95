package tuttarco.review;

import java.util.Locale;
import tuttarco.chart.Words;

/**
 * A mark that is held, and where it shall go.
 *
 * @param toS seconds, between the mark's neighbours
 */
public record MarkMove(Mark mark, double toS) {
    /** Held where it is. */
    public static MarkMove none(Mark mark) {
        return new MarkMove(mark, mark.timeS());
    }

    /** Moved to another time, seconds, or as far as its neighbours let it. */
    public MarkMove to(double timeS) {
        return new MarkMove(mark, mark.within(timeS));
    }

    /** In words: {@code Change at 0:12.3, 30 ms later}. */
    public String spoken() {
        long ms = Math.round(1000 * (toS - mark.timeS()));
        String what = (mark.kind() == Mark.Kind.BEAT ? "Beat at " : "Change at ") + Words.clock(mark.timeS());
        return ms == 0
                ? what
                : what + String.format(Locale.ROOT, ", %d ms %s", Math.abs(ms), ms > 0 ? "later" : "earlier");
    }
}
