package tuttarco.mark;

import java.util.Locale;
import tuttarco.chart.Words;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;

/** Places of a part in words. */
final class Places {
    private Places() {}

    /** As a player finds it, in the part and in the recording: {@code bar 12 beat 3.5 (0:07.3)}. */
    static String spoken(Part part, Position at, double timeS) {
        return spoken(part, at) + " (" + Words.clock(timeS) + ")";
    }

    /** As a player finds it in the part: {@code bar 12 beat 3.5}. */
    static String spoken(Part part, Position at) {
        String beat = String.format(Locale.ROOT, "%.2f", at.beat()).replaceFirst("\\.?0+$", "");
        return "bar " + part.bars().get(at.barIndex()).number() + " beat " + beat;
    }
}
