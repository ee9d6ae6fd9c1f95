package tuttarco.compare;

import java.util.List;
import tuttarco.strokes.Stroke;

/** Strokes on the clip's time axis, seconds; lists are in time order without overlaps. */
final class Spans {
    private Spans() {}

    /** How long two spans sound together; 0 where they don't. */
    static double overlapS(double startS, double endS, double otherStartS, double otherEndS) {
        return Math.max(0, Math.min(endS, otherEndS) - Math.max(startS, otherStartS));
    }

    static double overlapS(Stroke stroke, double startS, double endS) {
        return overlapS(stroke.startS(), stroke.endS(), startS, endS);
    }

    /** The strokes that sound between two times, whole. */
    static List<Stroke> between(List<Stroke> strokes, double startS, double endS) {
        int from = firstEndingAfter(strokes, startS);
        int to = from;
        while (to < strokes.size() && strokes.get(to).startS() < endS) {
            to++;
        }
        return strokes.subList(from, to);
    }

    /**
     * The strokes as if they had been played later, or earlier where {@code byS} is negative; without those so short that
     * rounding leaves nothing of them.
     */
    static List<Stroke> shifted(List<Stroke> strokes, double byS) {
        return strokes.stream()
                .filter(s -> s.endS() + byS > s.startS() + byS)
                .map(s -> s.during(s.startS() + byS, s.endS() + byS))
                .toList();
    }

    private static int firstEndingAfter(List<Stroke> strokes, double timeS) {
        int low = 0;
        int high = strokes.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (strokes.get(mid).endS() > timeS) {
                high = mid;
            } else {
                low = mid + 1;
            }
        }
        return low;
    }
}
