package tuttarco.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tuttarco.score.Strokes.bowing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Rest;

/** What every reader of parts does alike; the contents below stand for the same music in each form. */
public abstract class PartReaderContract {
    protected abstract PartReader reader();

    /** A name that this reader reads. */
    protected abstract String fileName();

    /** 4/4, part "Inner Voices". Bar 1: four quarters, marked down, up, none, none. */
    protected abstract String markedBar();

    /** 4/4. Bar 1: four quarters without marks. */
    protected abstract String unmarkedBar();

    /** 3/4. Pickup bar 0 of one quarter, then bar 1 with a dotted half; no marks. */
    protected abstract String pickup();

    /** 4/4. Bar 1: down for four quarters and one more in bar 2, up for one, rest for two; bar 3 rests; bar 4: a whole. */
    protected abstract String heldOver();

    /** 4/4. Bar 1: a rest. */
    protected abstract String onlyRests();

    protected final Part read(String content, Instrument instrument) throws InputException {
        return reader().read(content.getBytes(StandardCharsets.UTF_8), fileName(), instrument);
    }

    protected final String refusal(String content) {
        InputException e = assertThrows(InputException.class, () -> read(content, Instrument.VIOLIN));
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void readsItsOwnNamesOnly() {
        assertTrue(reader().reads(fileName()));
        assertTrue(reader().reads(fileName().toUpperCase(java.util.Locale.ROOT)));
        assertFalse(reader().reads("part.pdf"));
    }

    @Test
    void marksAreTakenAndTheOtherStrokesAlternate() throws InputException {
        Part part = read(markedBar(), Instrument.VIOLIN);
        assertEquals("Inner Voices", part.name());
        assertEquals(List.of(Bar.full("1", new Metre(4, 4))), part.bars());
        assertEquals("D U d u", bowing(part));
        assertEquals(
                new MarkedStroke(
                        new Position(0, 2), new Position(0, 3), tuttarco.bow.BowDirection.UP, new Reason.Marked(false)),
                part.spans().get(1));
    }

    /** Strong beats are down-bows in the violin family and up-bows on viols (common practice, no source). */
    @Test
    void aFirstStrokeWithoutMarkFollowsTheStrongBeat() throws InputException {
        for (Instrument instrument : List.of(Instrument.VIOLIN, Instrument.VIOLA, Instrument.CELLO, Instrument.BASS)) {
            assertEquals("d u d u", bowing(read(unmarkedBar(), instrument)));
        }
        assertEquals("u d u d", bowing(read(unmarkedBar(), Instrument.VIOL)));
    }

    @Test
    void aPickupBeginsAgainstTheStrongBeat() throws InputException {
        Part part = read(pickup(), Instrument.VIOLIN);
        assertEquals(List.of(new Bar("0", new Metre(3, 4), 3, 1), Bar.full("1", new Metre(3, 4))), part.bars());
        assertEquals("u d", bowing(part));
        assertEquals("d u", bowing(read(pickup(), Instrument.VIOL)));
        assertEquals(new Position(0, 3), part.spans().get(0).start());
        assertEquals(new Position(0, 4), part.spans().get(0).end());
    }

    @Test
    void strokesReachOverBarLinesAndRestsAreJoined() throws InputException {
        Part part = read(heldOver(), Instrument.VIOLIN);
        assertEquals("D u - d", bowing(part));
        assertEquals(new Position(0, 1), part.spans().get(0).start());
        assertEquals(new Position(1, 2), part.spans().get(0).end());
        assertEquals(
                new Rest(new Position(1, 3), new Position(2, 5)), part.spans().get(2));
    }

    @Test
    void spansFollowEachOtherWithoutGaps() throws InputException {
        for (String content : List.of(markedBar(), unmarkedBar(), pickup(), heldOver())) {
            Strokes.assertGapless(read(content, Instrument.VIOLA));
        }
    }

    @Test
    void aPartWithoutBowedNotesIsRefused() {
        assertTrue(refusal(onlyRests()).contains("no bowed notes"));
    }

    @Test
    void somethingElseIsRefused() {
        refusal("");
        refusal("\n");
        refusal("\uFEFF");
        refusal("\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR");
        refusal("{\"version\": 1}");
        for (byte[] content : List.of(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0}, new byte[1000])) {
            InputException e =
                    assertThrows(InputException.class, () -> reader().read(content, fileName(), Instrument.VIOLIN));
            Mutations.assertOneSentence(e);
        }
    }

    @Test
    void truncatedOrDamagedContentIsReadOrRefused() {
        for (String content : List.of(markedBar(), pickup(), heldOver())) {
            Mutations.onlyInputExceptions(
                    content.getBytes(StandardCharsets.UTF_8),
                    300,
                    damaged -> reader().read(damaged, fileName(), Instrument.CELLO));
        }
    }

    @Test
    void theFileNameIsHarmlessInMessages() {
        InputException e = assertThrows(
                InputException.class,
                () -> reader().read(new byte[0], "a\u001b[31m\nb" + fileName(), Instrument.VIOLIN));
        Mutations.assertOneSentence(e);
    }
}
