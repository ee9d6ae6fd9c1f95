package tuttarco.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Rest;
import tuttarco.score.WrittenSpan.Given;

/**
 * Completes a part's bowing: from the marks to a direction for every stroke, with its reason.
 *
 * <p>A marked stroke has the direction marked; a hooked one goes like the stroke before; any other goes the other way than
 * the stroke before, also across a short rest. At the beginning and after a rest of a quarter note or longer the bow is set
 * anew: on the first beat of a bar the strong way; elsewhere so that, alternating, the next first beat of a bar comes out the
 * strong way, or the next mark as marked if that comes sooner. Where a rest comes before either, the strokes carry on from
 * before the rest, but at the beginning and after a whole bar's rest their own beat decides: a strong beat begins the strong
 * way, a weak one the other.
 *
 * <p>All this is common practice, no source; what players do with a part is richer, so nothing that is marked is ever changed,
 * and where marks and rules disagree the place is listed ({@link Awkward}).
 */
final class Completing {
    /** A rest of this many quarter notes or more lets the bow be set anew (common practice). */
    private static final double SETS_ANEW_QUARTERS = 1;

    /** A down-bow this many times as long as the up-beat after it is a long one (chosen). */
    private static final double LONG = 3;

    /** How far from each other equal lengths may lie through rounding, quarter notes. */
    private static final double ROUNDING_QUARTERS = 1e-6;

    private record Decided(BowDirection direction, Reason reason) {}

    private final Practice practice;
    private final List<Bar> bars;
    private final List<WrittenSpan> written;
    private final QuarterLine line;
    private final Set<Position> fortes;
    private final List<PartSpan> spans = new ArrayList<>();
    private final List<Awkward> awkward = new ArrayList<>();

    private Optional<MarkedStroke> before = Optional.empty();
    private double restQuarters;

    /** Where the bow was last marked or set anew. */
    private Position from = new Position(0, 1);

    private Completing(Practice practice, List<Bar> bars, List<WrittenSpan> written, Hints hints) {
        this.practice = practice;
        this.bars = bars;
        this.written = written;
        this.line = new QuarterLine(bars);
        this.fortes = new HashSet<>(hints.fortes());
    }

    /** The part with all its strokes' directions. */
    static Part of(
            String name, List<Bar> bars, List<WrittenSpan> written, List<Note> notes, Hints hints, Practice practice) {
        Completing completing = new Completing(practice, bars, written, hints);
        for (int i = 0; i < written.size(); i++) {
            completing.complete(i);
        }
        hints.innerMarks().forEach(mark -> completing.awkward.add(new Awkward.MarkInSlur(mark.at(), mark.direction())));
        completing.awkward.sort(Comparator.comparing(Awkward::at));
        return new Part(name, bars, completing.spans, notes, hints, completing.awkward);
    }

    private void complete(int index) {
        WrittenSpan span = written.get(index);
        if (span.given() == Given.REST) {
            spans.add(new Rest(span.start(), span.end()));
            restQuarters += quarters(span);
            return;
        }
        Decided decided = decided(index, span);
        if (decided.reason() instanceof Reason.Marked marked && marked.retake() && restQuarters == 0) {
            awkward.add(marksDisagree(span.start(), decided.direction()));
        }
        if (!(decided.reason() instanceof Reason.CarriedOn || decided.reason() instanceof Reason.Hooked)) {
            from = span.start();
        }
        MarkedStroke stroke = new MarkedStroke(span.start(), span.end(), decided.direction(), decided.reason());
        if (longIntoForte(index, stroke)) {
            awkward.add(new Awkward.LongIntoForte(span.start()));
        }
        spans.add(stroke);
        before = Optional.of(stroke);
        restQuarters = 0;
    }

    private Awkward marksDisagree(Position at, BowDirection marked) {
        return before.orElseThrow().marked()
                ? new Awkward.EqualMarks(at, marked)
                : new Awkward.RunsAgainst(at, from, marked);
    }

    private Decided decided(int index, WrittenSpan span) {
        Optional<BowDirection> last = before.map(MarkedStroke::direction);
        Optional<BowDirection> mark = span.given().mark();
        if (mark.isPresent()) {
            return new Decided(mark.get(), new Reason.Marked(mark.equals(last)));
        }
        if (span.given() == Given.HOOKED) {
            return new Decided(last.orElse(practice.strongBeat()), new Reason.Hooked());
        }
        if (last.isPresent() && !setsAnew(restQuarters)) {
            return carriedOn(last.get());
        }
        return anew(index, span, last);
    }

    private Decided carriedOn(BowDirection last) {
        return new Decided(last.opposite(), new Reason.CarriedOn(from));
    }

    private Decided anew(int index, WrittenSpan span, Optional<BowDirection> last) {
        Optional<Decided> byBar = beginsBar(span) ? Optional.of(byBeat(true)) : leading(index);
        if (byBar.isEmpty() && last.isPresent() && !restedABar(span)) {
            return carriedOn(last.get());
        }
        Bar bar = bars.get(span.start().barIndex());
        Decided decided =
                byBar.orElseGet(() -> byBeat(bar.metre().strong(span.start().beat())));
        return last.equals(Optional.of(decided.direction()))
                ? new Decided(decided.direction(), new Reason.Retake())
                : decided;
    }

    private Decided byBeat(boolean strong) {
        BowDirection direction =
                strong ? practice.strongBeat() : practice.strongBeat().opposite();
        return new Decided(direction, new Reason.StrongBeat(strong));
    }

    /** Counts back from the next first beat of a bar or mark, if no rest comes before it. */
    private Optional<Decided> leading(int index) {
        boolean turned = false;
        for (int next = index + 1; next < written.size(); next++) {
            WrittenSpan span = written.get(next);
            if (span.given() == Given.REST) {
                if (setsAnew(quarters(span))) {
                    return Optional.empty();
                }
                continue;
            }
            turned ^= span.given() != Given.HOOKED;
            Optional<BowDirection> arrival = span.given()
                    .mark()
                    .or(() -> beginsBar(span) ? Optional.of(practice.strongBeat()) : Optional.empty());
            if (arrival.isPresent()) {
                BowDirection direction = turned ? arrival.get().opposite() : arrival.get();
                return Optional.of(new Decided(direction, new Reason.Upbeat(span.start())));
            }
        }
        return Optional.empty();
    }

    private boolean longIntoForte(int index, MarkedStroke stroke) {
        boolean upbeat = index + 1 < written.size()
                && beginsBar(written.get(index + 1))
                && written.get(index + 1).given() != Given.REST
                && !beginsBar(written.get(index));
        boolean afterDown = stroke.direction() == BowDirection.UP
                && before.filter(b -> b.direction() == BowDirection.DOWN).isPresent();
        return upbeat
                && afterDown
                && fortes.contains(stroke.start())
                && !setsAnew(restQuarters)
                && lengthQuarters(before.orElseThrow()) >= LONG * lengthQuarters(stroke) - ROUNDING_QUARTERS;
    }

    private boolean restedABar(WrittenSpan span) {
        Metre metre = bars.get(span.start().barIndex()).metre();
        return restQuarters >= metre.beats() * metre.quartersPerBeat() - ROUNDING_QUARTERS;
    }

    private static boolean setsAnew(double quarters) {
        return quarters >= SETS_ANEW_QUARTERS - ROUNDING_QUARTERS;
    }

    private static boolean beginsBar(WrittenSpan span) {
        return span.start().beat() == 1;
    }

    private double quarters(WrittenSpan span) {
        return line.lengthQuarters(span.start(), span.end());
    }

    private double lengthQuarters(MarkedStroke stroke) {
        return line.lengthQuarters(stroke.start(), stroke.end());
    }
}
