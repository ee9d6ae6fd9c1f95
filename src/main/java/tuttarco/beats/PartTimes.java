package tuttarco.beats;

import java.util.ArrayList;
import java.util.List;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.Position;

/**
 * Where the places of a part lie in the recording, which may play them several times.
 *
 * <p>Between two listed beats of a run time runs evenly; the last beat of a run lasts as long as the one before it. The list
 * may cover an excerpt of the part, leave beats out, go back, skip, and begin on a beat just before a pickup that begins
 * between beats. Where a run ends without the list saying so, and which occurrence of a bar number is meant, is found as
 * {@link Laid} says.
 */
public final class PartTimes {
    private final Part part;
    private final PartRuler ruler;
    private final BeatMap beats;
    private final List<Stretch> stretches;

    private PartTimes(Part part, PartRuler ruler, BeatMap beats, List<Stretch> stretches) {
        this.part = part;
        this.ruler = ruler;
        this.beats = beats;
        this.stretches = List.copyOf(stretches);
    }

    /**
     * The part laid along the recording.
     *
     * @throws InputException if a listed beat isn't in the part, or stands alone between two stops
     */
    public static PartTimes of(Part part, BeatMap map) throws InputException {
        PartRuler ruler = new PartRuler(part);
        List<double[]> places = new ArrayList<>();
        for (Beat beat : map.beats()) {
            places.add(ruler.places(beat));
        }
        Laid laid = Laid.of(map, places);
        List<Stretch> stretches = laid.map().runs().stream()
                .map(run -> Stretch.of(laid, run, ruler.lengthQuarters()))
                .toList();
        return new PartTimes(part, ruler, laid.map(), stretches);
    }

    /** The beats with their runs: those of the source, and ended where the part or the pace shows a stop. */
    public BeatMap beats() {
        return beats;
    }

    /** Seconds from the clip's start, once for each run that plays the place, in the order played. */
    public List<Double> secondsAt(Position position) {
        double at = ruler.quarters(position);
        return stretches.stream()
                .filter(stretch -> at >= stretch.startQuarters() && at <= stretch.endQuarters())
                .map(stretch -> stretch.seconds(at))
                .toList();
    }

    /**
     * The strokes and rests that lie wholly or partly inside a run, in the order played, cut off where the run begins and
     * ends; one that is played several times is there as often.
     */
    public List<TimedSpan> spans() {
        List<TimedSpan> timed = new ArrayList<>();
        for (Stretch stretch : stretches) {
            for (PartSpan span : part.spans()) {
                double start = Math.max(stretch.startQuarters(), ruler.quarters(span.start()));
                double end = Math.min(stretch.endQuarters(), ruler.quarters(span.end()));
                if (end > start && stretch.seconds(end) > stretch.seconds(start)) {
                    timed.add(new TimedSpan(stretch.seconds(start), stretch.seconds(end), span));
                }
            }
        }
        return List.copyOf(timed);
    }

    /**
     * A run along the part.
     *
     * @param quarters its beats, in quarter notes from the part's start, and one entry more for the end of the last
     * @param timesS the same in seconds from the clip's start
     */
    private record Stretch(double[] quarters, double[] timesS) {
        /** The last beat ends with the part or where the next run begins, if that comes sooner. */
        static Stretch of(Laid laid, Run run, double partQuarters) {
            int count = run.beatCount();
            double[] quarters = new double[count + 1];
            double[] timesS = new double[count + 1];
            for (int i = 0; i < count; i++) {
                quarters[i] = laid.places()[run.firstIndex() + i];
                timesS[i] = laid.map().beats().get(run.firstIndex() + i).timeS();
            }
            double beatQuarters = quarters[count - 1] - quarters[count - 2];
            double beatS = timesS[count - 1] - timesS[count - 2];
            double share = Math.min(1, (partQuarters - quarters[count - 1]) / beatQuarters);
            share = Math.min(share, (laid.map().endS(run) - timesS[count - 1]) / beatS);
            quarters[count] = quarters[count - 1] + share * beatQuarters;
            timesS[count] = timesS[count - 1] + share * beatS;
            return new Stretch(quarters, timesS);
        }

        double startQuarters() {
            return quarters[0];
        }

        double endQuarters() {
            return quarters[quarters.length - 1];
        }

        double seconds(double at) {
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
}
