package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.TimedSpan;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.strokes.Stroke;

/**
 * What a player did on each stroke of the part. A stroke is judged as a beat is ({@link Judgement}), after the player's
 * constant delay is taken off.
 *
 * <p>A bow of the player's belongs to a stroke of the part if it fills at least half of that stroke, or lies in it with at
 * least half of its own length and no less than {@link CompareSettings#leastAgainstS()}; otherwise it is the end or the
 * beginning of a neighbour. Where several belong to one stroke, the first gives its direction.
 */
public final class PlayedStrokes {
    /** Which share of either length makes a bow belong to a stroke (chosen: less would take in a late change). */
    private static final double BELONGS_SHARE = 0.5;

    private PlayedStrokes() {}

    /**
     * One entry a stroke of the part, in the order played; rests are left out.
     *
     * @param played the player's strokes in time order
     * @param marking the part's strokes and rests in time order
     */
    public static List<PlayedStroke> of(List<Stroke> played, List<TimedSpan> marking, CompareSettings settings) {
        Reference reference = Reference.ofMarking(marking, settings);
        double delayS = Delay.ofS(played, reference.strokes(), settings.longestDelayS());
        List<Stroke> inTime = Spans.shifted(played, -delayS);
        List<PlayedStroke> strokes = new ArrayList<>();
        Optional<Stroke> before = Optional.empty();
        for (TimedSpan timed : marking) {
            List<Stroke> own = List.of();
            if (timed.span() instanceof MarkedStroke marked) {
                own = own(inTime, timed, settings);
                Judgement judgement = Judgement.of(reference, inTime, timed.startS(), timed.endS(), settings);
                strokes.add(stroke(timed, marked, judgement.verdict(), own, before));
            }
            before = own.isEmpty() ? Optional.empty() : Optional.of(own.get(own.size() - 1));
        }
        return List.copyOf(strokes);
    }

    private static PlayedStroke stroke(
            TimedSpan timed, MarkedStroke marked, Verdict verdict, List<Stroke> own, Optional<Stroke> before) {
        boolean goesOn = !own.isEmpty() && before.equals(Optional.of(own.get(0)));
        Optional<BowDirection> direction =
                own.stream().findFirst().flatMap(s -> s.kind().direction());
        boolean certain = verdict == Verdict.WITH || verdict == Verdict.AGAINST;
        if (certain && own.size() < 2) {
            direction = Optional.of(
                    verdict == Verdict.WITH
                            ? marked.direction()
                            : marked.direction().opposite());
        }
        return new PlayedStroke(timed, marked, verdict, direction, own.size(), goesOn);
    }

    /** The player's bows that belong to a stroke of the part. */
    private static List<Stroke> own(List<Stroke> inTime, TimedSpan timed, CompareSettings settings) {
        return Spans.between(inTime, timed.startS(), timed.endS()).stream()
                .filter(s -> s.kind().direction().isPresent())
                .filter(s -> belongs(s, timed, settings))
                .toList();
    }

    private static boolean belongs(Stroke stroke, TimedSpan timed, CompareSettings settings) {
        double togetherS = Spans.overlapS(stroke, timed.startS(), timed.endS());
        boolean fills = togetherS >= BELONGS_SHARE * (timed.endS() - timed.startS());
        boolean lies = togetherS >= BELONGS_SHARE * stroke.lengthS() && togetherS >= settings.leastAgainstS();
        return fills || lies;
    }
}
