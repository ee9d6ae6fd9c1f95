package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.beats.TimedSpan;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.Reason;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Eight strokes of a second each, down and up in turn, and what is done to them. */
class PlayedStrokesTest {
    private static final int STROKES = 8;

    private static List<TimedSpan> marking() {
        List<TimedSpan> spans = new ArrayList<>();
        for (int i = 0; i < STROKES; i++) {
            BowDirection direction = i % 2 == 0 ? BowDirection.DOWN : BowDirection.UP;
            spans.add(new TimedSpan(
                    i,
                    i + 1,
                    new MarkedStroke(new Position(i, 1), new Position(i, 2), direction, new Reason.Marked(false))));
        }
        return spans;
    }

    /** Strokes of the kinds given by letters, each so long as the letter is repeated, in steps of a tenth. */
    private static List<Stroke> played(String tenths) {
        List<Stroke> strokes = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= tenths.length(); i++) {
            if (i == tenths.length() || tenths.charAt(i) != tenths.charAt(from)) {
                strokes.add(new Stroke(from / 10.0, i / 10.0, kind(tenths.charAt(from)), 0.9));
                from = i;
            }
        }
        return strokes;
    }

    private static StrokeKind kind(char letter) {
        return switch (letter) {
            case 'd' -> StrokeKind.DOWN;
            case 'u' -> StrokeKind.UP;
            case '?' -> StrokeKind.UNSURE;
            default -> StrokeKind.UNSEEN;
        };
    }

    /** As marked, but for some tenths. */
    private static String asMarkedBut(int fromTenth, String other) {
        StringBuilder tenths = new StringBuilder(("d".repeat(10) + "u".repeat(10)).repeat(STROKES / 2));
        return tenths.replace(fromTenth, fromTenth + other.length(), other).toString();
    }

    private static List<PlayedStroke> judged(String tenths) {
        List<PlayedStroke> strokes = PlayedStrokes.of(played(tenths), marking(), CompareSettings.DEFAULT);
        assertEquals(STROKES, strokes.size());
        return strokes;
    }

    private static void assertAsMarked(PlayedStroke stroke) {
        assertEquals(Verdict.WITH, stroke.verdict(), stroke.toString());
        assertEquals(Optional.of(stroke.marked().direction()), stroke.direction());
        assertEquals(1, stroke.strokes());
    }

    @Test
    void asMarked() {
        judged(asMarkedBut(0, "")).forEach(stroke -> {
            assertAsMarked(stroke);
            assertEquals(false, stroke.goesOn());
        });
    }

    /** A constant delay is taken off; up to two tenths is what the settings allow. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void late(int tenths) {
        judged("u".repeat(tenths) + asMarkedBut(0, "")).forEach(PlayedStrokesTest::assertAsMarked);
    }

    @Test
    void theOtherWay() {
        List<PlayedStroke> strokes = judged(asMarkedBut(40, "u".repeat(10) + "d".repeat(10)));
        assertEquals(Verdict.AGAINST, strokes.get(4).verdict());
        assertEquals(Optional.of(BowDirection.UP), strokes.get(4).direction());
        assertEquals(Optional.of(BowDirection.DOWN), strokes.get(5).direction());
        assertTrue(strokes.get(4).goesOn(), "the bow of the stroke before, up, goes on");
        assertTrue(strokes.get(6).goesOn() && !strokes.get(5).goesOn());
        assertAsMarked(strokes.get(3));
    }

    /** A change late by three tenths is a late change and not a bow of its own. */
    @Test
    void aLateChangeIsNoStroke() {
        List<PlayedStroke> strokes = judged(asMarkedBut(40, "uuu"));
        assertAsMarked(strokes.get(4));
    }

    @Test
    void oneStrokePlayedAsThree() {
        PlayedStroke stroke = judged(asMarkedBut(40, "dddduuuddd")).get(4);
        assertEquals(3, stroke.strokes());
        assertEquals(Optional.of(BowDirection.DOWN), stroke.direction());
        assertTrue(stroke.certain());
    }

    /** Most of the stroke is down, but the bow began up after a pause. */
    @Test
    void theFirstOfSeveralGivesTheDirection() {
        PlayedStroke stroke = judged(asMarkedBut(38, "??uuuddddddd")).get(4);
        assertEquals(2, stroke.strokes());
        assertEquals(Verdict.WITH, stroke.verdict());
        assertEquals(Optional.of(BowDirection.UP), stroke.direction());
    }

    @Test
    void unsureAndUnseen() {
        List<PlayedStroke> strokes = judged(asMarkedBut(40, "??????d???" + ".........."));
        assertEquals(Verdict.UNSURE, strokes.get(4).verdict());
        assertEquals(Optional.of(BowDirection.DOWN), strokes.get(4).direction(), "more likely down");
        assertEquals(Verdict.UNSEEN, strokes.get(5).verdict());
        assertEquals(Optional.empty(), strokes.get(5).direction());
        assertAsMarked(strokes.get(6));
    }
}
