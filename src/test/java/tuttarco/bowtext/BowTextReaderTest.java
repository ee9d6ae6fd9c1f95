package tuttarco.bowtext;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tuttarco.score.Strokes.bowing;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartReader;
import tuttarco.score.PartReaderContract;
import tuttarco.score.PartSpan;
import tuttarco.score.Strokes;

class BowTextReaderTest extends PartReaderContract {
    @Override
    protected PartReader reader() {
        return new BowTextReader();
    }

    @Override
    protected String fileName() {
        return "inner.bowing.txt";
    }

    @Override
    protected String markedBar() {
        return "part Inner Voices\nmetre 4/4\n1: d u . .\n";
    }

    @Override
    protected String unmarkedBar() {
        return "metre 4/4\n1: .x4\n";
    }

    @Override
    protected String pickup() {
        return "metre 3/4\npickup: .\n1: .3\n";
    }

    @Override
    protected String heldOver() {
        return "metre 4/4\n1: d4~\n2: ~ . -2\n3: -4\n4: .4\n";
    }

    @Override
    protected String onlyRests() {
        return "metre 4/4\n1: -4\n";
    }

    @Test
    void theExampleOfTheGrammarReads() throws InputException {
        Part part = read("""
                \uFEFF# the bowing as marked by the leader
                part Violin I: solo # at rehearsal
                metre 4/4
                pickup: u
                1: d u d u
                2: d2 .1/2x4
                3-4: as 1-2 \r
                5: d4~
                6: ~2 -2
                """, Instrument.VIOLIN);
        assertEquals("Violin I: solo", part.name());
        assertEquals("0 1 2 3 4 5 6", part.bars().stream().map(Bar::number).collect(Collectors.joining(" ")));
        assertEquals("U D U D U D u d u d D U D U D u d u d D -", bowing(part));
        Strokes.assertGapless(part);
    }

    /** Unicode names U+1D1AA musical symbol down bow and U+1D1AB musical symbol up bow. */
    @Test
    void unicodeSignsAreStrokes() throws InputException {
        String down = Character.toString(0x1D1AA);
        String up = Character.toString(0x1D1AB);
        assertEquals(
                "D U D U",
                bowing(read("metre 2/2\n1: " + up + "1/2 " + down + "1.5", Instrument.VIOLIN))
                        .replace("U D", "D U D U"));
        assertTrue(refusal("metre 2/2\n1: " + up + " " + down + " q").contains("line 2, column 8: 'q'"));
    }

    @Test
    void thirdsOfABeatFillTheirBar() throws InputException {
        Part part = read("metre 1/4\n1: d1/3 u1/3 d1/3\n2: d0.25x4", Instrument.VIOLIN);
        assertEquals(7, part.spans().size());
        assertEquals(4.0 / 3, part.spans().get(1).start().beat());
        assertEquals(2, part.spans().get(2).end().beat());
    }

    @Test
    void barsOfOtherLengthsSaySo() throws InputException {
        Part part = read("metre 4/4\n8 short: d u\n9 pickup: d2\n10 long: d6\nmetre 2/8\nA: d2", Instrument.VIOLIN);
        assertEquals(new Bar("8", new Metre(4, 4), 1, 2), part.bars().get(0));
        assertEquals(new Bar("9", new Metre(4, 4), 3, 2), part.bars().get(1));
        assertEquals(new Bar("10", new Metre(4, 4), 1, 6), part.bars().get(2));
        assertEquals(Bar.full("A", new Metre(2, 8)), part.bars().get(3));
    }

    @Test
    void aStrokeMayBeHeldThroughAWholeBar() throws InputException {
        Part part = read("metre 2/4\n1: u2~\n2: ~2~\n3: ~ .", Instrument.VIOLIN);
        assertEquals("U d", bowing(part));
        assertEquals(new PartSpan.Position(2, 2), part.spans().get(0).end());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            metre 4/4;1: d u d                | line 2, column 1: bar 1 holds 3 beats, which don't fill 4/4
            metre 4/4;1: d u d u d            | line 2, column 1: bar 1 holds 5 beats
            metre 4/4;1: d u  z u             | line 2, column 9: 'z' is no stroke or rest
            metre 4/4;1: d u d0 u             | line 2, column 8: 'd0'
            metre 4/4;1: d u d1/0 u           | line 2, column 8: 'd1/0'
            metre 4/4;1: d99999999999         | line 2, column 4:
            metre 4/4;1: d999999999           | line 2, column 1: bar 1 holds a length
            metre 4/4;1: d0x4                 | line 2, column 4
            metre 4/4;1: dNaN                 | line 2, column 4
            metre 4/4;1: d-2 u4               | line 2, column 4
            metre 4/4;1:                      | line 2, column 2: nothing follows the colon
            metre 4/4;1 d u d u               | line 2, column 1: '1' begins neither
            metre 4/4;1 odd: d u d u          | line 2, column 3: 'odd' can't stand before the colon
            metre 4/4;1: d4;3: d4             | line 3, column 1: bar 3 can't follow bar 1
            metre 4/4;1: d4;1: d4             | line 3, column 1: bar 1 is already written
            metre 4/4;1: d4;2: as 7           | line 3, column 7: bar 7 is not written above
            metre 4/4;1: d4;2-3: as 0-1       | line 3, column 9: bar 0
            metre 4/4;1-2: d4;3-5: as 1-2     | line 3, column 9: 2 bars can't be repeated evenly in 3
            metre 4/4;1: d4~;2: d4            | line 3, column 1: a stroke is held over into bar 2
            metre 4/4;1: ~4                   | line 2, column 1: bar 1 begins with ~
            metre 4/4;1: d~ u3                | line 2, column 1: a ~ stands in the middle
            metre 4/4;1: d4~                  | held over the end
            metre 4/4;1-999999999: d4         | line 2, column 1: '1-999999999'
            metre 4/4;1-999999: d4            | line 2, column 1: bars 1-999999
            metre 4/4;5-1: d4                 | line 2, column 1: bars 5-1
            metre 4/4;1 short: d4             | line 2, column 1: bar 1 holds 4 beats, which is not shorter
            1: d4                             | line 1, column 1: this bar has no metre
            metre 4/3;1: d4                   | line 1, column 7: a metre's lower figure
            metre 400/4;1: d4                 | line 1, column 7: a metre has 1 to 64 beats
            metre four;1: d4                  | line 1, column 7: a metre is written like
            part;metre 4/4;1: d4              | line 1, column 1: a part has a name
            metre 4/4                         | no bar is written here
            """)
    void mistakesAreNamedWithLineAndColumn(String text, String expected) {
        String message = refusal(text.replace(';', '\n'));
        assertTrue(message.startsWith("inner.bowing.txt: ") && message.contains(expected), message);
    }

    @Test
    void controlCharactersAreRefusedWhereTheyStand() {
        assertTrue(refusal("part A\u001b[2J\n").contains("line 1, column 7: a control character"));
    }

    @Test
    void endlessLinesAreRefused() {
        assertTrue(
                refusal("metre 4/4\n1: " + "d ".repeat(10_000)).contains("line 2, column 10000: the line is longer"));
    }

    @Test
    void manyTinyStrokesAreRefused() {
        String text = "metre 64/1\n1: " + "d1/1000x999 ".repeat(64) + "d0.064\n2-20000: as 1\n";
        assertTrue(refusal(text).contains("more than 1000000 strokes"));
    }
}
