package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.analysis.Analysis;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.bow.Instrument;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Verdict;
import tuttarco.film.FacesToBlur;
import tuttarco.report.AnalysedTake;
import tuttarco.report.ReportPage;
import tuttarco.report.ResultsJson;
import tuttarco.seats.Facing;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/**
 * A small rendered section plays six bars, someone talks, it goes on from bar 3; the second player is turned in bar 5, which
 * both playings hold. The beats are heard.
 */
class RehearsalHeardTest {
    private static final int TURNED_BAR = 5;
    private static final double NEAR_S = 0.1;

    @TempDir
    static Path folder;

    private static Scene scene;
    private static AnalysedTake analysed;

    @BeforeAll
    static void analyse() throws Exception {
        List<Cast> cast = List.of(
                new Cast(Instrument.VIOLIN, Facing.CAMERA),
                new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Turned(TURNED_BAR, TURNED_BAR)));
        scene = new Scene(
                        "stops",
                        "Stops",
                        cast,
                        Passage.of("Violet Hour", Passage.MIXED),
                        108,
                        Bowing.UNIFIED,
                        Picture.of(480, 270),
                        Conditions.EASY,
                        Scene.Sound.TONES,
                        51)
                .stopping(new Stop(6, 4, 3));
        Take given = TakeFile.read(Rendering.write(scene, folder, percent -> {}));
        Take heard = new Take(
                folder.resolve("heard.take.json"),
                given.title(),
                given.video(),
                given.players(),
                Optional.of(given.part().orElseThrow()),
                new BeatsGiven.HeardByPart(),
                given.bowing());
        TakeFile.write(heard, heard.file());
        analysed = Analysis.standard("test").of(heard.file(), (done, of) -> {});
    }

    @Test
    void bothPlayingsAreFoundWhereTheyAre() {
        BeatMap beats = analysed.comparison().beats();
        assertEquals(2, beats.runs().size());
        List<Beat> truth = scene.tempo().beats().beats();
        long near = truth.stream()
                .filter(t -> beats.beats().stream()
                        .anyMatch(b -> b.bar().equals(t.bar())
                                && b.beat() == t.beat()
                                && Math.abs(b.timeS() - t.timeS()) <= NEAR_S))
                .count();
        assertTrue(near >= 0.9 * truth.size(), near + " of " + truth.size());
        Run again = beats.runs().get(1);
        assertEquals("3", beats.beats().get(again.firstIndex()).bar());
    }

    @Test
    void theBarTurnedIsTurnedInBothPlayings() {
        for (double[] playing : new double[][] {{0, pauseS()}, {pauseS(), Double.MAX_VALUE}}) {
            List<BeatReading> turned = analysed.comparison().beatReadings().get(1).stream()
                    .filter(r -> r.beat().bar().equals(String.valueOf(TURNED_BAR)))
                    .filter(r -> r.beat().timeS() >= playing[0] && r.beat().timeS() < playing[1])
                    .toList();
            assertEquals(4, turned.size());
            long against =
                    turned.stream().filter(r -> r.verdict() == Verdict.AGAINST).count();
            assertTrue(against >= 3, turned.toString());
        }
    }

    /** A moment in the stop. */
    private static double pauseS() {
        List<Beat> truth = scene.tempo().beats().beats();
        int last = scene.tempo().beats().runs().get(0).lastIndex();
        return (truth.get(last).timeS() + truth.get(last + 1).timeS()) / 2;
    }

    @Test
    void reportAndResultsTellWhichBarsWereHeardWhen() throws Exception {
        List<String> told = analysed.notes().stream()
                .filter(note -> note.contains("are heard from"))
                .toList();
        assertEquals(2, told.size(), analysed.notes().toString());
        assertTrue(told.get(0).startsWith("Bars 1 to 6 are heard from "), told.get(0));
        assertTrue(told.get(1).startsWith("Bars 3 to 8 are heard from "), told.get(1));
        new ReportPage(FacesToBlur.none(), share -> {}).write(analysed, folder);
        new ResultsJson().write(analysed, folder);
        String report = Files.readString(folder.resolve("report.html")).replace('\u00A0', ' ');
        String results = Files.readString(folder.resolve("results.json"));
        for (String note : told) {
            assertTrue(report.contains(note), note);
            assertTrue(results.contains(note), note);
        }
    }
}
