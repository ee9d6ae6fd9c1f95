package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.files.InputException;
import tuttarco.score.Note;
import tuttarco.score.Note.Written;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;

/** What is written holds to the MusicXML 4.0 schema (W3C), and nothing but marks is written. */
class PartDocumentTest {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">"
            + "<part-list><score-part id=\"P1\"><part-name>Violin</part-name></score-part></part-list>\n<part id=\"P1\">";
    private static final String FIRST = "<measure number=\"1\"><attributes><divisions>1</divisions>"
            + "<time><beats>4</beats><beat-type>4</beat-type></time></attributes>";
    private static final String FOOT = "</measure></part></score-partwise>\n";
    private static final String PITCH = "<pitch><step>A</step><octave>4</octave></pitch><duration>1</duration>";
    private static final String NOTE = "<note>" + PITCH + "</note>";
    private static final String MARKED =
            "<note>" + PITCH + "<notations><technical><up-bow/></technical></notations></note>";

    private static String document(String notes) {
        return HEAD + FIRST + notes + FOOT;
    }

    private static StrokeMark mark(int measure, int note, BowDirection sign) {
        return new StrokeMark(List.of(new Written(measure, note)), Optional.of(sign), false);
    }

    private static StrokeMark question(int note, Optional<BowDirection> sign) {
        return new StrokeMark(List.of(new Written(0, note)), sign, true);
    }

    private static String marked(String document, StrokeMark... marks) throws InputException {
        byte[] bytes = PartDocument.of(document.getBytes(StandardCharsets.UTF_8), "a.musicxml")
                .marked(0, List.of(marks));
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void assertValid(String document) throws Exception {
        SchemaInput.musicXml()
                .newValidator()
                .validate(new StreamSource(new ByteArrayInputStream(document.getBytes(StandardCharsets.UTF_8))));
    }

    /** What stands in the note, and what shall stand there when a down-bow is marked. */
    static Stream<List<String>> notes() {
        String down = "<down-bow/>";
        String all = "<notations><technical>" + down + "</technical></notations>";
        String before = PITCH + "<voice>1</voice><type>quarter</type><stem>up</stem>";
        return Stream.of(
                List.of(before, before + all),
                List.of(before + "<lyric><text>a</text></lyric>", before + all + "<lyric><text>a</text></lyric>"),
                List.of(before + "<play><mute>on</mute></play>", before + all + "<play><mute>on</mute></play>"),
                List.of(
                        before + "<notations><fermata/></notations><lyric><text>a</text></lyric>",
                        before + "<notations><fermata/><technical>" + down
                                + "</technical></notations><lyric><text>a</text></lyric>"),
                List.of(
                        before + "<notations><technical><fingering>1</fingering></technical><fermata/></notations>",
                        before + "<notations><technical><fingering>1</fingering>" + down
                                + "</technical><fermata/></notations>"),
                List.of(
                        before
                                + "<notations><fermata/></notations><notations><technical>\n <stopped/>\n</technical></notations>",
                        before + "<notations><fermata/></notations><notations><technical>\n <stopped/>" + down
                                + "\n</technical></notations>"),
                List.of(before + "<notations/>", before + "<notations><technical>" + down + "</technical></notations>"),
                List.of(
                        before + "<notations><technical id='a>b' /></notations>",
                        before + "<notations><technical id='a>b' >" + down + "</technical></notations>"),
                List.of(
                        before + "<notations><technical></technical></notations>",
                        before + "<notations><technical>" + down + "</technical></notations>"),
                List.of(
                        before + "<notations><technical><up-bow placement=\"above\"/></technical></notations>",
                        before + all),
                List.of(
                        before + "<notations><technical><up-bow></up-bow><up-bow/></technical></notations>",
                        before + all),
                List.of(
                        before + "<notations><technical><up-bow/></technical></notations>"
                                + "<notations><fermata/><technical><up-bow/><!-- a --></technical></notations>",
                        before + all + "<notations><fermata/><technical><!-- a --></technical></notations>"),
                List.of(
                        before + "<notations><technical><down-bow placement=\"below\"/></technical></notations>",
                        before + "<notations><technical><down-bow placement=\"below\"/></technical></notations>"),
                List.of(
                        "<!-- <note> --><?a <note>?>" + before + "\r\n",
                        "<!-- <note> --><?a <note>?>" + before + all + "\r\n"));
    }

    @ParameterizedTest
    @MethodSource("notes")
    void aSignGoesWhereTheSchemaHasIt(List<String> note) throws Exception {
        String wanted = document(NOTE + "<note>" + note.get(1) + "</note>" + MARKED);
        assertEquals(
                wanted,
                marked(document(NOTE + "<note>" + note.get(0) + "</note>" + MARKED), mark(0, 1, BowDirection.DOWN)));
        if (!note.get(1).contains("id='a>b'")) {
            assertValid(wanted);
        }
    }

    /** Of a score the part is marked that is read: chosen by its name, or the one that fits the instrument. */
    @Test
    void theChosenPartOfAScoreIsMarked() throws Exception {
        String second = "</measure></part><part id=\"P2\">" + FIRST;
        String score = document(NOTE + second + NOTE)
                .replace("</part-list>", "<score-part id=\"P2\"><part-name>Cello</part-name></score-part></part-list>");
        PartDocument document = PartDocument.of(score.getBytes(StandardCharsets.UTF_8), "a.musicxml");
        int cello = document.place(PartChoice.DEFAULT, Instrument.CELLO);
        assertEquals(1, cello);
        assertEquals(0, document.place(PartChoice.DEFAULT, Instrument.VIOLIN));
        assertEquals(
                score.replace(second + NOTE, second + MARKED),
                new String(document.marked(cello, List.of(mark(0, 0, BowDirection.UP))), StandardCharsets.UTF_8));
    }

    @Test
    void whatHeldOnlyASignGoesWithIt() throws Exception {
        String note =
                "<note>" + PITCH + "\r\n\t<notations>\r\n\t\t<technical>\r\n\t\t\t<up-bow/>%s\r\n\t\t</technical>%s"
                        + "\r\n\t</notations>\r\n</note>";
        StrokeMark none = new StrokeMark(List.of(new Written(0, 0)), Optional.empty(), false);
        assertEquals(document("<note>" + PITCH + "\r\n</note>"), marked(document(note.formatted("", "")), none), "all");
        assertEquals(
                document(note.formatted("", "<fermata/>").replaceFirst("(?s)\\s*<technical>.*</technical>", "")),
                marked(document(note.formatted("", "<fermata/>")), none),
                "only the technical signs");
        assertEquals(
                document(note.formatted("<open-string/>", "").replaceFirst("\\s*<up-bow/>", "")),
                marked(document(note.formatted("<open-string/>", "")), none),
                "only the sign");
    }

    /** Signs of a stroke's later notes and of its chords are taken away, those of other strokes stay. */
    @Test
    void aStrokeHasOneSign() throws Exception {
        String chord = "<note><chord/>" + PITCH + "%s</note>";
        String bow = "<notations><technical><up-bow/></technical></notations>";
        StrokeMark mark =
                new StrokeMark(List.of(new Written(0, 1), new Written(0, 3)), Optional.of(BowDirection.DOWN), false);
        assertEquals(
                document(MARKED
                        + MARKED.replace("up-", "down-")
                        + chord.formatted("")
                        + NOTE
                        + chord.formatted("")
                        + MARKED
                        + chord.formatted(bow)),
                marked(
                        document(MARKED
                                + MARKED
                                + chord.formatted(bow)
                                + MARKED
                                + chord.formatted(bow)
                                + MARKED
                                + chord.formatted(bow)),
                        mark));
    }

    /** A grace note slurred to the stroke's first note begins the stroke; one with a bow of its own doesn't. */
    @Test
    void aSignOnAGraceNoteGoesWithItsStroke() throws Exception {
        String grace = "<note><grace/><pitch><step>G</step><octave>4</octave></pitch>%s</note>";
        String bow = "<technical><up-bow/></technical>";
        String own = grace.formatted("<notations>" + bow + "</notations>");
        String slurred = grace.formatted("<notations><slur type=\"start\"/>" + bow + "</notations>");
        assertEquals(
                document(own + slurred.replace(bow, "") + MARKED.replace("up-", "down-") + slurred + NOTE),
                marked(document(own + slurred + NOTE + slurred + NOTE), mark(0, 2, BowDirection.DOWN)));
    }

    @Test
    void questionsAreColouredAndGoAgain() throws Exception {
        String plain = document(NOTE + NOTE);
        String asked = marked(plain, question(0, Optional.of(BowDirection.UP)), question(1, Optional.empty()));
        assertEquals(
                document(MusicXmlMarks.QUESTION
                        + MARKED.replace("<up-bow/>", "<up-bow color=\"#8C3B1F\"/>")
                        + MusicXmlMarks.QUESTION
                        + NOTE),
                asked);
        assertTrue(asked.contains(">?</words>"));
        assertValid(asked);
        assertEquals(asked, marked(asked, question(0, Optional.of(BowDirection.UP)), question(1, Optional.empty())));
        assertEquals(
                document(MARKED + MARKED), marked(asked, mark(0, 0, BowDirection.UP), mark(0, 1, BowDirection.UP)));
    }

    /** A mark of the other direction is written and then the old one again: the bytes are those of before. */
    @ParameterizedTest
    @CsvSource({"UTF-8,", "UTF-8,\uFEFF", "UTF-16LE,\uFEFF", "UTF-16BE,\uFEFF", "ISO-8859-1,", "windows-1252,"})
    void everyOtherByteStays(String encoding, String start) throws Exception {
        Charset charset = Charset.forName(encoding);
        String head = (start == null ? "" : start)
                + HEAD.replace("UTF-8", encoding.replaceAll("[BL]E", ""))
                        .replace("<score-partwise", "<!DOCTYPE score-partwise PUBLIC \"a\" 'b>c'>\r\n<score-partwise")
                        .replace("Violin", "Gr\u00fc\u00dfe &amp; &#x1D11E; &lt;");
        String text = head + FIRST + "<!-- \u00e9 > -->\r\n" + NOTE + MARKED + "<![CDATA[ ]]>" + FOOT;
        byte[] before = text.getBytes(charset);
        byte[] other = PartDocument.of(before, "a.xml").marked(0, List.of(mark(0, 1, BowDirection.DOWN)));
        assertArrayEquals(text.replace("up-bow", "down-bow").getBytes(charset), other);
        assertArrayEquals(before, PartDocument.of(other, "a.xml").marked(0, List.of(mark(0, 1, BowDirection.UP))));
        assertArrayEquals(before, PartDocument.of(before, "a.xml").marked(0, List.of()));
    }

    @Test
    void measuresAndPartsAreCountedEitherWay() throws Exception {
        String partwise = HEAD + FIRST + NOTE + "</measure><measure number=\"2\">" + NOTE + NOTE
                + "</measure></part><part id=\"P2\"><measure number=\"1\">" + NOTE + "</measure><measure number=\"2\">"
                + NOTE + "%s" + FOOT;
        byte[] bytes = partwise.formatted(NOTE).getBytes(StandardCharsets.UTF_8);
        assertEquals(
                partwise.formatted(MARKED),
                new String(
                        PartDocument.of(bytes, "a.xml").marked(1, List.of(mark(1, 1, BowDirection.UP))),
                        StandardCharsets.UTF_8));
        String timewise = "<score-timewise><part-list/><measure number=\"1\"><part id=\"P1\">" + NOTE
                + "</part><part id=\"P2\"/></measure><measure number=\"2\"><part id=\"P1\">" + NOTE
                + "</part><part id=\"P2\">" + NOTE + "%s</part></measure></score-timewise>";
        bytes = timewise.formatted(NOTE).getBytes(StandardCharsets.UTF_8);
        assertEquals(
                timewise.formatted(MARKED),
                new String(
                        PartDocument.of(bytes, "a.xml").marked(1, List.of(mark(1, 1, BowDirection.UP))),
                        StandardCharsets.UTF_8));
    }

    /** A file of MusicXML 3.1 keeps its document type line and its version, and holds to the schema. */
    @Test
    void anOlderFileStaysOne() throws Exception {
        String old = document(NOTE)
                .replace("version=\"4.0\"", "version=\"3.1\"")
                .replace(
                        "<score-partwise",
                        "<!DOCTYPE score-partwise PUBLIC \"-//Recordare//DTD MusicXML 3.1 Partwise//EN\""
                                + " \"http://www.musicxml.org/dtds/partwise.dtd\">\n<score-partwise");
        String asked = marked(old, question(0, Optional.of(BowDirection.UP)));
        assertEquals(
                old.replace(NOTE, MusicXmlMarks.QUESTION + MARKED.replace("<up-bow/>", "<up-bow color=\"#8C3B1F\"/>")),
                asked);
        assertValid(asked.replaceFirst("<!DOCTYPE[^>]*>", ""));
    }

    /** Proxymusic 4.0.3 reads the file and finds the same notes with the signs written. */
    @Test
    void anotherReaderFindsTheSameNotesAndTheSigns() throws Exception {
        Part part = new BowTextReader()
                .read(
                        "metre 4/4\n1: d u . .\n2: -1 d2 u\n3: d4~\n4: ~4\n".getBytes(StandardCharsets.UTF_8),
                        "a.bowing.txt",
                        Instrument.VIOLIN);
        byte[] before = new MusicXmlPartWriter(Instrument.VIOLIN).text(part).getBytes(StandardCharsets.UTF_8);
        List<Note> notes = new MusicXmlPartReader()
                .read(before, "a.xml", Instrument.VIOLIN)
                .notes();
        assertEquals(7, notes.size());
        List<StrokeMark> marks = IntStream.range(0, notes.size())
                .mapToObj(i -> new StrokeMark(
                        List.of(notes.get(i).written()),
                        Optional.of(i % 2 == 0 ? BowDirection.UP : BowDirection.DOWN),
                        false))
                .toList();
        byte[] after = PartDocument.of(before, "a.xml").marked(0, marks);
        assertEquals(pitches(before), pitches(after));
        assertEquals(List.of("down-bow", "up-bow", "down-bow", "up-bow", "down-bow"), signs(before));
        assertEquals(List.of("up-bow", "down-bow", "up-bow", "down-bow", "up-bow", "down-bow", "up-bow"), signs(after));
    }

    private static List<org.audiveris.proxymusic.Note> notes(byte[] document) throws Exception {
        ScorePartwise score = (ScorePartwise) Marshalling.unmarshal(new ByteArrayInputStream(document));
        return score.getPart().get(0).getMeasure().stream()
                .flatMap(m -> m.getNoteOrBackupOrForward().stream())
                .filter(org.audiveris.proxymusic.Note.class::isInstance)
                .map(org.audiveris.proxymusic.Note.class::cast)
                .toList();
    }

    static List<String> pitches(byte[] document) throws Exception {
        return notes(document).stream()
                .map(n -> n.getDuration() + " "
                        + (n.getPitch() == null
                                ? "rest"
                                : n.getPitch().getStep() + "" + n.getPitch().getOctave()))
                .toList();
    }

    private static List<String> signs(byte[] document) throws Exception {
        List<String> signs = new ArrayList<>();
        for (org.audiveris.proxymusic.Note note : notes(document)) {
            note.getNotations().stream()
                    .flatMap(n -> n.getTiedOrSlurOrTuplet().stream())
                    .filter(org.audiveris.proxymusic.Technical.class::isInstance)
                    .flatMap(t -> ((org.audiveris.proxymusic.Technical) t).getUpBowOrDownBowOrHarmonic().stream())
                    .forEach(e -> signs.add(e.getName().getLocalPart()));
        }
        return signs;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "<score-partwise><part id=\"P1\"><measure number=\"1\"><note>",
                "<!DOCTYPE a [<!ENTITY b \"c\">]><score-partwise/>",
                "<?xml version=\"1.0\" encoding=\"nonsense\"?><score-partwise/>",
                "no XML"
            })
    void whatIsNoDocumentIsRefused(String content) {
        InputException e = assertThrows(
                InputException.class, () -> PartDocument.of(content.getBytes(StandardCharsets.UTF_8), "a.musicxml"));
        assertTrue(e.getMessage().startsWith("a.musicxml"), e.getMessage());
        assertFalse(e.getMessage().contains("\n"), e.getMessage());
    }

    @Test
    void aNoteThatIsNotThereIsSaid() {
        InputException e =
                assertThrows(InputException.class, () -> marked(document(NOTE), mark(0, 1, BowDirection.UP)));
        assertTrue(e.getMessage().contains("note number 2 in its measure number 1"), e.getMessage());
    }
}
