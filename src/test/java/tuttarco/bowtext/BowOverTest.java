package tuttarco.bowtext;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tuttarco.score.Strokes.bowing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.parts.Parts;
import tuttarco.score.Bar;
import tuttarco.score.CompletingTest;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.Practice;
import tuttarco.score.Reason;
import tuttarco.score.Strokes;

/** Bow text written over a part, and bow text made from a part. */
class BowOverTest {
    private static final String PART = "metre 4/4\n1: d . . .\n2: . . . .\n3: .4~\n4: ~ . -2\n5: - . . .\n6: d4\n";

    @TempDir
    Path folder;

    private Part part(String text) throws IOException, InputException {
        return Parts.read(Files.writeString(folder.resolve("part.bowing.txt"), text), Instrument.VIOLIN);
    }

    private Part over(Part part, String text) throws IOException, InputException {
        Path file = Files.writeString(folder.resolve("over.bowing.txt"), text);
        return Parts.over(part, file, Practice.VIOLIN_FAMILY);
    }

    @Test
    void barsWrittenOverReplaceTheirsAndTheRestIsCompletedAnew() throws IOException, InputException {
        Part part = part(PART);
        assertEquals("D u d u d u d u d u - u d u D", bowing(part));
        Part over = over(part, "2: d2 =1 .\n5: - u . u\n");
        assertEquals("D u d u D d u d u - U d U D", bowing(over));
        Strokes.assertGapless(over);
        assertEquals(part.bars(), over.bars());
        assertEquals(List.of(), over.awkward());
    }

    @Test
    void aBarMayBeginHookedToTheOneBefore() throws IOException, InputException {
        assertEquals("D u d u u d u d u d - u d u D", bowing(over(part(PART), "2: = . . .\n")));
    }

    @Test
    void strokesOverTheBarLineAreWrittenOverTogether() throws IOException, InputException {
        assertEquals("D u d u d u d u U D - u d u D", bowing(over(part(PART), "3: u4\n4: d2 -2\n")));
    }

    @Test
    void whatIsNotWrittenOverStaysAsItWas() throws IOException, InputException {
        for (Path file : CompletingTest.passages()) {
            Part part = Parts.read(file, Instrument.VIOLIN);
            Part none = new Part("none", List.of(Bar.full("none", new Metre(1, 4))), List.of());
            assertEquals(part, BowOver.over(part, none, Practice.VIOLIN_FAMILY), file.toString());
            assertEquals(part, part.completed(Practice.VIOLIN_FAMILY));
            assertEquals(Parts.read(file, Instrument.VIOL), part.completed(Practice.VIOLS));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            9: d4          | line 1, column 1: bar 9 is not in the part
            2: d3          | line 1, column 1: bar 2 holds 3 beats
            metre 3/4;2: d3 | bar 2 is written over with another metre
            3: d4          | a stroke reaches over the bar line at bar 4
            2: d4~;3: ~4   | a stroke reaches over the bar line at bar 4
            2: d4~;6: ~4   | a stroke reaches over the bar line at bar 3
            6: d4~         | held over the end
            """)
    void whatDoesNotFitIsSaid(String text, String expected) throws IOException, InputException {
        Part part = part(PART);
        InputException e = assertThrows(InputException.class, () -> over(part, text.replace(';', '\n')));
        assertTrue(
                e.getMessage().startsWith("over.bowing.txt: ") && e.getMessage().contains(expected), e.getMessage());
        Mutations.assertOneSentence(e);
    }

    static List<Path> passages() throws IOException {
        return CompletingTest.passages();
    }

    /** Text made to be edited reads as the same bowing: as marked, and with every direction written. */
    @ParameterizedTest
    @MethodSource("passages")
    void textToEditReadsAsTheSameBowing(Path file) throws IOException, InputException {
        Part part = Parts.read(file, Instrument.VIOLA);
        assertEquals(part.spans(), part(BowTextWriter.textToEdit(part, false)).spans());
        String every = BowTextWriter.textToEdit(part, true);
        List<MarkedStroke> strokes = strokes(part);
        List<MarkedStroke> again = strokes(part(every));
        assertEquals(
                strokes.stream().map(MarkedStroke::direction).toList(),
                again.stream().map(MarkedStroke::direction).toList());
        assertTrue(again.stream().allMatch(s -> s.marked() || s.reason() instanceof Reason.Hooked));
        assertEquals(
                part.awkward().size(),
                every.lines().filter(line -> line.startsWith("# Bar ")).count());
    }

    private static List<MarkedStroke> strokes(Part part) {
        return part.spans().stream()
                .filter(MarkedStroke.class::isInstance)
                .map(MarkedStroke.class::cast)
                .toList();
    }
}
