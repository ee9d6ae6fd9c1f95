package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;

class WordsTest {
    private static Beat beat(String bar, int beat) {
        return new Beat(bar, beat, 0);
    }

    @Test
    void barsAsPeopleSayThem() {
        assertEquals("bar 17", Words.bars("17", "17"));
        assertEquals("bars 17–19", Words.bars("17", "19"));
    }

    @Test
    void stretches() {
        assertEquals("Bar 17 beat 3 to bar 18 beat 4", Words.stretch(beat("17", 3), beat("18", 4)));
        assertEquals("Bar 17 beats 2–3", Words.stretch(beat("17", 2), beat("17", 3)));
        assertEquals("Bar 17 beat 2", Words.stretch(beat("17", 2), beat("17", 2)));
    }

    @Test
    void times() {
        assertEquals("0:42.3", Words.clock(42.31));
        assertEquals("1:00.0", Words.clock(59.96));
        assertEquals("-0:01.5", Words.clock(-1.5));
        assertEquals("0:00.0", Words.clock(-0.01));
    }

    @Test
    void namesAreJoined() {
        SectionFixture five = SectionFixture.clean(5, 4);
        assertEquals("Desk 1 outside", Words.names(five.players.subList(0, 1)));
        assertEquals("Desk 1 outside and Desk 1 inside", Words.names(five.players.subList(0, 2)));
        assertEquals("Desk 1 outside, Desk 1 inside, Desk 2 outside and 2 more", Words.names(five.players));
    }

    @Test
    void plainLabelsTurnNothingRound() {
        assertEquals("abc", Words.plain("a\u202Eb\u2067c"));
        assertEquals("a\uFFFDb\uFFFD", Words.plain("a\uD83Cb\uFFFE"));
        assertEquals("\uD83C\uDFBB", Words.plain("\uD83C\uDFBB"));
    }
}
