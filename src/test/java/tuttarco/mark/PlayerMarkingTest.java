package tuttarco.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.TimedSpan;
import tuttarco.bow.BowDirection;
import tuttarco.compare.PlayedStroke;
import tuttarco.compare.Verdict;
import tuttarco.musicxml.StrokeMark;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Metre;
import tuttarco.score.Note;
import tuttarco.score.Note.Written;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Rest;
import tuttarco.score.Reason;

/**
 * Bars of one stroke each. A passage is a word of letters, a bar each: {@code d} and {@code u} as bowed, {@code r} a rest,
 * {@code D} and {@code U} likely only, {@code ?} not seen at all, {@code -} not in the take.
 */
class PlayerMarkingTest {
    private static BowMarks marks(String bars, boolean every) {
        return marks(bars, bars.length(), every);
    }

    /** The first bars of the file are played again and again. */
    private static BowMarks marks(String bars, int written, boolean every) {
        List<PartSpan> spans = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        List<PlayedStroke> played = new ArrayList<>();
        for (int i = 0; i < bars.length(); i++) {
            Position start = new Position(i, 1);
            Position end = new Position(i, 3);
            char letter = bars.charAt(i);
            if (letter == 'r') {
                spans.add(new Rest(start, end));
                continue;
            }
            MarkedStroke stroke = new MarkedStroke(start, end, BowDirection.DOWN, new Reason.CarriedOn(start));
            spans.add(stroke);
            notes.add(new Note(start, new Position(i, 2), List.of(69), false, new Written(i % written, 0)));
            notes.add(new Note(new Position(i, 2), end, List.of(71), false, new Written(i % written, 1)));
            if (letter != '-') {
                played.add(played(new TimedSpan(i, i + 1, stroke), stroke, letter));
            }
        }
        List<Bar> all = spans.stream()
                .map(s -> Bar.full(Integer.toString(s.start().barIndex() % written + 1), new Metre(2, 4)))
                .toList();
        return PlayerMarking.of(new Part("a", all, spans, notes, Hints.NONE, List.of()), played, every);
    }

    private static PlayedStroke played(TimedSpan timed, MarkedStroke stroke, char letter) {
        Optional<BowDirection> direction = switch (letter) {
            case 'd', 'D' -> Optional.of(BowDirection.DOWN);
            case 'u', 'U' -> Optional.of(BowDirection.UP);
            default -> Optional.empty();
        };
        Verdict verdict = switch (letter) {
            case 'd' -> Verdict.WITH;
            case 'u' -> Verdict.AGAINST;
            case 'D', 'U' -> Verdict.UNSURE;
            default -> Verdict.UNSEEN;
        };
        return new PlayedStroke(timed, stroke, verdict, direction, 1, false);
    }

    /** Two bars of the part, played as often as there are words. */
    private static BowMarks taken(String... words) {
        List<PartSpan> spans = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        List<Bar> bars = new ArrayList<>();
        List<PlayedStroke> played = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Position start = new Position(i, 1);
            Position end = new Position(i, 3);
            spans.add(new MarkedStroke(start, end, BowDirection.DOWN, new Reason.CarriedOn(start)));
            notes.add(new Note(start, new Position(i, 2), List.of(69), false, new Written(i, 0)));
            notes.add(new Note(new Position(i, 2), end, List.of(71), false, new Written(i, 1)));
            bars.add(Bar.full(Integer.toString(i + 1), new Metre(2, 4)));
        }
        for (int w = 0; w < words.length; w++) {
            for (int i = 0; i < 2; i++) {
                MarkedStroke stroke = (MarkedStroke) spans.get(i);
                double startS = 10 * w + i;
                if (words[w].charAt(i) != '-') {
                    played.add(played(new TimedSpan(startS, startS + 1, stroke), stroke, words[w].charAt(i)));
                }
            }
        }
        return PlayerMarking.of(new Part("a", bars, spans, notes, Hints.NONE, List.of()), played, true);
    }

    @Test
    void ofWhatWasTakenAgainTheLastCertainPlayingCounts() {
        BowMarks marks = taken("du", "ud", "-u", "U?");
        assertEquals("uu", word(marks));
        assertEquals(
                List.of(
                        "bar 1 beat 1 (0:00.0): played down here, but otherwise when it was taken again, which counts",
                        "bar 2 beat 1 (0:11.0): played down here, but otherwise when it was taken again, which counts"),
                marks.remarks());
        assertEquals("U?", word(taken("D?", "U?")));
    }

    /** A letter a stroke: {@code .} no sign, a capital a question, {@code ?} a question without a sign. */
    private static String word(BowMarks marks) {
        return marks.marks().stream().map(PlayerMarkingTest::letter).collect(Collectors.joining());
    }

    private static String letter(StrokeMark mark) {
        assertEquals(2, mark.notes().size());
        String sign = mark.sign().map(d -> d.word().substring(0, 1)).orElse(mark.question() ? "?" : ".");
        return mark.question() ? sign.toUpperCase(Locale.ROOT) : sign;
    }

    @Test
    void aReaderNeedsTheStartRestsAndWhereTheBowDoesNotTurn() {
        assertEquals("d...", word(marks("dudu", false)));
        assertEquals("d..u.", word(marks("dudrud", false)));
        assertEquals("d.u..", word(marks("duudu", false)));
        assertEquals("dddd", word(marks("dddd", false)));
    }

    @Test
    void everyStrokeOnRequest() {
        assertEquals("duddu", word(marks("dudrdu", true)));
    }

    /** After a question nothing can be carried on. */
    @Test
    void questionsAreAlwaysWritten() {
        BowMarks marks = marks("du?ud", false);
        assertEquals("d.?u.", word(marks));
        assertEquals("d.Ud.", word(marks("duUdu", false)));
        assertEquals(1, marks.questions());
        assertEquals(3, marks.signs());
        assertEquals(List.of("bar 3 beat 1 (0:02.0): a question, for the arm was not seen"), marks.remarks());
    }

    /** Bars before, after and between the takes keep what they have. */
    @Test
    void whatWasNotPlayedIsLeft() {
        BowMarks marks = marks("--du--du", false);
        assertEquals("d.d.", word(marks));
        assertEquals(
                List.of(2, 3, 6, 7),
                marks.marks().stream().map(m -> m.notes().get(0).measure()).toList());
    }

    /** Three bars, twice: the first certain reading counts, and a sign stands where either playing needs one. */
    @Test
    void repeats() {
        assertEquals("d..", word(marks("duddud", 3, false)));
        BowMarks unseen = marks("du??ud", 3, false);
        assertEquals("d..", word(unseen));
        assertEquals(0, unseen.questions(), "each was seen once");
        assertEquals(2, unseen.remarks().size());
        assertTrue(unseen.remarks().get(0).contains("another playing counts"));
        BowMarks differing = marks("duddu" + "u", 3, false);
        assertTrue(differing.marks().get(2).question());
        assertEquals(1, differing.questions());
        assertEquals(
                List.of("bar 3 beat 1: a question, for it was played down at 0:02.0 and up at 0:05.0"),
                differing.remarks());
        assertEquals(
                List.of("bar 1 beat 1: a question, for it was played up at 0:00.0, unclearly at 0:01.0, down at 0:02.0"
                        + " and down at 0:03.0"),
                marks("u?dd", 1, false).remarks());
    }

    /** The stroke's second half lies in another bar each time, as in two endings: neither keeps a sign of its own. */
    @Test
    void aStrokeIntoTwoEndingsHasOneSign() {
        List<PartSpan> spans = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        List<PlayedStroke> played = new ArrayList<>();
        for (int i = 0; i < 4; i += 2) {
            MarkedStroke stroke = new MarkedStroke(
                    new Position(i, 1),
                    new Position(i + 1, 3),
                    BowDirection.DOWN,
                    new Reason.CarriedOn(new Position(0, 1)));
            spans.add(stroke);
            notes.add(new Note(stroke.start(), new Position(i, 3), List.of(69), false, new Written(0, 0)));
            notes.add(new Note(new Position(i + 1, 1), stroke.end(), List.of(71), false, new Written(1 + i / 2, 0)));
            played.add(played(new TimedSpan(i, i + 2, stroke), stroke, 'u'));
        }
        List<Bar> bars = Stream.of("1", "2", "1", "3")
                .map(number -> Bar.full(number, new Metre(2, 4)))
                .toList();
        BowMarks marks = PlayerMarking.of(new Part("a", bars, spans, notes, Hints.NONE, List.of()), played, false);
        assertEquals(
                List.of(new StrokeMark(
                        List.of(new Written(0, 0), new Written(1, 0), new Written(2, 0)),
                        Optional.of(BowDirection.UP),
                        false)),
                marks.marks());
    }
}
