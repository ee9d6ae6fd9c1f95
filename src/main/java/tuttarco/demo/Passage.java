package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Rest;
import tuttarco.score.Reason;

/**
 * The music of the rendered takes, made up for them. A passage is written bar by bar: {@code d2} is a down-bow of two
 * beats, {@code u1} an up-bow of one, {@code r1} a rest; bars are set apart by {@code |}.
 */
final class Passage {
    /** Whole notes, halves, quarters, slurs, a few eighths and rests. */
    static final String MIXED =
            "d2 u2 | d1 u1 d1 u1 | d3 u1 | d4 | u1 d1 u2 | d1 u0.5 d0.5 u1 r1 | d1.5 u0.5 d1 u1 | d4";
    /** The first bars of {@link #MIXED}, for scenes that vary one thing only. */
    static final String SHORT = "d2 u2 | d1 u1 d1 u1 | d3 u1 | d4 | u1 d1 u2 | d1 u1 d2";

    static final String EIGHTHS = "d1 u1 d1 u1 | d0.5 u0.5 d0.5 u0.5 d0.5 u0.5 d0.5 u0.5 | d2 u2 "
            + "| d0.5 u0.5 d0.5 u0.5 d1 u1 | d0.5 u0.5 d0.5 u0.5 d0.5 u0.5 d0.5 u0.5 | d2 u2";
    static final String SLOW = "d4 | u4 | d4 | u2 d2 | u4 | d4";
    /** Twice as long, for a rehearsal. */
    static final String LONG =
            MIXED + " | u2 d1 u1 | d1 u1 d1 u1 | d2 u2 | d1.5 u0.5 d2 | u1 d1 u1 d1 | u4 " + "| d1 u1 d2 | u4";

    /** Eight quarters near the frog, then eight near the tip. */
    static final String QUARTERS = "d2 u2 | d1 u1 d1 u1 | d1 u1 d1 u1 | d4 | u1 d1 u1 d1 | u1 d1 u1 d1 | u4 | d2 u2";

    static final String RESTS_AND_RETAKES = "d2 r2 | d2 d2 | d1 u1 r1 d1 | d1 u1 d2 | r2 d2 | d2 u1 r1";

    private static final Metre COMMON_TIME = new Metre(4, 4);

    private Passage() {}

    /** The part as marked for the violin family. */
    static Part of(String name, String text) {
        List<Bar> bars = new ArrayList<>();
        List<PartSpan> spans = new ArrayList<>();
        Optional<BowDirection> before = Optional.empty();
        for (String barText : text.split("\\|")) {
            double beat = 1;
            for (String word : barText.strip().split(" +")) {
                double next = beat + Double.parseDouble(word.substring(1));
                PartSpan span =
                        span(word.charAt(0), new Position(bars.size(), beat), new Position(bars.size(), next), before);
                spans.add(span);
                if (span instanceof MarkedStroke stroke) {
                    before = Optional.of(stroke.direction());
                }
                beat = next;
            }
            if (beat != 1 + COMMON_TIME.beats()) {
                throw new IllegalArgumentException("a bar of " + COMMON_TIME + " is full, unlike: " + barText);
            }
            bars.add(Bar.full(String.valueOf(bars.size() + 1), COMMON_TIME));
        }
        return new Part(name, bars, spans);
    }

    /** The same part with all strokes the other way, as viols play it: the strong beat takes the up-bow. */
    static Part reversed(Part part) {
        List<PartSpan> spans = new ArrayList<>();
        for (PartSpan span : part.spans()) {
            spans.add(
                    span instanceof MarkedStroke s
                            ? new MarkedStroke(s.start(), s.end(), s.direction().opposite(), s.reason())
                            : span);
        }
        return new Part(part.name(), part.bars(), spans);
    }

    private static PartSpan span(char kind, Position start, Position end, Optional<BowDirection> before) {
        return switch (kind) {
            case 'd' -> marked(start, end, BowDirection.DOWN, before);
            case 'u' -> marked(start, end, BowDirection.UP, before);
            case 'r' -> new Rest(start, end);
            default -> throw new IllegalArgumentException("a passage has d, u and r, not " + kind);
        };
    }

    private static MarkedStroke marked(
            Position start, Position end, BowDirection direction, Optional<BowDirection> before) {
        boolean retake = before.equals(Optional.of(direction));
        return new MarkedStroke(start, end, direction, new Reason.Marked(retake));
    }
}
