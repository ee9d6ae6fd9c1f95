package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.SAXException;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.bowtext.BowTextWriter;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Metre;
import tuttarco.score.Part;

/** Written parts are read again as they were, and their MusicXML holds to the MusicXML 4.0 schema (W3C). */
class PartWritersTest {
    private static Schema musicXml;

    @BeforeAll
    static void readSchema() throws SAXException {
        musicXml = SchemaInput.musicXml();
    }

    static Stream<String> bowTexts() {
        return Stream.of(
                "metre 4/4\n1: d u . .\n",
                "part Violin I & <friends>\nmetre 3/4\npickup: u\n1: d u d\n2: .3\n",
                "metre 4/4\n0 pickup: u1/2\n1: d5/4 .3/4 -2\n2: -4\n3: d4~\n4: ~4~\n5: ~1 u1/3x3 -2\n6 short: d3.5\n",
                "metre 6/8\n16: d3 u3\nmetre 2/2\n17: . .\n18 long: d5\n",
                "metre 4/4\nX1: d1/7x7 u3\n2: d1/16x16 u3/32 -93/32\n",
                "metre 4/4\n1: d3/2 =1/2 . = \n2: .5/4 =3/4 =2~\n3: ~1 - = d\n4: d u - .\n",
                "metre 2/4\n1: u .~\n2: ~1/2 -3/2\n");
    }

    private static Part part(String bowText, Instrument instrument) throws InputException {
        return new BowTextReader().read(bowText.getBytes(StandardCharsets.UTF_8), "a.bowing.txt", instrument);
    }

    @ParameterizedTest
    @MethodSource("bowTexts")
    void writtenPartsAreReadAgainAsTheyWere(String bowText) throws Exception {
        for (Instrument instrument : Instrument.values()) {
            Part part = part(bowText, instrument);
            assertEquals(part, part(BowTextWriter.text(part), instrument));
            String xml = new MusicXmlPartWriter(instrument).text(part);
            musicXml.newValidator().validate(new StreamSource(new StringReader(xml)));
            Part read = new MusicXmlPartReader().read(xml.getBytes(StandardCharsets.UTF_8), "a.xml", instrument);
            assertEquals(part, new Part(read.name(), read.bars(), read.spans(), List.of(), Hints.NONE, read.awkward()));
        }
    }

    /** The schema is not merely accepting everything. */
    @Test
    void theSchemaRefusesAWrongDocument() throws InputException {
        String xml = new MusicXmlPartWriter(Instrument.VIOLIN).text(part("metre 4/4\n1: d u . .", Instrument.VIOLIN));
        String wrong = xml.replace("<down-bow>", "<down-bow/><side-bow>").replace("down-bow/>", "side-bow/>");
        assertThrows(
                SAXException.class, () -> musicXml.newValidator().validate(new StreamSource(new StringReader(wrong))));
    }

    @Test
    void anotherReaderSeesTheBowMarks() throws Exception {
        Part part = part("metre 4/4\npickup: u\n1: d2 . u\n", Instrument.BASS);
        String xml =
                new MusicXmlPartWriter(Instrument.BASS, List.of(new Pitch('D', 0, 3), new Pitch('F', 1, 3))).text(part);
        Object read = Marshalling.unmarshal(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
        ScorePartwise score = (ScorePartwise) read;
        assertEquals(2, score.getPart().get(0).getMeasure().size());
        assertEquals(2, count(xml, "<up-bow"));
        assertEquals(1, count(xml, "<down-bow"));
        assertEquals(2, count(xml, "<step>F</step>"));
        assertTrue(xml.contains("<octave-change>-1</octave-change>"));
    }

    @Test
    void whatCantBeWrittenIsSaid() throws InputException {
        Part named = part("metre 1/4\n1: d", Instrument.VIOLIN);
        Part odd = new Part("p", List.of(Bar.full("one two", new Metre(1, 4))), named.spans());
        assertThrows(IllegalArgumentException.class, () -> BowTextWriter.text(odd));
        Part fine = part("metre 1/4\n1: d1/997 u996/997", Instrument.VIOLIN);
        assertThrows(IllegalArgumentException.class, () -> new MusicXmlPartWriter(Instrument.VIOLIN).text(fine));
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }
}
