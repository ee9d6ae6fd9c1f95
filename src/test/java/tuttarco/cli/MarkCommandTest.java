package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.mxl.Mxl;
import org.audiveris.proxymusic.mxl.RootFile;
import org.audiveris.proxymusic.util.Marshalling;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.musicxml.MusicXmlPartWriter;
import tuttarco.strokes.StrokeKind;

/** Both players of the tiny take bow down and up in turn, half a second each. */
class MarkCommandTest {
    @TempDir
    Path folder;

    private Path take;

    @BeforeEach
    void writeTake() throws Exception {
        take = TinyTake.write(folder);
        Files.writeString(take, TinyTake.JSON.replace("part.bowing.txt", "part.musicxml"));
        writePart("metre 3/4\n1: u d u\n2: d u d\n");
    }

    private void writePart(String bowText) throws Exception {
        byte[] text = bowText.getBytes(StandardCharsets.UTF_8);
        Files.writeString(
                folder.resolve("part.musicxml"),
                new MusicXmlPartWriter(Instrument.VIOLIN)
                        .text(new BowTextReader().read(text, "a.bowing.txt", Instrument.VIOLIN)));
    }

    private Shell mark(String player, Path out, Object... more) {
        Stream<Object> words = Stream.of("mark", take, "--player", player, "--show-names", "--no-cache", "--out", out);
        return Shell.run(Stream.concat(words, Stream.of(more)).toArray());
    }

    private static List<String> signs(Path part) throws IOException {
        return Pattern.compile("down-bow|up-bow")
                .matcher(Files.readString(part))
                .results()
                .map(r -> r.group().substring(0, 1))
                .toList();
    }

    private static String withoutMarks(Path part) throws IOException {
        return Files.readString(part).replaceAll("<notations><technical><(down|up)-bow/></technical></notations>", "");
    }

    private Set<String> names() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.map(p -> p.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Jon bows down, up, down; set right, he stays on the first down-bow: the first sign of the second bar is the next. */
    @Test
    void whatWasCorrectedIsMarkedAsCorrected() throws Exception {
        Path read = folder.resolve("read.musicxml");
        assertEquals(0, mark("Jon", read, "--every").code());
        assertEquals(List.of("d", "u", "d", "u", "d", "u"), signs(read));
        CorrectionLog.append(
                take,
                new LogEntry.Done(
                        UUID.randomUUID(),
                        Instant.now(),
                        new Correction.StrokeSet("Jon", 2.5, 3, StrokeKind.STILL),
                        Map.of()));
        CorrectionLog.append(
                take,
                new LogEntry.Done(
                        UUID.randomUUID(),
                        Instant.now(),
                        new Correction.StrokeSet("Nobody", 2.5, 3, StrokeKind.STILL),
                        Map.of()));
        Path corrected = folder.resolve("corrected.musicxml");
        Shell shell = mark("Jon", corrected, "--every");
        assertEquals(0, shell.code(), shell.err());
        assertEquals(List.of("d", "u", "d", "u", "d"), signs(corrected).subList(0, 5));
        assertTrue(Files.readString(folder.resolve("corrected.marks.txt")).contains("1 question"), shell.out());
        assertTrue(shell.err().contains("the take has no such player"), shell.err());
    }

    @Test
    void thePartIsWrittenWithWhatWasPlayedAndNothingElseChanged() throws IOException {
        Path part = folder.resolve("part.musicxml");
        Path out = folder.resolve("new/every.musicxml");
        Shell shell = mark("Jon", out, "--every");
        assertEquals(0, shell.code(), shell.err());
        assertEquals(List.of("d", "u", "d", "u", "d", "u"), signs(out));
        assertEquals(withoutMarks(part), withoutMarks(out));
        assertTrue(shell.out().startsWith("6 signs for 6 strokes as Jon played them, 0 questions"), shell.out());
        assertTrue(shell.out().endsWith("The part lies at " + out + System.lineSeparator()), shell.out());
        assertEquals(shell.out().lines().limit(1).toList(), Files.readAllLines(out.resolveSibling("every.marks.txt")));
    }

    @Test
    void onlyTheStartIsMarkedWhereTheBowTurnsEachTime() throws IOException {
        Path out = folder.resolve("few.xml");
        assertEquals(new Shell(0, "", ""), mark("Ida", out, "--quiet"));
        assertEquals(List.of("d"), signs(out));
        assertEquals(withoutMarks(folder.resolve("part.musicxml")), withoutMarks(out));
    }

    /** A part of one bar, played several times. */
    private void writeRepeatedBar(String metre, String strokes, int times) throws Exception {
        writePart("metre " + metre + "\n1: " + strokes + "\n");
        Path part = folder.resolve("part.musicxml");
        String repeat = "<barline location=\"right\"><repeat direction=\"backward\" times=\"" + times
                + "\"/></barline></measure>";
        Files.writeString(part, Files.readString(part).replace("</measure>", repeat));
        Files.writeString(
                take,
                TinyTake.JSON
                        .replace("part.bowing.txt", "part.musicxml")
                        .replace("{\"file\": \"beats.csv\"}", "{\"tempo_bpm\": 120, \"start_s\": 0}"));
    }

    @Test
    void aRepeatedBarHasTheSignsThatEachPlayingAgreesOn() throws Exception {
        writeRepeatedBar("2/4", "u u", 3);
        Path out = folder.resolve("out.musicxml");
        Shell shell = mark("Jon", out, "--every");
        assertEquals(0, shell.code(), shell.err());
        assertEquals(List.of("d", "u"), signs(out));
        assertEquals(
                List.of("2 signs for 2 strokes as Jon played them, 0 questions; the part's own bow signs on these"
                        + " strokes were replaced."),
                Files.readAllLines(folder.resolve("out.marks.txt")));
    }

    @Test
    void aRepeatedBarPlayedOtherwiseTheSecondTimeIsAQuestionThatTellsBoth() throws Exception {
        writeRepeatedBar("3/4", ". . .", 2);
        Path out = folder.resolve("out.musicxml");
        assertEquals(0, mark("Jon", out).code());
        assertEquals(List.of("d", "u", "d"), signs(out));
        assertEquals(3, Files.readString(out).split(">\\?</words>", -1).length - 1);
        assertEquals(
                List.of(
                        "3 signs for 3 strokes as Jon played them, 3 questions; the part's own bow signs on these strokes"
                                + " were replaced.",
                        "bar 1 beat 1: a question, for it was played down at 0:00.0 and up at 0:01.5.",
                        "bar 1 beat 2: a question, for it was played up at 0:00.5 and down at 0:02.0.",
                        "bar 1 beat 3: a question, for it was played down at 0:01.0 and up at 0:02.5."),
                Files.readAllLines(folder.resolve("out.marks.txt")));
    }

    /** Proxymusic 4.0.3 opens the archive and finds the same notes with the signs. */
    @Test
    void aCompressedPartStaysCompressed() throws Exception {
        byte[] score = Files.readAllBytes(folder.resolve("part.musicxml"));
        Path part = folder.resolve("part.mxl");
        Mxl.Output archive = new Mxl.Output(part.toFile());
        archive.addFirstEntry(new RootFile("score.xml", RootFile.MUSICXML_MEDIA_TYPE));
        archive.getOutputStream().write(score);
        archive.close();
        Files.writeString(take, TinyTake.JSON.replace("part.bowing.txt", "part.mxl"));
        assertRefused(2, "let it end in NAME.mxl", mark("Jon", folder.resolve("out.musicxml")));
        Path out = folder.resolve("out.mxl");
        Shell shell = mark("Jon", out, "--every");
        assertEquals(0, shell.code(), shell.err());
        Path opened = folder.resolve("opened.xml");
        try (Mxl.Input marked = new Mxl.Input(out.toFile())) {
            RootFile root = marked.getRootFiles().get(0);
            Files.copy(marked.getInputStream(marked.getEntry(root.fullPath)), opened);
        }
        assertEquals(List.of("d", "u", "d", "u", "d", "u"), signs(opened));
        assertEquals(withoutMarks(folder.resolve("part.musicxml")), withoutMarks(opened));
        try (InputStream document = Files.newInputStream(opened)) {
            assertInstanceOf(ScorePartwise.class, Marshalling.unmarshal(document));
        }
    }

    private void assertRefused(int code, String word, Shell shell) throws IOException {
        assertEquals(code, shell.code(), shell.err());
        assertEquals(1, shell.errLines().size(), shell.err());
        assertTrue(shell.err().contains(word), shell.err());
        assertEquals("", shell.out());
        assertFalse(names().contains("out.musicxml"));
        assertFalse(names().contains("out.marks.txt"));
    }

    @Test
    void whatCantBeMarkedIsRefused() throws Exception {
        Path out = folder.resolve("out.musicxml");
        assertRefused(3, "'Ida', 'Jon'", mark("Kim", out));
        assertRefused(2, "does not end in", mark("Ida", folder.resolve("out.txt")));
        Path part = folder.resolve("part.musicxml");
        String before = Files.readString(part);
        assertRefused(2, "the take's own part", mark("Ida", part));
        assertEquals(before, Files.readString(part));
        Files.writeString(part, before.substring(0, before.length() / 2));
        assertRefused(3, "part.musicxml: line", mark("Ida", out));
        Files.writeString(take, TinyTake.JSON);
        assertRefused(3, "part.bowing.txt", mark("Ida", out));
        Files.writeString(take, TinyTake.JSON.replace("\"part\": \"part.bowing.txt\",", ""));
        assertRefused(3, "there is no part", mark("Ida", out));
        Files.writeString(take, TinyTake.JSON.replace("part.bowing.txt", "part.musicxml"));
        Files.writeString(part, before);
        assertRefused(5, "it is a file", mark("Ida", take.resolve("out.musicxml")));
    }
}
