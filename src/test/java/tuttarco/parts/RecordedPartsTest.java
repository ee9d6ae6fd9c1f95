package tuttarco.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.Strokes;

/** Parts of recordings, if you have them; how many marks they hold was counted in their text. */
@EnabledIfSystemProperty(named = "tuttarco.alignment", matches = ".+")
class RecordedPartsTest {
    private static Part read(String name) throws InputException {
        return Parts.read(Path.of(System.getProperty("tuttarco.alignment")).resolve(name), Instrument.VIOLIN);
    }

    private static long marked(Part part, String direction) {
        Stream<MarkedStroke> strokes =
                part.spans().stream().filter(MarkedStroke.class::isInstance).map(MarkedStroke.class::cast);
        return strokes.filter(
                        stroke -> stroke.marked() && stroke.direction().word().equals(direction))
                .count();
    }

    @Test
    void theMarksOfAPencilledPartAreRead() throws InputException {
        Part part = read("de2-part.musicxml");
        Strokes.assertGapless(part);
        assertEquals(18, marked(part, "up"));
        assertEquals(17, marked(part, "down"));
    }

    @Test
    void aPartWithoutMarksHasNone() throws InputException {
        Part part = read("ba1-part.musicxml");
        Strokes.assertGapless(part);
        assertTrue(part.notes().size() > 400, part.notes().size() + " notes");
        assertEquals(0, marked(part, "up") + marked(part, "down"));
    }
}
