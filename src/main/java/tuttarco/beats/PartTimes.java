package tuttarco.beats;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.Position;

/**
 * Where the places of a part lie in the recording.
 *
 * <p>Between two listed beats time runs evenly; the last listed beat lasts as long as the one before it. The list may
 * cover an excerpt of the part, leave beats out, and begin on a beat just before a pickup that begins between beats.
 * Where a bar number occurs more than once in the part, the list takes the occurrences in turn.
 */
public final class PartTimes {
    private final Part part;
    private final PartRuler ruler;
    /** Listed beats, in quarter notes from the part's start, and one entry more for the end of the last. */
    private final double[] quarters;

    private final double[] timesS;

    private PartTimes(Part part, PartRuler ruler, double[] quarters, double[] timesS) {
        this.part = part;
        this.ruler = ruler;
        this.quarters = quarters;
        this.timesS = timesS;
    }

    /**
     * The part laid along the recording.
     *
     * @throws InputException if a listed beat isn't in the part, or not in this order
     */
    public static PartTimes of(Part part, BeatMap map) throws InputException {
        PartRuler ruler = new PartRuler(part);
        List<Beat> beats = map.beats();
        int count = beats.size();
        double[] quarters = new double[count + 1];
        double[] timesS = new double[count + 1];
        int bar = 0;
        for (int i = 0; i < count; i++) {
            double after = i == 0 ? Double.NEGATIVE_INFINITY : quarters[i - 1];
            bar = ruler.barOf(beats.get(i), bar, after);
            quarters[i] = ruler.quarters(new Position(bar, beats.get(i).beat()));
            timesS[i] = beats.get(i).timeS();
        }
        timesS[count] = map.endS(count - 1);
        quarters[count] = Math.min(ruler.lengthQuarters(), 2 * quarters[count - 1] - quarters[count - 2]);
        double share = (quarters[count] - quarters[count - 1]) / (quarters[count - 1] - quarters[count - 2]);
        timesS[count] = timesS[count - 1] + share * (timesS[count] - timesS[count - 1]);
        return new PartTimes(part, ruler, quarters, timesS);
    }

    /**
     * The strokes and rests that lie wholly or partly inside the listed beats, in the order played, cut off where the
     * list begins and ends.
     *
     * @throws InputException if a listed beat isn't in the part, or not in this order
     */
    public static List<TimedSpan> timed(Part part, BeatMap map) throws InputException {
        return of(part, map).spans();
    }

    /** Seconds from the clip's start, or nothing for a place before the first listed beat or after the end of the last. */
    public OptionalDouble secondsAt(Position position) {
        double at = ruler.quarters(position);
        boolean listed = at >= quarters[0] && at <= quarters[quarters.length - 1];
        return listed ? OptionalDouble.of(seconds(at)) : OptionalDouble.empty();
    }

    /** As {@link #timed} gives them. */
    public List<TimedSpan> spans() {
        List<TimedSpan> timed = new ArrayList<>();
        for (PartSpan span : part.spans()) {
            double start = Math.max(quarters[0], ruler.quarters(span.start()));
            double end = Math.min(quarters[quarters.length - 1], ruler.quarters(span.end()));
            if (end > start && seconds(end) > seconds(start)) {
                timed.add(new TimedSpan(seconds(start), seconds(end), span));
            }
        }
        return List.copyOf(timed);
    }

    private double seconds(double at) {
        int next = 1;
        int low = 1;
        int high = quarters.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (quarters[middle] >= at) {
                next = middle;
                high = middle - 1;
            } else {
                low = middle + 1;
            }
        }
        double share = (at - quarters[next - 1]) / (quarters[next] - quarters[next - 1]);
        return timesS[next - 1] + share * (timesS[next] - timesS[next - 1]);
    }
}
