package tuttarco.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Awkward;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;

/** A part as a violinist marked it, with 17 down-bows and 18 up-bows (counted in the file). */
@EnabledIfSystemProperty(named = "tuttarco.alignment", matches = ".+")
class RealPartTest {
    private static Part part() throws InputException {
        return Parts.read(Path.of(System.getProperty("tuttarco.alignment"), "de2-part.musicxml"), Instrument.VIOLIN);
    }

    @Test
    void allItsMarksAreReadAndEveryStrokeHasADirection() throws InputException {
        List<MarkedStroke> strokes = part().spans().stream()
                .filter(MarkedStroke.class::isInstance)
                .map(MarkedStroke.class::cast)
                .toList();
        assertEquals(124, strokes.size());
        assertEquals(17, marked(strokes, BowDirection.DOWN));
        assertEquals(18, marked(strokes, BowDirection.UP));
    }

    private static long marked(List<MarkedStroke> strokes, BowDirection direction) {
        return strokes.stream()
                .filter(s -> s.marked() && s.direction() == direction)
                .count();
    }

    /**
     * Both counted by hand in the file. Bar 19: after the up-bow on bar 17 come a hooked note, two quarters, two beats of bar
     * 18 under one slur, two more slurs there and one in bar 19: six changes, so the next stroke would be a down-bow. (Bar 18's
     * slur holds two smaller ones; with a bow to each of those the mark would fit.) Bar 28: after the up-bow on bar 26 beat 3
     * come eight slurs and three notes: eleven changes, so the next would be an up-bow.
     */
    @Test
    void itsTwoContradictionsAreListed() throws InputException {
        assertEquals(
                List.of(
                        new Awkward.RunsAgainst(new Position(18, 2.5), new Position(16, 1), BowDirection.UP),
                        new Awkward.RunsAgainst(new Position(27, 3.5), new Position(25, 3), BowDirection.DOWN)),
                part().awkward());
    }
}
