package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.Position;

class PartTimesTest {
    private static Part part(String text) throws InputException {
        return new BowTextReader().read(text.getBytes(StandardCharsets.UTF_8), "a.bowing.txt", Instrument.VIOLIN);
    }

    /** Beats written as bar:beat=seconds. */
    private static BeatMap map(String text) {
        List<Beat> beats = new ArrayList<>();
        for (String entry : text.split(" ", -1)) {
            String[] fields = entry.split("[:=]", -1);
            beats.add(new Beat(fields[0], Integer.parseInt(fields[1]), Double.parseDouble(fields[2])));
        }
        return new BeatMap(beats);
    }

    /** Bars of 2/4 without strokes. */
    private static Part numbered(String... numbers) {
        return new Part(
                "p",
                Arrays.stream(numbers)
                        .map(number -> Bar.full(number, new Metre(2, 4)))
                        .toList(),
                List.of());
    }

    private static List<TimedSpan> spans(Part part, BeatMap map) throws InputException {
        return PartTimes.of(part, map).spans();
    }

    private static String refusal(Part part, BeatMap map) {
        InputException e = assertThrows(InputException.class, () -> PartTimes.of(part, map));
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void timeRunsEvenlyBetweenBeatsAndTheLastLastsAsLongAsTheOneBefore() throws InputException {
        PartTimes times = PartTimes.of(part("metre 2/4\n1-3: d u"), map("1:1=10 1:2=11 2:1=13"));
        assertEquals(List.of(10.0), times.secondsAt(new Position(0, 1)));
        assertEquals(List.of(10.5), times.secondsAt(new Position(0, 1.5)));
        assertEquals(List.of(12.0), times.secondsAt(new Position(0, 2.5)));
        assertEquals(List.of(13.0), times.secondsAt(new Position(0, 3)));
        assertEquals(List.of(14.0), times.secondsAt(new Position(1, 1.5)));
        assertEquals(List.of(15.0), times.secondsAt(new Position(1, 2)));
        assertEquals(List.of(), times.secondsAt(new Position(1, 2.5)));
    }

    @Test
    void anExcerptCutsItsStrokes() throws InputException {
        Part part = part("metre 2/4\n1: d2~\n2: ~ u~\n3: ~ d\n4: u2");
        List<TimedSpan> spans = spans(part, map("2:1=5 2:2=6 3:1=7 3:2=8"));
        assertEquals(3, spans.size());
        assertEquals(new TimedSpan(5, 6, part.spans().get(0)), spans.get(0));
        assertEquals(new TimedSpan(6, 8, part.spans().get(1)), spans.get(1));
        assertEquals(new TimedSpan(8, 9, part.spans().get(2)), spans.get(2));
    }

    @Test
    void theLastBeatEndsWithThePart() throws InputException {
        Part part = part("metre 2/4\n1: d u\n2 short: d1/2");
        List<TimedSpan> spans = spans(part, map("1:1=0 1:2=1 2:1=2"));
        assertEquals(3, spans.size());
        assertEquals(new TimedSpan(2, 2.5, part.spans().get(2)), spans.get(2));
    }

    @Test
    void beatsMayBeLeftOutAndAPickupMayBeginBetweenBeats() throws InputException {
        Part part = part("metre 4/4\npickup: u1/2\n1: d u d u\n2: d4");
        List<TimedSpan> spans = spans(part, map("0:4=0 1:1=2 2:1=6"));
        assertEquals(new TimedSpan(1, 2, part.spans().get(0)), spans.get(0));
        assertEquals(new TimedSpan(3, 4, part.spans().get(2)), spans.get(2));
        assertEquals(new TimedSpan(6, 10, part.spans().get(5)), spans.get(5));
    }

    @Test
    void aSteadyTempoCoversTheWholePart() throws InputException {
        Part part = part("metre 3/8\npickup: u1/2\n1: d3\nmetre 2/4\n2: u d");
        List<TimedSpan> spans = spans(part, new SteadyTempo(part, 120, 1).beats());
        assertEquals(
                List.of(1.0, 1.25, 2.75, 3.75),
                spans.stream().map(TimedSpan::startS).toList());
        assertEquals(4.75, spans.get(3).endS());
    }

    @Test
    void beatsThatAreNotInThePartAreRefused() throws InputException {
        Part part = part("metre 2/4\n1-3: d u");
        assertTrue(refusal(part, map("1:1=0 7:1=1")).contains("bar 7 beat 1, but the part has no bar 7"));
        assertTrue(refusal(part, map("1:1=0 1:3=1")).contains("no such beat in 2/4"));
        assertTrue(refusal(part, map("2:1=0 1:1=1")).contains("bar 2 beat 1 at 0.0 s alone between two stops"));
        assertTrue(refusal(part, map("1:1=0 1:2=1 1:2=2")).contains("bar 1 beat 2 at 2.0 s alone"));
        assertTrue(refusal(part, map("1:1=0 1:2=1 1:1=2 1:1=3 1:2=4")).contains("bar 1 beat 1 at 2.0 s alone"));
    }

    private static List<Run> runs(Part part, String beats) throws InputException {
        return PartTimes.of(part, map(beats)).beats().runs();
    }

    @Test
    void goingBackBeginsARunAndAPlaceIsPlayedTwice() throws InputException {
        Part part = part("metre 2/4\n1-3: d u");
        BeatMap map = map("1:1=10 1:2=11 2:1=12 2:2=13 1:2=30 2:1=30.5 2:2=31 3:1=31.5");
        PartTimes times = PartTimes.of(part, map);
        assertEquals(List.of(new Run(0, 3), new Run(4, 7)), times.beats().runs());
        assertEquals(14, times.beats().endS(3));
        assertEquals(32, times.beats().endS(7));
        assertEquals(List.of(12.5, 30.75), times.secondsAt(new Position(1, 1.5)));
        assertEquals(List.of(10.0), times.secondsAt(new Position(0, 1)));
        assertEquals(List.of(31.75), times.secondsAt(new Position(2, 1.5)));
        assertEquals(List.of(), times.secondsAt(new Position(2, 2.5)));
        List<PartSpan> strokes = part.spans();
        assertEquals(
                List.of(
                        new TimedSpan(10, 11, strokes.get(0)),
                        new TimedSpan(11, 12, strokes.get(1)),
                        new TimedSpan(12, 13, strokes.get(2)),
                        new TimedSpan(13, 14, strokes.get(3)),
                        new TimedSpan(30, 30.5, strokes.get(1)),
                        new TimedSpan(30.5, 31, strokes.get(2)),
                        new TimedSpan(31, 31.5, strokes.get(3)),
                        new TimedSpan(31.5, 32, strokes.get(4))),
                times.spans());
    }

    @Test
    void theLastBeatOfARunEndsWhereTheNextRunBegins() throws InputException {
        Part part = part("metre 2/4\n1: d u\n2: d2");
        PartTimes times = PartTimes.of(part, map("1:1=0 1:2=2 1:1=2.5 1:2=4.5"));
        assertEquals(2.5, times.beats().endS(1));
        assertEquals(
                List.of(2.0, 2.5, 4.5, 6.5),
                times.spans().stream().map(TimedSpan::endS).toList());
        assertEquals(List.of(2.5, 5.0), times.secondsAt(new Position(0, 2.25)));
    }

    /** Bars of two seconds; the fourth beat of the first bar is held. */
    @Test
    void aLongGapIsAStopUnlessItsBeatsWereLeftOut() throws InputException {
        Part part = part("metre 4/4\n1-40: d u d u");
        String before = "1:1=0 1:2=0.5 1:3=1 1:4=1.5 ";
        assertEquals(List.of(new Run(0, 3), new Run(4, 6)), runs(part, before + "2:1=22 2:2=22.5 2:3=23"));
        assertEquals(List.of(new Run(0, 6)), runs(part, before + "12:1=22 12:2=22.5 12:3=23"));
        assertEquals(List.of(new Run(0, 3), new Run(4, 6)), runs(part, before + "40:1=4 40:2=4.5 40:3=5"));
        // a fermata four times as long as its beat is none
        assertEquals(List.of(new Run(0, 6)), runs(part, before + "2:1=3.5 2:2=4 2:3=4.5"));
        // only the first beats of bars, slowing to half
        assertEquals(List.of(new Run(0, 4)), runs(part, "1:1=0 2:1=2 3:1=4 4:1=7 5:1=11"));
    }

    @Test
    void aMistypedBarIsRefusedRatherThanTakenForASkip() throws InputException {
        Part part = part("metre 4/4\n1-40: d u d u");
        String before = "2:1=0 2:2=0.5 2:3=1 2:4=1.5 ";
        assertTrue(refusal(part, map(before + "33:1=2 3:2=2.5 3:3=3")).contains("bar 33 beat 1 at 2.0 s alone"));
        Part longer = part("metre 4/4\n1-400: d u d u");
        assertTrue(refusal(longer, map("112:1=0 112:2=0.5 112:3=1 112:4=1.5 13:1=2 113:2=2.5 113:3=3"))
                .contains("bar 13 beat 1 at 2.0 s alone"));
    }

    @Test
    void aBeatIsNotLeftAloneByItsPace() throws InputException {
        Part part = part("metre 4/4\n1-4: d u d u");
        String before = "1:1=0 1:2=0.5 1:3=1 1:4=1.5 ";
        assertEquals(List.of(new Run(0, 3), new Run(4, 5)), runs(part, before + "2:1=30 2:2=60"));
    }

    @Test
    void aBarNumberThatOccursAgainIsTakenWhereTheFewestStopsAreNeeded() throws InputException {
        // bars 1 and 2 are repeated
        Part part = numbered("1", "2", "1", "2", "3");
        String repeated = "1:1=0 1:2=1 2:1=2 2:2=3 1:1=4 1:2=5 2:1=6 2:2=7 3:1=8 3:2=9";
        assertEquals(List.of(new Run(0, 9)), runs(part, repeated));
        // into the second time only: bar 3 follows it
        PartTimes second = PartTimes.of(part, map("2:1=2 2:2=3 3:1=4 3:2=5"));
        assertEquals(List.of(2.0), second.secondsAt(new Position(3, 1)));
        assertEquals(List.of(), second.secondsAt(new Position(1, 1)));
        // stopped in the first time, bar 1 again at once, then the repeat as written
        PartTimes again = PartTimes.of(
                part, map("1:1=0 1:2=1 1:1=9 1:2=10 2:1=11 2:2=12 1:1=13 1:2=14 2:1=15 2:2=16 3:1=17 3:2=18"));
        assertEquals(List.of(new Run(0, 1), new Run(2, 11)), again.beats().runs());
        assertEquals(List.of(0.0, 9.0), again.secondsAt(new Position(0, 1)));
        assertEquals(List.of(13.0), again.secondsAt(new Position(2, 1)));
    }

    @Test
    void whatTheSourceCallsAStopIsOne() throws InputException {
        Part part = part("metre 2/4\n1-3: d u");
        BeatMap map = BeatMap.ofStretches(
                List.of(map("1:1=0 1:2=1").beats(), map("2:1=2.5 2:2=3.5").beats()));
        PartTimes times = PartTimes.of(part, map);
        assertEquals(map, times.beats());
        assertEquals(2, times.spans().get(1).endS());
        assertEquals(2.5, times.spans().get(2).startS());
    }

    @Test
    void aPartThatNumbersNothingIsRefusedWhereItWouldTakeForever() throws InputException {
        Part part = numbered(Collections.nCopies(3000, "1").toArray(String[]::new));
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            beats.add(new Beat("1", 1, i));
        }
        assertTrue(refusal(part, new BeatMap(beats)).contains("too many bars of the same number"));
    }
}
