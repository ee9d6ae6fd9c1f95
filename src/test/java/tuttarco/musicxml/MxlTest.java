package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.score.Note.Written;
import tuttarco.score.Part;
import tuttarco.score.Strokes;

/** Archives as MusicXML 4.0, Compressed .MXL Files (W3C), describes them, and others. */
class MxlTest {
    private static final String CONTAINER = "META-INF/container.xml";
    private static final String PART = XmlParts.document(XmlParts.first("2/4", XmlParts.note(4)));

    @TempDir
    Path folder;

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

    private static ZipEntry entry(String path, int method, byte[] content) {
        ZipEntry entry = new ZipEntry(path);
        CRC32 crc = new CRC32();
        crc.update(content);
        entry.setMethod(method);
        entry.setSize(content.length);
        entry.setCrc(crc.getValue());
        entry.setTimeLocal(LocalDateTime.of(2001, 2, 3, 4, 5, 6));
        entry.setComment("about " + path);
        return entry;
    }

    /** A stored first file, a score packed either way, a file behind it; comments, times, extra bytes. */
    private byte[] unusualArchive(int method) throws IOException {
        put("scores/part.musicxml", PART);
        putScore("scores/part.musicxml");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setComment("PK\5\6 is no end");
            for (String path : List.of("mimetype", CONTAINER, "scores/part.musicxml", "cover.png")) {
                byte[] content = files.getOrDefault(path, new byte[500]);
                ZipEntry entry = entry(path, path.equals(CONTAINER) ? ZipEntry.DEFLATED : method, content);
                if (path.startsWith("scores")) {
                    entry.setExtra(new byte[] {7, 7, 2, 0, 'a', 'b'});
                }
                zip.putNextEntry(entry);
                zip.write(content);
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] marked(byte[] archive, BowDirection... signs) throws InputException {
        List<StrokeMark> marks = Stream.of(signs)
                .map(sign -> new StrokeMark(List.of(new Written(0, 0)), Optional.of(sign), false))
                .toList();
        return PartDocument.of(archive, "a.mxl").marked(0, marks);
    }

    /** What the JDK's reader of directories finds, one line a file; the contents with a hash of theirs. */
    private List<String> listing(byte[] archive) throws IOException {
        Path file = Files.write(folder.resolve("a.zip"), archive);
        List<String> lines = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            lines.add(zip.getComment());
            for (ZipEntry entry : Collections.list(zip.entries())) {
                byte[] content = zip.getInputStream(entry).readAllBytes();
                assertEquals(content.length, entry.getSize());
                lines.add(entry + " " + entry.getMethod() + " " + entry.getTimeLocal() + " " + entry.getComment() + " "
                        + Arrays.toString(entry.getExtra()) + " " + Arrays.hashCode(content));
            }
        }
        return lines;
    }

    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    @ParameterizedTest
    @ValueSource(ints = {ZipEntry.STORED, ZipEntry.DEFLATED})
    void aMarkedScoreIsPackedAgainAndAllElseStays(int method) throws IOException, InputException {
        byte[] before = unusualArchive(method);
        byte[] after = marked(before, BowDirection.UP);
        assertEquals("U", Strokes.bowing(read(after)));
        List<String> was = listing(before);
        List<String> is = listing(after);
        assertEquals(5, is.size());
        for (int i = 0; i < is.size(); i++) {
            assertEquals(!is.get(i).startsWith("scores/"), is.get(i).equals(was.get(i)), is.get(i));
        }
        String old = latin(before);
        String now = latin(after);
        int start = old.lastIndexOf("PK\3\4", old.lastIndexOf("scores/part.musicxml\7\7\2\0ab", old.indexOf("PK\1\2")));
        assertEquals(old.substring(0, start), now.substring(0, start));
        String cover = old.substring(old.lastIndexOf("PK\3\4"), old.indexOf("PK\1\2"));
        assertTrue(cover.contains("cover.png") && now.contains(cover + "PK\1\2"));
        assertArrayEquals(before, marked(before), "no marks");
        if (method == ZipEntry.STORED) {
            byte[] plain = PartDocument.of(PART.getBytes(StandardCharsets.UTF_8), "a.musicxml")
                    .marked(
                            0,
                            List.of(new StrokeMark(List.of(new Written(0, 0)), Optional.of(BowDirection.UP), false)));
            assertTrue(now.contains(latin(plain)));
        }
    }

    @Test
    void anArchiveWithADamagedDirectoryIsReadButNotWritten() throws IOException, InputException {
        byte[] whole = unusualArchive(ZipEntry.DEFLATED);
        byte[] cut = Arrays.copyOf(whole, whole.length - 30);
        assertEquals("d", Strokes.bowing(read(cut)));
        InputException e = assertThrows(InputException.class, () -> marked(cut, BowDirection.UP));
        Mutations.assertOneSentence(e);
        assertTrue(e.getMessage().startsWith("a.mxl: nothing can be written into the archive"), e.getMessage());
        Mutations.onlyInputExceptions(whole, 300, bytes -> marked(bytes, BowDirection.UP));
    }

    /** The directory's place of the score is another file's: what would be written is not what would be read. */
    @Test
    void aDirectoryThatPointsElsewhereIsNotWrittenBy() throws IOException, InputException {
        byte[] archive = unusualArchive(ZipEntry.DEFLATED);
        int entry = latin(archive).indexOf("scores/part.musicxml\7\7\2\0ababout") - ZipEntry.CENHDR;
        ByteBuffer.wrap(archive).order(ByteOrder.LITTLE_ENDIAN).putInt(entry + ZipEntry.CENOFF, 0);
        assertEquals("d", Strokes.bowing(read(archive)));
        InputException e = assertThrows(InputException.class, () -> marked(archive, BowDirection.UP));
        assertTrue(e.getMessage().startsWith("a.mxl: nothing can be written into the archive"), e.getMessage());
    }
}
