package tuttarco.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.musicxml.MusicXmlPartWriter;

class PartsTest {
    @TempDir
    Path folder;

    private String refusal(Path file) {
        InputException e = assertThrows(InputException.class, () -> Parts.read(file, Instrument.VIOLIN));
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void theEndingOfTheNameChoosesTheReader() throws IOException, InputException {
        Path text = Files.writeString(folder.resolve("a.bowing.txt"), "metre 2/4\n1: d u\n");
        Path xml = Files.writeString(
                folder.resolve("a.MusicXML"),
                new MusicXmlPartWriter(Instrument.VIOLA).text(Parts.read(text, Instrument.VIOLA)));
        assertEquals(
                Parts.read(text, Instrument.VIOLA).spans(),
                Parts.read(xml, Instrument.VIOLA).spans());
    }

    @Test
    void whatIsNoPartFileIsRefused() throws IOException {
        assertTrue(refusal(folder.resolve("a.pdf")).contains("a.pdf is not a kind of part"));
        assertTrue(refusal(folder.resolve("none.musicxml")).contains("there is no file"));
        assertTrue(refusal(Files.createDirectory(folder.resolve("b.musicxml"))).contains("is a folder"));
        Path zipped = Files.write(folder.resolve("c.mxl"), new byte[] {'P', 'K', 3, 4, 0, 0});
        assertTrue(refusal(zipped).contains("META-INF/container.xml"));
    }
}
