package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.HandOut;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextReader;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.faces.Faces;
import tuttarco.files.Cache;
import tuttarco.musicxml.MusicXmlPartWriter;
import tuttarco.report.Outputs;
import tuttarco.seats.Names;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.TakeFile;

/** Names are planted wherever a take can hold them; what is written by default holds none of them. */
class HandedOutNamesTest {
    private static final String IDA = "Quilla";
    private static final String JON = "Xander";
    private static final String GONE = "Wenzel";
    private static final List<String> NAMES = List.of(IDA, JON, GONE);
    private static final Pattern EMBEDDED = Pattern.compile("base64,([A-Za-z0-9+/=]+)");

    @TempDir
    static Path given;

    @TempDir
    static Path cache;

    @TempDir
    Path folder;

    private static Path take;

    /** The second player goes against the first bar throughout, by hand, and somebody who has left was corrected. */
    @BeforeAll
    static void writeTake() throws Exception {
        TinyTake.write(given);
        byte[] text = TinyTake.PART.getBytes(StandardCharsets.UTF_8);
        Files.writeString(
                given.resolve("part.musicxml"),
                new MusicXmlPartWriter(Instrument.VIOLIN)
                        .text(new BowTextReader().read(text, "a.bowing.txt", Instrument.VIOLIN)));
        String json = TinyTake.JSON
                .replace("Ida", IDA + " \\\"the first\\\" Ōe")
                .replace("Jon", JON + " & Sons <b>")
                .replace("part.bowing.txt", "part.musicxml");
        take = Files.writeString(given.resolve("named.take.json"), json);
        Files.writeString(given.resolve("later.take.json"), json.replace("Three seconds", "Later"));
        String jon = JON + " & Sons <b>";
        for (int beat = 0; beat < 6; beat++) {
            append(new Correction.StrokeSet(
                    jon, beat / 2.0, (beat + 1) / 2.0, beat % 2 == 0 ? StrokeKind.UP : StrokeKind.DOWN));
        }
        append(new Correction.Absent(GONE, 1, 2));
    }

    private static void append(Correction correction) throws Exception {
        CorrectionLog.append(take, new LogEntry.Done(UUID.randomUUID(), Instant.now(), correction, Map.of()));
    }

    private static List<Path> files(Path out) throws IOException {
        try (Stream<Path> walk = Files.walk(out)) {
            return walk.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** All that a file says, in the encodings a name could be in, with what is embedded in it, and what it is called. */
    private static List<String> said(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        List<String> said = new ArrayList<>();
        said.add(file.toString());
        said.add(new String(bytes, StandardCharsets.ISO_8859_1));
        said.add(new String(bytes, StandardCharsets.UTF_16LE));
        said.add(new String(bytes, StandardCharsets.UTF_16BE));
        Matcher embedded = EMBEDDED.matcher(said.get(1));
        while (embedded.find()) {
            said.add(new String(Base64.getDecoder().decode(embedded.group(1)), StandardCharsets.ISO_8859_1));
        }
        if (file.toString().endsWith(".pdf")) {
            try (PDDocument pdf = Loader.loadPDF(bytes)) {
                said.add(new PDFTextStripper().getText(pdf));
                said.add(pdf.getDocumentInformation().getCOSObject().toString());
            }
        }
        return said;
    }

    private static boolean names(Path file, String name) throws IOException {
        return said(file).stream().anyMatch(text -> text.contains(name));
    }

    /** No name, and nothing of the machine either. */
    private static void assertNamesNobody(Path out) throws IOException {
        List<Path> files = files(out);
        assertFalse(files.isEmpty());
        for (Path file : files) {
            for (String name : NAMES) {
                assertFalse(names(file, name), file + " names " + name);
            }
            assertFalse(names(file, given.getFileName().toString()), file + " says where the take lies");
        }
    }

    private static Set<String> endingsNaming(Path out, String name) throws IOException {
        Set<String> endings = new TreeSet<>();
        for (Path file : files(out)) {
            if (names(file, name)) {
                endings.add(file.toString().substring(file.toString().lastIndexOf('.')));
            }
        }
        return endings;
    }

    private static Shell run(Object... args) {
        Shell shell = Shell.run(args);
        assertEquals(0, shell.code(), shell.err());
        return shell;
    }

    /** The later run takes away what names somebody. */
    @Test
    void analyseNamesNobodyUnlessToldTo() throws Exception {
        Path out = folder.resolve("out");
        Path season = folder.resolve("season");
        run("analyse", take, "--cache", cache, "--out", out, "--show-names");
        assertEquals(Set.of(".csv", ".html", ".json", ".pdf", ".svg", ".vtt"), endingsNaming(out, JON));
        assertEquals(Set.of(".csv", ".html", ".json", ".pdf", ".svg"), endingsNaming(out, IDA));
        assertEquals(Set.of(".html", ".json"), endingsNaming(out, GONE), "in the note that it is left out");

        Shell shell = run("analyse", take, "--cache", cache, "--out", out, "--season", season);
        assertNamesNobody(out);
        for (String name : NAMES) {
            assertFalse(shell.err().contains(name), "what is told is what is written: " + shell.err());
        }
        assertTrue(Files.readString(out.resolve("captions.vtt")).contains("Desk 1 inside"));
        assertTrue(names(season.resolve("season.jsonl"), IDA), "the log is the leader's own");
        assertTrue(names(season.resolve("season.jsonl"), JON));
    }

    @Test
    void compareNamesNobodyUnlessToldTo() throws Exception {
        Path out = folder.resolve("out");
        run("compare", take, given.resolve("later.take.json"), "--cache", cache, "--out", out);
        assertNamesNobody(out);
        run("compare", take, given.resolve("later.take.json"), "--cache", cache, "--out", out, "--show-names");
        assertEquals(Set.of(".csv", ".html", ".svg"), endingsNaming(out, JON));
    }

    /** What is told on the screen is the leader's own; what lies beside the part is not. */
    @Test
    void aMarkedPartNamesNobodyUnlessToldTo() throws Exception {
        Path out = folder.resolve("out/marked.musicxml");
        Object[] words = {"mark", take, "--player", JON + " & Sons <b>", "--cache", cache, "--out", out};
        Shell shell = run(words);
        assertNamesNobody(out.getParent());
        assertTrue(Files.readString(out.resolveSibling("marked.marks.txt")).contains("as Desk 1 inside played them"));
        assertTrue(shell.out().contains("as " + JON), shell.out());
        run(Stream.concat(Stream.of(words), Stream.of("--show-names")).toArray());
        assertEquals(Set.of(".txt"), endingsNaming(out.getParent(), JON));
    }

    private static HandOut.Handed handOut(Set<Outputs.Kind> kinds, Names names, Path out) throws Exception {
        Analysis analysis = Analysis.standard("test", Optional.of(new Cache(cache)));
        return new HandOut(analysis)
                .write(
                        analysis.read(TakeFile.read(take), (done, of) -> {}),
                        CorrectionLog.of(take),
                        new HandOut.Wanted(kinds, List.of(JON + " & Sons <b>"), true, names, Faces.BLURRED),
                        out,
                        share -> {});
    }

    @Test
    void whatTheWindowHandsOutNamesNobodyUnlessToldTo() throws Exception {
        for (Names names : Names.values()) {
            HandOut.Handed handed =
                    handOut(EnumSet.complementOf(EnumSet.of(Outputs.Kind.VIDEO)), names, folder.resolve(names.name()));
            assertEquals(Optional.empty(), handed.warning());
        }
        assertNamesNobody(folder.resolve("BY_DESK"));
        assertTrue(Files.exists(folder.resolve("BY_DESK/part as bowed by Desk 1 inside.musicxml")));
        Path shown = folder.resolve("SHOWN");
        assertTrue(Files.exists(shown.resolve("part as bowed by Xander _ Sons _b_.musicxml")));
        assertEquals(
                Set.of(".csv", ".html", ".json", ".musicxml", ".pdf", ".svg", ".txt", ".vtt"),
                endingsNaming(shown, JON));
    }

    /** Without the results nothing notes what was written: what a run with names left is told, to the last file. */
    @Test
    void whatNamesSomebodyFromBeforeIsTold() throws Exception {
        handOut(EnumSet.of(Outputs.Kind.SHEETS, Outputs.Kind.CAPTIONS), Names.SHOWN, folder);
        Files.writeString(folder.resolve("notes.txt"), "mine");
        HandOut.Handed handed = handOut(EnumSet.of(Outputs.Kind.SHEETS), Names.BY_DESK, folder);
        Set<Path> naming = new TreeSet<>();
        for (Path file : files(folder)) {
            if (names(file, JON) || names(file, IDA)) {
                naming.add(folder.relativize(file));
            }
        }
        assertTrue(naming.contains(Path.of("sheets", "xander-sons-b.pdf")), naming.toString());
        assertTrue(naming.contains(Path.of("captions.vtt")), naming.toString());
        assertTrue(
                handed.leftFromBefore().containsAll(naming), handed.leftFromBefore() + " tells not all of " + naming);
        assertFalse(handed.leftFromBefore().contains(Path.of("notes.txt")));
        for (Path told : handed.leftFromBefore()) {
            Files.delete(folder.resolve(told));
        }
        assertNamesNobody(folder);
    }

    /** The results note what was written; with them it is taken away. */
    @Test
    void whatNamesSomebodyFromBeforeIsTakenAwayWithTheData() throws Exception {
        Set<Outputs.Kind> kinds = EnumSet.of(Outputs.Kind.SHEETS, Outputs.Kind.DATA);
        handOut(kinds, Names.SHOWN, folder);
        HandOut.Handed handed = handOut(kinds, Names.BY_DESK, folder);
        assertEquals(List.of(), handed.leftFromBefore());
        assertNamesNobody(folder);
    }
}
