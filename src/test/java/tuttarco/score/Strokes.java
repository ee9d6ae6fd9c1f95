package tuttarco.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;

/** A part's strokes in short. */
public final class Strokes {
    private Strokes() {}

    /** One sign a span: D and U marked, d and u completed, - a rest. */
    public static String bowing(Part part) {
        return part.spans().stream().map(Strokes::sign).collect(Collectors.joining(" "));
    }

    public static void assertGapless(Part part) {
        List<PartSpan> spans = part.spans();
        assertFalse(spans.isEmpty());
        assertEquals(
                new Position(0, part.bars().get(0).firstBeat()), spans.get(0).start());
        for (int i = 1; i < spans.size(); i++) {
            assertEquals(
                    line(part, spans.get(i - 1).end()), line(part, spans.get(i).start()), 1e-9);
        }
        for (PartSpan span : spans) {
            assertTrue(line(part, span.end()) > line(part, span.start()));
        }
        Bar last = part.bars().get(part.bars().size() - 1);
        assertEquals(
                new Position(part.bars().size() - 1, last.firstBeat() + last.lengthBeats()),
                spans.get(spans.size() - 1).end());
    }

    private static double line(Part part, Position position) {
        double before = part.bars().subList(0, position.barIndex()).stream()
                .mapToDouble(Bar::lengthBeats)
                .sum();
        return before + position.beat() - part.bars().get(position.barIndex()).firstBeat();
    }

    public static String sign(PartSpan span) {
        return span instanceof MarkedStroke stroke ? sign(stroke) : "-";
    }

    public static String sign(MarkedStroke stroke) {
        String sign = stroke.direction().word().substring(0, 1);
        return stroke.marked() ? sign.toUpperCase(Locale.ROOT) : sign;
    }
}
