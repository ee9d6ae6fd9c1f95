package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.score.Part;
import tuttarco.score.Strokes;

/** Archives as MusicXML 4.0, Compressed .MXL Files (W3C), describes them, and others. */
class MxlTest {
    private static final String CONTAINER = "META-INF/container.xml";
    private static final String PART = XmlParts.document(XmlParts.first("2/4", XmlParts.note(4)));

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    private void put(String path, String content) {
        files.put(path, content.getBytes(StandardCharsets.UTF_8));
    }

    private void putScore(String path) {
        put("mimetype", "application/vnd.recordare.musicxml");
        put(
                CONTAINER,
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?><container><rootfiles><rootfile full-path=\"" + path
                        + "\" media-type=\"application/vnd.recordare.musicxml+xml\"/><rootfile full-path=\"a.pdf\"/>"
                        + "</rootfiles></container>");
    }

    private byte[] archive() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static Part read(byte[] archive) throws InputException {
        return new MusicXmlPartReader().read(archive, "a.mxl", Instrument.VIOLIN);
    }

    private String refusal() throws IOException {
        byte[] archive = archive();
        InputException e = assertThrows(InputException.class, () -> read(archive));
        Mutations.assertOneSentence(e);
        assertTrue(e.getMessage().startsWith("a.mxl"), e.getMessage());
        return e.getMessage();
    }

    @Test
    void theScoreIsReadWhereverItLies() throws IOException, InputException {
        put("cover.png", "not a picture");
        put("scores/part.musicxml", PART);
        putScore("scores/part.musicxml");
        assertEquals("d", Strokes.bowing(read(archive())));
    }

    @Test
    void whatIsMissingIsSaid() throws IOException {
        put("part.musicxml", PART);
        assertTrue(refusal().contains("has no " + CONTAINER));
        putScore("other.musicxml");
        assertTrue(refusal().contains("its score other.musicxml is missing"));
        put(CONTAINER, "<container><rootfiles/></container>");
        assertTrue(refusal().contains("names no score"));
        put(CONTAINER, "<container><rootfiles>");
        assertTrue(refusal().contains("line 1"));
    }

    @Test
    void pathsOutsideAreRefused() throws IOException {
        for (String path : new String[] {"../part.musicxml", "/part.musicxml", "a/../../b.xml", "C:part.xml", "a\\b"}) {
            files.clear();
            putScore(path);
            assertTrue(refusal().contains("lies outside the archive"), path);
            files.clear();
            put(path, PART);
            putScore("part.musicxml");
            put("part.musicxml", PART);
            assertTrue(refusal().contains("lies outside the archive"), path);
        }
    }

    @Test
    void bombsAreRefused() throws IOException {
        byte[] blanks = new byte[80 << 20];
        Arrays.fill(blanks, (byte) ' ');
        putScore("part.musicxml");
        files.put("part.musicxml", blanks);
        assertTrue(archive().length < blanks.length / 900);
        assertTrue(refusal().contains("packed more densely than any score"));
        files.clear();
        files.put("picture.png", blanks);
        putScore("part.musicxml");
        put("part.musicxml", PART);
        assertTrue(refusal().contains("packed more densely than any score"));
        files.clear();
        putScore("part.musicxml");
        for (int i = 0; i < 1000; i++) {
            put("empty" + i, "");
        }
        put("part.musicxml", PART);
        assertTrue(refusal().contains("more than 1000 files"));
    }

    @Test
    void damagedArchivesAreReadOrRefused() throws IOException {
        putScore("part.musicxml");
        put("part.musicxml", PART);
        Mutations.onlyInputExceptions(archive(), 300, MxlTest::read);
    }

    @Test
    void aMillionNotesAreRefused() throws IOException {
        String note = XmlParts.note(1);
        StringBuilder measures = new StringBuilder(XmlParts.first("64/4", ""));
        for (int bar = 0; bar < 8000; bar++) {
            measures.append("<measure>").append(note.repeat(125)).append("</measure>");
        }
        putScore("part.musicxml");
        put("part.musicxml", XmlParts.document(measures.toString()));
        assertTrue(refusal().contains("KiB, too large"));
        String rest = "<note><rest/><duration>1</duration></note>";
        put("part.musicxml", XmlParts.document(measures.toString().replace(note, rest)));
        byte[] plain = files.get("part.musicxml");
        InputException e = assertThrows(InputException.class, () -> read(plain));
        Mutations.assertOneSentence(e);
        assertTrue(e.getMessage().contains("more than 250000 notes"), e.getMessage());
    }
}
