package tuttarco.bowtext;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.score.Strokes;

/** The page about bow text shows what is really read and said. */
class BowTextPageTest {
    private static final Pattern EXAMPLE = Pattern.compile("```text\n(.*?)```", Pattern.DOTALL);

    private static String page() throws IOException {
        return Files.readString(Path.of("src/site/markdown/bow-text.md"));
    }

    private static Part read(String text) throws InputException {
        return new BowTextReader().read(text.getBytes(StandardCharsets.UTF_8), "viola.bowing.txt", Instrument.VIOLA);
    }

    @Test
    void itsExamplesAreRead() throws IOException, InputException {
        List<String> examples = EXAMPLE.matcher(page())
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList();
        assertEquals(2, examples.size());
        assertEquals(7, read(examples.get(0)).bars().size());
        assertEquals("D U D U d u d u d u D", Strokes.bowing(read(examples.get(1))));
    }

    @Test
    void itsMessageIsTheOneGiven() throws IOException {
        InputException e = assertThrows(InputException.class, () -> read("part Viola\nmetre 3/8\n16: d u\n"));
        assertTrue(page().replaceAll("\\s+", " ").contains(e.getMessage()), e.getMessage());
    }
}
