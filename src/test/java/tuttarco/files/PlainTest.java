package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTest {
    @ParameterizedTest
    @ValueSource(strings = {"", "first desk", "Geigerin Nr. 3, \u00e4u\u00dfen", "\ud834\udd1e \u6f22"})
    void leavesOrdinaryTextAsItIs(String text) {
        assertEquals(text, Plain.text(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\n", "\r", "\t", "\0", "\u001b", "\u0085", "\u2028", "\u202e", "\u200f", "\ud834", "\ufeff"})
    void replacesWhatMovesTheCursorOrTurnsTheText(String bad) {
        assertEquals("a?b", Plain.text("a" + bad + "b"));
    }

    @Test
    void cutsLongTextBetweenCharacters() {
        String tooLong = "\ud834\udd1e".repeat(Plain.LONGEST + 1);
        String cut = Plain.text(tooLong);
        assertEquals(Plain.LONGEST, cut.codePointCount(0, cut.length()));
        assertTrue(cut.endsWith("\udd1e..."));
        String fits = "\ud834\udd1e".repeat(Plain.LONGEST);
        assertEquals(fits, Plain.text(fits));
    }

    @Test
    void aSentenceStaysWhole() {
        assertEquals("a?" + "b".repeat(2 * Plain.LONGEST), Plain.line("a\n" + "b".repeat(2 * Plain.LONGEST)));
    }
}
