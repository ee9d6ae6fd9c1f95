package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import tuttarco.beats.TimedSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * What a player is compared with, the marking or the leader, as strokes in time order; gaps are rests.
 *
 * @param strokes of every kind, whole
 * @param cores the down and up strokes without the tolerance at both ends, where nothing is judged
 */
record Reference(List<Stroke> strokes, List<Stroke> cores) {
    static Reference of(List<Stroke> strokes, CompareSettings settings) {
        List<Stroke> cores = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            double startS = stroke.startS() + toleranceS(strokes, i, i - 1, settings);
            double endS = stroke.endS() - toleranceS(strokes, i, i + 1, settings);
            if (stroke.kind().direction().isPresent() && endS > startS) {
                cores.add(stroke.during(startS, endS));
            }
        }
        return new Reference(List.copyOf(strokes), List.copyOf(cores));
    }

    /** The part's strokes; the marking is taken as certain. */
    static Reference ofMarking(List<TimedSpan> spans, CompareSettings settings) {
        return of(spans.stream().flatMap(s -> strokes(s).stream()).toList(), settings);
    }

    private static List<Stroke> strokes(TimedSpan timed) {
        return timed.span() instanceof MarkedStroke marked && timed.endS() > timed.startS()
                ? List.of(new Stroke(timed.startS(), timed.endS(), StrokeKind.of(marked.direction()), 1))
                : List.of();
    }

    private static double toleranceS(List<Stroke> strokes, int index, int neighbour, CompareSettings settings) {
        double shorterS = strokes.get(index).lengthS();
        if (neighbour >= 0
                && neighbour < strokes.size()
                && strokes.get(neighbour).kind().direction().isPresent()) {
            shorterS = Math.min(shorterS, strokes.get(neighbour).lengthS());
        }
        return Math.min(settings.toleranceS(), settings.toleranceShare() * shorterS);
    }
}
