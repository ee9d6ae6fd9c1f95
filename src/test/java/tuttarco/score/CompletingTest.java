package tuttarco.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.parts.Parts;
import tuttarco.score.PartSpan.Position;

/**
 * Worked passages, one a file in {@code src/test/resources/tuttarco/score/bowing}; a new case is a new file. Its comment
 * names the source and says what is expected for the violin family and for viols, one word a stroke or rest: D and U marked,
 * d and u completed, then the reason ({@link #reason}); and the awkward places.
 */
public class CompletingTest {
    private static final Path PASSAGES = Path.of("src/test/resources/tuttarco/score/bowing");

    public static List<Path> passages() throws IOException {
        try (Stream<Path> files = Files.list(PASSAGES)) {
            return files.sorted().toList();
        }
    }

    private static Part read(Path file, Practice practice) throws InputException {
        return Parts.read(file, practice == Practice.VIOLS ? Instrument.VIOL : Instrument.CELLO);
    }

    private static List<String> expected(Path file, String what) throws IOException {
        return Pattern.compile("^(?:# )?" + what + ": (.*)$", Pattern.MULTILINE)
                .matcher(Files.readString(file))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("passages")
    void theStrokesGoAsExpectedForTheReasonExpected(Path file) throws IOException, InputException {
        for (Practice practice : Practice.values()) {
            Part part = read(file, practice);
            String spoken = part.spans().stream().map(span -> word(span, part)).collect(Collectors.joining(" "));
            assertEquals(expected(file, practice.word()), List.of(spoken), practice.word());
        }
    }

    @ParameterizedTest
    @MethodSource("passages")
    void theAwkwardPlacesAreThoseExpected(Path file) throws IOException, InputException {
        for (Practice practice : Practice.values()) {
            Part part = read(file, practice);
            List<String> found = part.awkward().stream()
                    .map(a -> Awkward.place(a.at(), part.bars()) + " "
                            + a.getClass().getSimpleName())
                    .toList();
            List<String> expected = new ArrayList<>(expected(file, "awkward"));
            expected.addAll(expected(file, practice.word() + " awkward"));
            assertEquals(expected, found, practice.word());
        }
    }

    @Test
    void everyReasonAndEveryKindOfAwkwardPlaceHasItsPassage() throws IOException, InputException {
        Set<Class<?>> seen = new HashSet<>();
        for (Path file : passages()) {
            Part part = read(file, Practice.VIOLIN_FAMILY);
            part.awkward().forEach(place -> seen.add(place.getClass()));
            part.spans().stream()
                    .filter(PartSpan.MarkedStroke.class::isInstance)
                    .forEach(span ->
                            seen.add(((PartSpan.MarkedStroke) span).reason().getClass()));
            part.hints().joined().forEach(joined -> seen.add(joined.by().getDeclaringClass()));
        }
        Set<Class<?>> all = Stream.of(Reason.class, Awkward.class)
                .flatMap(kind -> Stream.of(kind.getPermittedSubclasses()))
                .collect(Collectors.toSet());
        assertEquals(6 + 4, all.size());
        all.add(Hints.By.class);
        assertEquals(all, seen);
        assertTrue(passages().size() >= 25);
    }

    @Test
    void everyNoteInsideAStrokeIsToldWithWhatJoinsIt() throws InputException {
        Part part = read(PASSAGES.resolve("slurs-and-ties.musicxml"), Practice.VIOLIN_FAMILY);
        assertEquals(
                List.of(
                        new Hints.Joined(new Position(0, 2), Hints.By.SLUR),
                        new Hints.Joined(new Position(0, 3), Hints.By.SLUR),
                        new Hints.Joined(new Position(1, 1), Hints.By.TIE)),
                part.hints().joined());
    }

    @Test
    void anAwkwardPlaceIsOneSentenceWithBarAndBeat() throws IOException, InputException {
        for (Path file : passages()) {
            Part part = read(file, Practice.VIOLIN_FAMILY);
            for (Awkward place : part.awkward()) {
                String spoken = place.spoken(part.bars());
                assertTrue(spoken.matches("Bar \\d+ beat \\d+: [^.]+\\."), spoken);
            }
        }
        Part odd = read(PASSAGES.resolve("odd-between-marks.bowing.txt"), Practice.VIOLIN_FAMILY);
        assertEquals(
                "Bar 2 beat 2: a down-bow is marked, but counted on from bar 1 beat 1 the stroke is an up-bow; hook, slur"
                        + " or retake somewhere between, or change a mark.",
                odd.awkward().get(0).spoken(odd.bars()));
    }

    @Test
    void placesBetweenBeatsAreFractions() {
        assertEquals("3", new Position(0, 3).spokenBeat());
        assertEquals("2 1/2", new Position(0, 2.5).spokenBeat());
        assertEquals("1 2/3", new Position(0, 5 / 3.0).spokenBeat());
        assertEquals("3", new Position(0, 1 + 1 / 3.0 + 2 / 3.0 + 1).spokenBeat());
    }

    @Test
    void everyInstrumentHasItsPractice() {
        assertEquals(Practice.VIOLS, Practice.of(Instrument.VIOL));
        for (Instrument instrument : List.of(Instrument.VIOLIN, Instrument.VIOLA, Instrument.CELLO, Instrument.BASS)) {
            assertEquals(Practice.VIOLIN_FAMILY, Practice.of(instrument));
        }
    }

    private static String word(PartSpan span, Part part) {
        return span instanceof PartSpan.MarkedStroke stroke
                ? Strokes.sign(stroke) + reason(stroke.reason(), part.bars())
                : "-";
    }

    /**
     * {@code D^} marked, a retake; {@code u<3} carried on from bar 3; {@code u=} hooked; {@code d^} retake after a rest;
     * {@code d!} strong beat; {@code u.} weak beat; {@code u>3} upbeat to bar 3.
     */
    private static String reason(Reason reason, List<Bar> bars) {
        if (reason instanceof Reason.Marked marked) {
            return marked.retake() ? "^" : "";
        }
        if (reason instanceof Reason.CarriedOn carried) {
            return "<" + bars.get(carried.from().barIndex()).number();
        }
        if (reason instanceof Reason.StrongBeat beat) {
            return beat.strong() ? "!" : ".";
        }
        if (reason instanceof Reason.Upbeat upbeat) {
            return ">" + bars.get(upbeat.to().barIndex()).number();
        }
        return reason instanceof Reason.Hooked ? "=" : "^";
    }
}
