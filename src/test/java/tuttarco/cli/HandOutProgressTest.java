package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.HandOut;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.faces.Faces;
import tuttarco.report.Outputs;
import tuttarco.seats.Names;
import tuttarco.take.TakeFile;

/** How far the pictures that are handed out have come is told, and they can be stopped. */
class HandOutProgressTest {
    private static final Analysis ANALYSIS = Analysis.standard("test", Optional.empty());

    @TempDir
    static Path given;

    @TempDir
    Path folder;

    private static Uncorrected read;

    @BeforeAll
    static void readTake() throws Exception {
        read = ANALYSIS.read(TakeFile.read(TinyTake.write(given)), (done, of) -> {});
    }

    private void write(Set<Outputs.Kind> kinds, Faces faces, DoubleConsumer progress) throws Exception {
        new HandOut(ANALYSIS)
                .write(
                        read,
                        CorrectionLog.EMPTY,
                        new HandOut.Wanted(kinds, List.of(), false, Names.BY_DESK, faces),
                        folder.resolve("out"),
                        progress);
    }

    /** It never falls: faces are looked for before all pictures, and not again for the stills. */
    @ParameterizedTest
    @CsvSource({"REPORT, VIDEO, BLURRED", "REPORT, VIDEO, SHOWN", "REPORT, REPORT, BLURRED", "VIDEO, VIDEO, BLURRED"})
    void itIsToldFromTheBeginningToTheEnd(Outputs.Kind one, Outputs.Kind other, Faces faces) throws Exception {
        List<Double> shares = new ArrayList<>();
        write(EnumSet.of(one, other), faces, shares::add);
        assertEquals(shares.stream().sorted().toList(), shares);
        assertTrue(shares.size() > 2 && shares.get(0) < 0.6, shares.toString());
        assertEquals(1, shares.get(shares.size() - 1), 0.05);
    }

    /** While faces are looked for, or in the stills where they are shown. */
    @ParameterizedTest
    @CsvSource({"BLURRED", "SHOWN"})
    void stillsCanBeStopped(Faces faces) {
        assertThrows(
                InterruptedException.class,
                () -> write(
                        Set.of(Outputs.Kind.REPORT),
                        faces,
                        share -> Thread.currentThread().interrupt()));
        assertFalse(Thread.interrupted(), "the interruption is taken note of");
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void whatHasNoPicturesTellsNothing() throws Exception {
        write(Set.of(Outputs.Kind.CAPTIONS, Outputs.Kind.DATA), Faces.BLURRED, share -> {
            throw new AssertionError("told " + share);
        });
        assertTrue(Files.exists(folder.resolve("out/captions.vtt")));
    }

    /** On a terminal it is a bar; elsewhere a line now and then. */
    @Test
    void analyseSaysHowFarItIs() {
        Shell shell =
                Shell.run("analyse", given.resolve("tiny.take.json"), "--no-cache", "--out", folder.resolve("out"));
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.err().matches("(?s).*Making pictures: \\d+ of 100 %\\R.*"), shell.err());
    }
}
