package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.files.InputException;
import tuttarco.files.Sha256;
import tuttarco.strokes.StrokeKind;

class CorrectionLogTest {
    private static final List<LogEntry> ONE_OF_EACH = List.of(
            new LogEntry.Done(
                    Logged.id(1),
                    Logged.at(1),
                    new Correction.StrokeSet("Nora \"N\"", 1.25, 2.0000001, StrokeKind.UP),
                    Map.of(StrokeKind.DOWN, 0.5, StrokeKind.UNSURE, 0.25)),
            Logged.done(2, new Correction.ChangeMoved("Nora", 0.1 + 0.2, 1e-7)),
            new LogEntry.Done(
                    Logged.id(3),
                    Logged.at(3),
                    new Correction.Absent("Jörg", -1, 400),
                    Map.of(StrokeKind.UNSEEN, 401.0)),
            Logged.done(4, new Correction.BeatMoved("12a", 3, 7.5, 7.625)),
            Logged.undone(5, 4),
            Logged.redone(6, 4));

    @TempDir
    Path folder;

    private Path take() {
        return folder.resolve("evening.take.json");
    }

    private Path log() {
        return folder.resolve("evening.corrections.jsonl");
    }

    private void appendAll() throws Exception {
        for (LogEntry entry : ONE_OF_EACH) {
            CorrectionLog.append(take(), entry);
        }
    }

    @Test
    void whatIsWrittenIsReadAgainToTheLastBit() throws Exception {
        assertEquals(CorrectionLog.EMPTY, CorrectionLog.of(take()));
        appendAll();
        CorrectionLog read = CorrectionLog.of(take());
        assertEquals(ONE_OF_EACH, read.entries());
        assertEquals(List.of(), read.notes());
        assertEquals(Optional.of(Sha256.of(log())), read.sha256());
        assertEquals(ONE_OF_EACH.size(), Files.readAllLines(log()).size());
    }

    @Test
    void aLineSaysWhatTheReadmeSays() throws Exception {
        CorrectionLog.append(take(), ONE_OF_EACH.get(0));
        assertEquals(
                "{\"version\":1,\"id\":\"00000000-0000-0007-0000-000000000001\",\"at\":\"2026-11-26T07:01:00Z\","
                        + "\"what\":\"stroke\",\"player\":\"Nora \\\"N\\\"\",\"from_s\":1.25,\"to_s\":2.0000001,"
                        + "\"kind\":\"up\",\"was_s\":{\"down\":0.5,\"unsure\":0.25}}\n",
                Files.readString(log()));
    }

    /** Cut off anywhere in the last line, the others stand, and the next one is not glued to what is left. */
    @Test
    void aTornLineIsPassedOverAndTold() throws Exception {
        appendAll();
        long whole = Files.size(log());
        int last = CorrectionLine.of(ONE_OF_EACH.get(5)).length;
        for (int cut = 1; cut < last; cut++) {
            try (RandomAccessFile file = new RandomAccessFile(log().toFile(), "rw")) {
                file.setLength(whole - 1 - cut);
            }
            CorrectionLog torn = CorrectionLog.of(take());
            assertEquals(ONE_OF_EACH.subList(0, 5), torn.entries());
            assertEquals(
                    List.of(
                            "evening.corrections.jsonl: line 6 was cut off or is damaged. The line is passed over, and stays"
                                    + " where it is."),
                    torn.notes());
            CorrectionLog.append(take(), ONE_OF_EACH.get(5));
            assertEquals(ONE_OF_EACH, CorrectionLog.of(take()).entries());
            Files.delete(log());
            appendAll();
        }
    }

    @Test
    void linesThatSayNothingKnownArePassedOverAndStay() throws Exception {
        CorrectionLog.append(take(), ONE_OF_EACH.get(0));
        String good = Files.readString(log());
        List<String> bad = List.of(
                "[]",
                "null",
                "{}",
                good.replace("\"version\":1", "\"version\":2").strip(),
                good.replace("stroke", "colour").replace("0001\"", "0002\"").strip(),
                good.replace("\"up\"", "\"sideways\"").strip(),
                good.replace("\"up\"", "\"absent\"").strip(),
                good.replace("1.25", "1e999").strip(),
                good.replace("1.25", "3").strip(),
                good.replace("1.25", "-1e7").strip(),
                good.replace("\"kind\"", "\"sort\"").strip(),
                good.replace("2026-11-26T", "yesterday").strip(),
                good.replace("0001\"", "zzzz\"").strip(),
                good.strip(),
                "[".repeat(5000));
        for (String line : bad) {
            Files.writeString(log(), good + line + "\n");
            CorrectionLog read = CorrectionLog.of(take());
            assertEquals(List.of(ONE_OF_EACH.get(0)), read.entries(), line);
            assertEquals(1, read.notes().size(), line);
            assertTrue(
                    read.notes().get(0).startsWith("evening.corrections.jsonl: line 2"),
                    read.notes().get(0));
            assertEquals(good + line + "\n", Files.readString(log()));
        }
        Files.writeString(log(), "\n" + good + " \n\n");
        assertEquals(List.of(), CorrectionLog.of(take()).notes(), "empty lines are nothing");
        Files.writeString(log(), "{}\n".repeat(1000) + good);
        CorrectionLog many = CorrectionLog.of(take());
        assertEquals(1, many.entries().size());
        assertEquals(6, many.notes().size());
        assertEquals(
                "evening.corrections.jsonl has 995 more lines that are passed over.",
                many.notes().get(5));
    }

    @Test
    void whatIsNoLogIsRefusedInASentence() throws Exception {
        Files.createDirectory(log());
        assertRefused("can't be read");
        Files.delete(log());
        Files.writeString(log(), "x".repeat(17 << 10));
        assertRefused("line 1 is longer than 16 KiB");
        try (RandomAccessFile file = new RandomAccessFile(log().toFile(), "rw")) {
            file.setLength((16 << 20) + 1);
        }
        assertRefused("larger than 16 MiB");
    }

    private void assertRefused(String why) {
        String message = assertThrows(InputException.class, () -> CorrectionLog.of(take()))
                .getMessage();
        assertTrue(message.contains(why) && message.contains("evening.corrections.jsonl"), message);
        assertFalse(message.contains("\n"));
    }

    @Test
    void severalMayAppendAndReadAtTheSameTime() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Future<Object>> going = new ArrayList<>();
        for (int program = 0; program < 4; program++) {
            int first = 100 * program;
            Callable<Object> appending = () -> {
                for (int i = 0; i < 20; i++) {
                    CorrectionLog.append(take(), Logged.done(first + i, new Correction.Absent("P" + first, i, i + 1)));
                    assertEquals(List.of(), CorrectionLog.of(take()).notes());
                }
                return "";
            };
            going.add(threads.submit(appending));
        }
        for (Future<Object> one : going) {
            one.get();
        }
        threads.shutdown();
        List<LogEntry> entries = CorrectionLog.of(take()).entries();
        for (int program = 0; program < 4; program++) {
            int first = 100 * program;
            assertEquals(
                    IntStream.range(first, first + 20).mapToObj(Logged::id).toList(),
                    entries.stream()
                            .map(LogEntry::id)
                            .filter(id -> id.getLeastSignificantBits() / 100 == first / 100)
                            .toList());
        }
    }

    @Test
    void theLogLiesBesideTheTakeWhateverThatIsCalled() {
        assertEquals(log(), CorrectionLog.beside(take()));
        assertEquals(folder.resolve("a.json.corrections.jsonl"), CorrectionLog.beside(folder.resolve("a.json")));
    }

    @Test
    void aLineOfAnotherProgramIsNotWrittenOver() throws Exception {
        appendAll();
        Files.writeString(log(), "of a newer program\n", StandardOpenOption.APPEND);
        CorrectionLog.append(take(), Logged.undone(7, 1));
        List<String> lines = Files.readAllLines(log());
        assertEquals("of a newer program", lines.get(6));
        assertEquals(7, CorrectionLog.of(take()).entries().size());
    }
}
