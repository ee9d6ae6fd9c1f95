package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.SAXException;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.parts.Parts;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Note;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.score.PartChoice.Line;
import tuttarco.score.Strokes;

/**
 * Reads each file of the folder {@code parts} as the text beside it expects. A text says which {@code file} is read and how
 * ({@code instrument}, {@code part}, {@code voice}, {@code line}, {@code repeats: no}), why this is right ({@code source}),
 * and then {@code refused:} and some of the message, or, after an empty line, the bars played: number, metre where it
 * changes, beats where it is not whole, rehearsal mark, strokes and rests that begin in it, notes. {@code D} and {@code U}
 * are marked, {@code d} and {@code u} not; a note is its MIDI numbers and where the file has it, {@code p} if plucked.
 */
class PartFilesTest {
    /** What stands before the empty line, and the lines after it. */
    private record Expected(Map<String, String> head, List<String> bars) {
        static Expected of(Path file) throws IOException {
            Map<String, String> head = new HashMap<>();
            List<String> lines = Files.readAllLines(file);
            int i = 0;
            for (; i < lines.size() && !lines.get(i).isBlank(); i++) {
                String[] field = lines.get(i).split(": ", 2);
                head.put(field[0], field[1]);
            }
            return new Expected(head, List.copyOf(lines.subList(Math.min(i + 1, lines.size()), lines.size())));
        }

        Optional<String> field(String name) {
            return Optional.ofNullable(head.get(name));
        }

        Instrument instrument() {
            return Instrument.ofWord(field("instrument").orElse("violin")).orElseThrow();
        }

        PartChoice choice() {
            return new PartChoice(
                    field("part"),
                    field("voice"),
                    field("line").flatMap(Line::ofWord),
                    !field("repeats").equals(Optional.of("no")));
        }
    }

    static Path folder() throws URISyntaxException {
        return Path.of(
                Objects.requireNonNull(PartFilesTest.class.getResource("parts")).toURI());
    }

    static List<Path> expectations() throws IOException, URISyntaxException {
        try (Stream<Path> files = Files.list(folder())) {
            List<Path> texts = files.filter(file -> file.toString().endsWith(".expected.txt"))
                    .sorted()
                    .toList();
            assertTrue(texts.size() >= 30, texts.size() + " files");
            return texts;
        }
    }

    @ParameterizedTest
    @MethodSource("expectations")
    void isReadAsExpected(Path text) throws IOException, InputException {
        Expected expected = Expected.of(text);
        assertTrue(expected.field("source").isPresent(), "why is this right?");
        Path file = text.resolveSibling(expected.field("file").orElseThrow());
        Instrument instrument = expected.instrument();
        PartChoice choice = expected.choice();
        Optional<String> refused = expected.field("refused");
        if (refused.isPresent()) {
            InputException e = assertThrows(InputException.class, () -> Parts.read(file, instrument, choice));
            Mutations.assertOneSentence(e);
            assertTrue(e.getMessage().startsWith(file.getFileName().toString()), e.getMessage());
            assertTrue(e.getMessage().contains(refused.get()), e.getMessage());
        } else {
            Part part = Parts.read(file, instrument, choice);
            Strokes.assertGapless(part);
            assertFalse(expected.bars().isEmpty());
            assertEquals(String.join("\n", expected.bars()), String.join("\n", listing(part)));
        }
    }

    /** The files are MusicXML 4.0 by its schema (W3C) where they are to be read. */
    @Test
    void whatIsReadHoldsToTheSchema() throws IOException, URISyntaxException, SAXException {
        Schema schema = SchemaInput.musicXml();
        int valid = 0;
        for (Path text : expectations()) {
            Expected expected = Expected.of(text);
            if (expected.field("refused").isEmpty()) {
                Path file = text.resolveSibling(expected.field("file").orElseThrow());
                schema.newValidator().validate(new StreamSource(file.toFile()));
                valid++;
            }
        }
        assertTrue(valid >= 20, valid + " files");
    }

    /**
     * Every stroke of each file marked, every third a question: what is written holds to the schema, reads as the same bars
     * and notes, and taken up by Proxymusic 4.0.3 it has the same notes as before.
     */
    @Test
    void markedFilesHoldToTheSchemaAndKeepTheirNotes() throws Exception {
        Schema schema = SchemaInput.musicXml();
        int marked = 0;
        for (Path text : expectations()) {
            Expected expected = Expected.of(text);
            if (expected.field("refused").isPresent()) {
                continue;
            }
            Path file = text.resolveSibling(expected.field("file").orElseThrow());
            byte[] before = Files.readAllBytes(file);
            Part part = Parts.read(file, expected.instrument(), expected.choice());
            PartDocument document = PartDocument.read(file);
            int place = document.place(expected.choice(), expected.instrument());
            byte[] after = document.marked(place, marks(part));
            assertFalse(Arrays.equals(before, after), file.toString());
            schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(after)));
            Part again = new MusicXmlPartReader()
                    .read(after, file.getFileName().toString(), expected.instrument(), expected.choice());
            assertEquals(part.bars(), again.bars(), file.toString());
            assertEquals(part.notes(), again.notes(), file.toString());
            if (!file.getFileName().toString().startsWith("timewise")) {
                assertEquals(PartDocumentTest.pitches(before), PartDocumentTest.pitches(after), file.toString());
            }
            marked++;
        }
        assertTrue(marked >= 30, marked + " files");
    }

    private static List<StrokeMark> marks(Part part) {
        List<Note.Written> written =
                part.notes().stream().map(Note::written).distinct().toList();
        return IntStream.range(0, written.size())
                .mapToObj(i -> new StrokeMark(
                        List.of(written.get(i)),
                        Optional.of(i % 2 == 0 ? BowDirection.UP : BowDirection.DOWN),
                        i % 3 == 0))
                .toList();
    }

    private static List<String> listing(Part part) {
        List<String> lines = new ArrayList<>();
        Optional<Metre> metre = Optional.empty();
        for (int i = 0; i < part.bars().size(); i++) {
            Bar bar = part.bars().get(i);
            int index = i;
            String strokes = part.spans().stream()
                    .filter(span -> span.start().barIndex() == index)
                    .map(span -> Strokes.sign(span) + number(span.start().beat()))
                    .collect(Collectors.joining(" "));
            String notes = part.notes().stream()
                    .filter(note -> note.start().barIndex() == index)
                    .map(PartFilesTest::told)
                    .collect(Collectors.joining(" "));
            lines.add((head(bar, !metre.equals(Optional.of(bar.metre()))) + ": " + strokes + " | " + notes)
                    .replaceAll(" +", " ")
                    .strip());
            metre = Optional.of(bar.metre());
        }
        return lines;
    }

    private static String head(Bar bar, boolean metreChanges) {
        boolean whole = bar.firstBeat() == 1 && bar.lengthBeats() == bar.metre().beats();
        return bar.number()
                + (metreChanges ? " " + bar.metre() : "")
                + (whole ? "" : " beats " + number(bar.firstBeat()) + "-" + number(bar.firstBeat() + bar.lengthBeats()))
                + bar.rehearsal().map(mark -> " [" + mark + "]").orElse("");
    }

    private static String told(Note note) {
        String pitches = note.pitches().stream().map(String::valueOf).collect(Collectors.joining("+"));
        Note.Written written = note.written();
        return pitches + (note.plucked() ? "p" : "") + "(" + written.measure() + "." + written.note() + ")";
    }

    private static String number(double beats) {
        return String.format(Locale.ROOT, "%.3f", beats).replaceAll("\\.?0+$", "");
    }
}
