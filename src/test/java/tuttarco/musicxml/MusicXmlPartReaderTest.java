package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tuttarco.musicxml.XmlParts.bar;
import static tuttarco.musicxml.XmlParts.document;
import static tuttarco.musicxml.XmlParts.down;
import static tuttarco.musicxml.XmlParts.first;
import static tuttarco.musicxml.XmlParts.note;
import static tuttarco.musicxml.XmlParts.rest;
import static tuttarco.musicxml.XmlParts.slur;
import static tuttarco.musicxml.XmlParts.up;
import static tuttarco.score.Strokes.bowing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartReader;
import tuttarco.score.PartReaderContract;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.Strokes;

class MusicXmlPartReaderTest extends PartReaderContract {
    @Override
    protected PartReader reader() {
        return new MusicXmlPartReader();
    }

    @Override
    protected String fileName() {
        return "inner.musicxml";
    }

    @Override
    protected String markedBar() {
        return document(first("4/4", note(2, down()) + note(2, up()) + note(2) + note(2)));
    }

    @Override
    protected String unmarkedBar() {
        return document(first("4/4", note(2).repeat(4)));
    }

    @Override
    protected String pickup() {
        return document(
                first("3/4", note(2)).replace("number=\"1\"", "number=\"0\" implicit=\"yes\"") + bar(1, note(6)));
    }

    @Override
    protected String heldOver() {
        return document(first("4/4", note(8, "<tied type=\"start\"/>" + down()))
                + bar(2, note(2, "<tied type=\"stop\"/>") + note(2) + rest(4))
                + bar(3, rest(8))
                + bar(4, note(8)));
    }

    @Override
    protected String onlyRests() {
        return document(first("4/4", rest(8)));
    }

    private String read(String measures) throws InputException {
        Part part = read(document(measures), Instrument.VIOLIN);
        Strokes.assertGapless(part);
        return bowing(part);
    }

    @Test
    void notesUnderASlurAreOneStroke() throws InputException {
        assertEquals(
                "D u d",
                read(first(
                        "4/4",
                        note(2, slur("start", 1) + down())
                                + note(2, up())
                                + note(2, slur("stop", 1))
                                + note(1)
                                + note(1))));
    }

    @Test
    void slursReachOverBarLinesAndMeetOnOneNote() throws InputException {
        String chained = note(4, slur("start", 1) + slur("stop", 1));
        assertEquals(
                "d u",
                read(first("4/4", note(4, slur("start", 1)) + chained) + bar(2, note(4, slur("stop", 1)) + note(4))));
        assertEquals(
                "d u d u",
                read(first("4/4", note(2, slur("start", 2)) + note(2, slur("stop", 3)) + note(2) + note(2))));
    }

    @Test
    void aRestEndsAStroke() throws InputException {
        assertEquals("d - u", read(first("4/4", note(2) + rest(2) + note(4))));
    }

    @Test
    void chordsGraceNotesCuesAndOtherVoicesAreNoStrokesOfTheirOwn() throws InputException {
        String chord = note(4, up()).replace("<pitch>", "<chord/><pitch>");
        String grace = note(1, down()).replace("<pitch>", "<grace/><pitch>").replace("<duration>1</duration>", "");
        String cue = note(4).replace("<pitch>", "<cue/><pitch>");
        String second = "<backup><duration>8</duration></backup>"
                + note(1).replace("<voice>1", "<voice>2").repeat(8);
        assertEquals("U -", read(first("4/4", grace + note(4) + chord + cue + second)));
    }

    @Test
    void aForwardIsARestAndAnEmptyBarRestsThroughout() throws InputException {
        Part part = read(
                document(first("4/4", "<forward><duration>4</duration></forward>" + note(4)) + bar(2, "")),
                Instrument.VIOLIN);
        assertEquals("- d -", bowing(part));
        assertEquals(new Position(1, 5), part.spans().get(2).end());
    }

    @Test
    void pluckedNotesAreRestsOfTheBow() throws InputException {
        String pizz = "<direction><direction-type><words>pizz.</words></direction-type></direction>";
        String arco = "<direction><sound pizzicato=\"no\"/></direction>";
        assertEquals("d - u", read(first("4/4", note(2) + pizz + note(2) + note(2) + arco + note(2))));
    }

    @Test
    void metreAndDivisionsChange() throws InputException {
        String change =
                "<attributes><divisions>6</divisions><time><beats>3+3</beats><beat-type>8</beat-type></time></attributes>";
        Part part = read(
                document(first("2/4", note(4)) + bar(2, change + note(2) + note(2) + note(14))), Instrument.VIOLIN);
        assertEquals(Bar.full("2", new Metre(6, 8)), part.bars().get(1));
        assertEquals(7.0 / 3, part.spans().get(3).start().beat());
    }

    @Test
    void aFirstBarShorterThanItsMetreIsAPickupAndALaterOneEndsEarly() throws InputException {
        Part part = read(document(first("4/4", note(1)) + bar(1, note(8)) + bar(2, note(7))), Instrument.VIOLIN);
        assertEquals(new Bar("1", new Metre(4, 4), 4.5, 0.5), part.bars().get(0));
        assertEquals(new Bar("2", new Metre(4, 4), 1, 3.5), part.bars().get(2));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <html/>                                         | not MusicXML but a document of <html>
            <score-timewise/>                               | holds no part
            <score-partwise/>                               | holds no part
            <score-partwise><part/></score-partwise>        | no bars
            <score-partwise><part><measure/></part></score-partwise> | no time signature
            <score-partwise><part>                          | line 1, column
            PK                                              | META-INF/container.xml
            """)
    void otherDocumentsAreRefused(String content, String expected) {
        String message = refusal(content);
        assertTrue(message.startsWith("inner.musicxml") && message.contains(expected), message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <divisions>2</divisions>       |                             | before any <divisions>
            <duration>2</duration>         | <duration>-2</duration>     | positive number, not '-2'
            <duration>2</duration>         | <duration>NaN</duration>    | positive number, not 'NaN'
            <duration>2</duration>         | <duration>1e9</duration>    | positive number
            <duration>2</duration>         | <duration>0</duration>      | positive number
            <duration>2</duration>         | <duration>999999999</duration> | a length that no bar has
            <duration>2</duration>         | <duration/>                 | positive number
            <duration>2</duration>         |                             | no duration
            <divisions>2</divisions>       | <divisions>0</divisions>    | positive number
            <beats>4</beats>               | <beats>65</beats>           | 1 to 64 beats
            <beats>4</beats>               | <beats>C</beats>            | can't be read
            <beat-type>4</beat-type>       | <beat-type>5</beat-type>    | lower figure
            <beat-type>4</beat-type>       |                             | can't be read
            <voice>1</voice>               | &lol;                       | line
            <voice>1</voice>               | <voice>                     | line
            number="1"                     | number="123456789012345678901" | bar number
            """)
    void mistakesAreNamedWithTheirPlace(String part, String instead, String expected) {
        String message = refusal(markedBar().replace(part, instead == null ? "" : instead));
        assertTrue(message.contains("line ") && message.contains(expected), message);
    }

    @Test
    void goingBackBeyondTheBarIsRefused() {
        String message = refusal(document(first("4/4", "<backup><duration>1</duration></backup>" + note(8))));
        assertTrue(message.contains("beyond the beginning of the bar"), message);
    }

    @Test
    void nestingHasABound() {
        assertTrue(refusal("<score-partwise>" + "<a>".repeat(100_000)).contains("deep"));
    }

    @Test
    void anEntityBombIsRefusedUnread() {
        String bomb =
                "<!DOCTYPE score-partwise [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
                        + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">]>";
        String message =
                refusal(markedBar().replaceFirst("<!DOCTYPE[^>]*>", bomb).replace("Inner Voices", "&c;"));
        assertTrue(message.contains("declares entities of its own"), message);
    }

    @Test
    void anExternalEntityIsNotOpened(@TempDir Path folder) throws IOException, InputException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "not to be read", StandardCharsets.UTF_8);
        String external = "<!DOCTYPE score-partwise [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>";
        String inside = markedBar().replaceFirst("<!DOCTYPE[^>]*>", external).replace("Inner Voices", "&x;");
        assertTrue(refusal(inside).contains("declares entities of its own"));
        String outside = markedBar().replace("partwise.dtd", secret.toUri().toString());
        assertEquals("D U d u", bowing(read(outside, Instrument.VIOLIN)));
        String unknown = refusal(outside.replace("Inner Voices", "&x;"));
        assertFalse(unknown.contains("not to be read"), unknown);
    }

    @Test
    void otherEncodingsAreReadAsDeclared() throws InputException {
        byte[] wide = markedBar().replace("UTF-8", "UTF-16").getBytes(StandardCharsets.UTF_16);
        assertEquals("D U d u", bowing(reader().read(wide, fileName(), Instrument.VIOLIN)));
    }
}
