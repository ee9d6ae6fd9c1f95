package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.score.Part;
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

    private static String refusal(Part part, BeatMap map) {
        InputException e = assertThrows(InputException.class, () -> PartTimes.of(part, map));
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void timeRunsEvenlyBetweenBeatsAndTheLastLastsAsLongAsTheOneBefore() throws InputException {
        PartTimes times = PartTimes.of(part("metre 2/4\n1-3: d u"), map("1:1=10 1:2=11 2:1=13"));
        assertEquals(OptionalDouble.of(10), times.secondsAt(new Position(0, 1)));
        assertEquals(OptionalDouble.of(10.5), times.secondsAt(new Position(0, 1.5)));
        assertEquals(OptionalDouble.of(12), times.secondsAt(new Position(0, 2.5)));
        assertEquals(OptionalDouble.of(13), times.secondsAt(new Position(0, 3)));
        assertEquals(OptionalDouble.of(14), times.secondsAt(new Position(1, 1.5)));
        assertEquals(OptionalDouble.of(15), times.secondsAt(new Position(1, 2)));
        assertEquals(OptionalDouble.empty(), times.secondsAt(new Position(1, 2.5)));
    }

    @Test
    void anExcerptCutsItsStrokes() throws InputException {
        Part part = part("metre 2/4\n1: d2~\n2: ~ u~\n3: ~ d\n4: u2");
        List<TimedSpan> spans = PartTimes.timed(part, map("2:1=5 2:2=6 3:1=7 3:2=8"));
        assertEquals(3, spans.size());
        assertEquals(new TimedSpan(5, 6, part.spans().get(0)), spans.get(0));
        assertEquals(new TimedSpan(6, 8, part.spans().get(1)), spans.get(1));
        assertEquals(new TimedSpan(8, 9, part.spans().get(2)), spans.get(2));
    }

    @Test
    void theLastBeatEndsWithThePart() throws InputException {
        Part part = part("metre 2/4\n1: d u\n2 short: d1/2");
        List<TimedSpan> spans = PartTimes.timed(part, map("1:1=0 1:2=1 2:1=2"));
        assertEquals(3, spans.size());
        assertEquals(new TimedSpan(2, 2.5, part.spans().get(2)), spans.get(2));
    }

    @Test
    void beatsMayBeLeftOutAndAPickupMayBeginBetweenBeats() throws InputException {
        Part part = part("metre 4/4\npickup: u1/2\n1: d u d u\n2: d4");
        List<TimedSpan> spans = PartTimes.timed(part, map("0:4=0 1:1=2 2:1=6"));
        assertEquals(new TimedSpan(1, 2, part.spans().get(0)), spans.get(0));
        assertEquals(new TimedSpan(3, 4, part.spans().get(2)), spans.get(2));
        assertEquals(new TimedSpan(6, 10, part.spans().get(5)), spans.get(5));
    }

    @Test
    void aSteadyTempoCoversTheWholePart() throws InputException {
        Part part = part("metre 3/8\npickup: u1/2\n1: d3\nmetre 2/4\n2: u d");
        List<TimedSpan> spans = PartTimes.timed(part, new SteadyTempo(part, 120, 1).beats());
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
        assertTrue(refusal(part, map("2:1=0 1:1=1")).contains("after a later place"));
        assertTrue(refusal(part, map("2:2=0 2:1=1")).contains("after a later place"));
    }
}
