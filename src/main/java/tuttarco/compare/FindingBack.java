package tuttarco.compare;

import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.compare.Departure.Back;
import tuttarco.compare.Departure.BackAt;
import tuttarco.compare.Departure.NotSeenBack;
import tuttarco.compare.Departure.Way;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * Tells how a player who bowed the other way round found back, from the middle of the last beat against to the middle of the
 * first one with: somebody's bow went the same way twice there, or changed once more or once less than the reference's.
 */
final class FindingBack {
    /** A rest of the reference, or a time in which nothing was read of the player, of this length, seconds, counts (chosen). */
    private static final double NOTICED_S = 0.15;

    private final BeatMap beats;
    private final Reference reference;
    private final List<Stroke> played;

    /** @param played the player's strokes with the delay taken off */
    FindingBack(BeatMap beats, Reference reference, List<Stroke> played) {
        this.beats = beats;
        this.reference = reference;
        this.played = played;
    }

    /** After a beat against, within its run; judgements and standings of that run. */
    Back after(int lastIndex, List<Judgement> judgements, Standings standings) {
        for (int i = lastIndex + 1; i <= standings.run().lastIndex(); i++) {
            if (judgements.get(i).verdict() == Verdict.WITH && standings.chance(Standing.WITH, i) > 0.5) {
                return new BackAt(i, way(middleS(lastIndex), middleS(i)));
            }
        }
        return new NotSeenBack();
    }

    private double middleS(int index) {
        return (beats.beats().get(index).timeS() + beats.endS(index)) / 2;
    }

    private Way way(double startS, double endS) {
        if (endS - startS - bowedS(reference.strokes(), startS, endS) >= NOTICED_S) {
            return Way.REST;
        }
        List<Stroke> own = Spans.between(played, startS, endS);
        double doubtS = own.stream()
                .filter(s -> s.kind().direction().isEmpty() && s.kind() != StrokeKind.STILL)
                .mapToDouble(s -> Spans.overlapS(s, startS, endS))
                .sum();
        if (doubtS >= NOTICED_S) {
            return Way.UNKNOWN;
        }
        if (twiceTheSame(own)) {
            return Way.RETAKE;
        }
        int more = Integer.compare(bows(own), bows(Spans.between(reference.strokes(), startS, endS)));
        return more < 0 ? Way.DOUBLED_STROKE : more > 0 ? Way.EXTRA_CHANGE : Way.UNKNOWN;
    }

    private static double bowedS(List<Stroke> strokes, double startS, double endS) {
        return Spans.between(strokes, startS, endS).stream()
                .filter(s -> s.kind() != StrokeKind.STILL)
                .mapToDouble(s -> Spans.overlapS(s, startS, endS))
                .sum();
    }

    private static boolean twiceTheSame(List<Stroke> strokes) {
        List<StrokeKind> bowed = bowed(strokes);
        for (int i = 1; i < bowed.size(); i++) {
            if (bowed.get(i) == bowed.get(i - 1)) {
                return true;
            }
        }
        return false;
    }

    private static int bows(List<Stroke> strokes) {
        return bowed(strokes).size();
    }

    private static List<StrokeKind> bowed(List<Stroke> strokes) {
        return strokes.stream()
                .map(Stroke::kind)
                .filter(k -> k.direction().isPresent())
                .toList();
    }
}
