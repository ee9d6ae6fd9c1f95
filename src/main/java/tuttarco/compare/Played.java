package tuttarco.compare;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * What was done for most of a time.
 *
 * @param confidence mean confidence of the strokes of that kind, weighted by time
 * @param source by hand where more of the time of that kind was set than read
 */
record Played(StrokeKind kind, double confidence, Stroke.Source source) {
    /** Between two times, seconds; what the strokes don't cover is unseen for certain. */
    static Played most(List<Stroke> strokes, double startS, double endS) {
        List<Stroke> there = Spans.between(strokes, startS, endS);
        double uncoveredS = endS - startS - lengthS(there, startS, endS);
        return Arrays.stream(StrokeKind.values())
                .map(kind -> there.stream().filter(s -> s.kind() == kind).toList())
                .filter(ofKind -> !ofKind.isEmpty())
                .max(Comparator.comparingDouble(ofKind -> lengthS(ofKind, startS, endS)))
                .filter(ofKind -> lengthS(ofKind, startS, endS) > uncoveredS)
                .map(ofKind -> new Played(
                        ofKind.get(0).kind(), meanConfidence(ofKind, startS, endS), source(ofKind, startS, endS)))
                .orElse(new Played(StrokeKind.UNSEEN, 1, Stroke.Source.READ));
    }

    /** The first stroke that sounds for a while between two times. */
    static Optional<Stroke> firstIn(List<Stroke> strokes, double startS, double endS) {
        return Spans.between(strokes, startS, endS).stream()
                .filter(s -> Spans.overlapS(s, startS, endS) > Judgement.ROUNDING_S)
                .findFirst();
    }

    private static double lengthS(List<Stroke> strokes, double startS, double endS) {
        return strokes.stream()
                .mapToDouble(s -> Spans.overlapS(s, startS, endS))
                .sum();
    }

    private static Stroke.Source source(List<Stroke> strokes, double startS, double endS) {
        List<Stroke> set = strokes.stream()
                .filter(s -> s.source() == Stroke.Source.BY_HAND)
                .toList();
        boolean mostly = 2 * lengthS(set, startS, endS) > lengthS(strokes, startS, endS);
        return mostly ? Stroke.Source.BY_HAND : Stroke.Source.READ;
    }

    private static double meanConfidence(List<Stroke> strokes, double startS, double endS) {
        return strokes.stream()
                        .mapToDouble(s -> s.confidence() * Spans.overlapS(s, startS, endS))
                        .sum()
                / lengthS(strokes, startS, endS);
    }
}
