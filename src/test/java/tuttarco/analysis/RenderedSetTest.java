package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.compare.Divergence;
import tuttarco.compare.Divergence.Against;
import tuttarco.demo.SceneCatalogue;
import tuttarco.demo.SceneCatalogue.Expected;
import tuttarco.demo.SceneCatalogue.Listed;
import tuttarco.pose.PackedModel;
import tuttarco.pose.PoseModel;
import tuttarco.report.AnalysedTake;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/**
 * Rendered scenes, each with one difficulty: the whole way from the clip to the comparison, against the truth. A scene's
 * figures are means over its players.
 */
class RenderedSetTest {
    private static final double PLAIN_AGREEMENT = 0.97;
    private static final double HARD_AGREEMENT = 0.92;
    private static final double COVERAGE = 0.95;

    /** Takes a minute to render by itself. */
    private static final String LARGEST = "section-sixty";

    /**
     * Where coverage falls short of what is wanted, and how far it comes: the hand near the frog is half hidden behind left
     * hand and instrument, and one stroke there stays unsure. The method page tells more.
     */
    private static final Map<String, Double> SHORT_OF_COVERAGE = Map.of("violin-left", 0.92);

    /** What is claimed in that scene must be right all the more. */
    private static final Map<String, Double> CLAIMED_LESS = Map.of("violin-left", 0.94);

    /** Least agreement on hard scenes without a declared facing. */
    private static final double HARD_UNDECLARED = 0.90;

    /** Least coverage without a declared facing, and where the direction stays unsure for longer still. */
    private static final double COVERAGE_UNDECLARED = 0.75;

    private static final Map<String, Double> SHORT_UNDECLARED = Map.of("violin-camera-right", 0.45);

    /** Scenes have 25 frames a second and more. */
    private static final double A_FRAME_S = 0.041;

    /** Where a scene is cut: shots and dissolves. All others are one shot. */
    private static final Map<String, Integer> SHOTS = Map.of("cut", 2, "cut-back", 3, "dissolve", 5, "jump-cut", 2);

    /** Seconds of bowing that may be read per player where nobody bows, and where one pats the thigh as evenly as strokes go. */
    private static final double BOWING_AT_REST_S = 0.3;

    private static final Map<String, Double> MORE_AT_REST_S = Map.of("applause-turned", 2.5);

    @TempDir
    static Path folder;

    /** Two scenes are rendered and read at a time: one player alone does not keep two cores busy. */
    private static final ExecutorService READING = Executors.newFixedThreadPool(2);

    /** The scenes of {@link #scenes()} by name, read once for all tests. */
    private static final Map<String, Future<Read>> READ = new LinkedHashMap<>();

    /**
     * A scene as it was read.
     *
     * @param undeclared without a word on where players face; empty without the pose model
     */
    private record Read(AnalysedTake declared, Optional<List<Reading>> undeclared) {}

    @BeforeAll
    static void readAhead() {
        scenes().forEach(scene -> READ.put(scene.name(), READING.submit(() -> read(scene))));
    }

    @AfterAll
    static void end() throws InterruptedException {
        READING.shutdownNow();
        assertTrue(READING.awaitTermination(1, TimeUnit.MINUTES), "reading goes on");
    }

    private static Read read(Listed scene) throws Exception {
        AnalysedTake declared = analyse(scene);
        return new Read(
                declared,
                PoseModel.installed().isPresent()
                        ? Optional.of(undeclared(declared.take()).readings())
                        : Optional.empty());
    }

    private static AnalysedTake declared(String scene) throws Exception {
        return READ.get(scene).get().declared();
    }

    static Stream<Listed> scenes() {
        return bowed().filter(s -> s.expected() == Expected.STROKES && !s.name().equals(LARGEST));
    }

    private static Stream<Listed> bowed() {
        return SceneCatalogue.all().stream().filter(s -> s.expected() != Expected.NO_STROKES);
    }

    private static AnalysedTake analyse(Listed scene) throws Exception {
        return Analysis.standard("test").of(scene.render(folder), (t, l) -> {});
    }

    private Score mean(Listed scene, List<Reading> readings) throws Exception {
        List<Score> scores = new ArrayList<>();
        for (Reading reading : readings) {
            Path truth = folder.resolve(scene.name() + ".truth.csv");
            scores.add(Score.of(
                    reading.strokes(), TruthSpan.read(truth, reading.player().label())));
        }
        return Score.mean(scores);
    }

    /** With the facing declared as in the take; and without a word on it no less is right of what is claimed. */
    @ParameterizedTest
    @MethodSource("scenes")
    void strokesAreReadAsTheyWerePlayed(Listed scene) throws Exception {
        Read read = READ.get(scene.name()).get();
        AnalysedTake declared = read.declared();
        assertEquals(
                SHOTS.getOrDefault(scene.name(), 1),
                declared.tracks().get(0).shots().size());
        assertRead(
                scene,
                declared.readings(),
                CLAIMED_LESS.getOrDefault(scene.name(), scene.plain() ? PLAIN_AGREEMENT : HARD_AGREEMENT),
                SHORT_OF_COVERAGE.getOrDefault(scene.name(), COVERAGE));
        PackedModel.orSkip();
        assertRead(
                scene,
                read.undeclared().orElseThrow(),
                scene.plain() ? PLAIN_AGREEMENT : HARD_UNDECLARED,
                SHORT_UNDECLARED.getOrDefault(scene.name(), COVERAGE_UNDECLARED));
    }

    private void assertRead(Listed scene, List<Reading> readings, double agreement, double coverage) throws Exception {
        Score score = mean(scene, readings);
        assertTrue(score.steps() > 150, "steps with truth: " + score.steps());
        assertTrue(score.agreement() >= agreement, scene.name() + ": " + score);
        assertTrue(score.coverage() >= coverage, scene.name() + ": " + score);
    }

    static Stream<Listed> withoutBowing() {
        return SceneCatalogue.all().stream().filter(s -> s.expected() == Expected.NO_STROKES);
    }

    @ParameterizedTest
    @MethodSource("withoutBowing")
    void whoDoesNotBowIsHardlyReadAsBowing(Listed scene) throws Exception {
        PackedModel.orSkip();
        List<Reading> readings = undeclared(TakeFile.read(scene.render(folder))).readings();
        assertEquals(4, readings.size());
        double falseS = mean(scene, readings).falseS();
        assertTrue(falseS <= MORE_AT_REST_S.getOrDefault(scene.name(), BOWING_AT_REST_S), scene.name() + ": " + falseS);
    }

    @Test
    void tremoloIsReadWithoutADirection() throws Exception {
        PackedModel.orSkip();
        Listed scene = scene("tremolo");
        Reading reading =
                undeclared(TakeFile.read(scene.render(folder))).readings().get(0);
        List<TruthSpan> tremolo = TruthSpan.read(
                        folder.resolve("tremolo.truth.csv"), reading.player().label())
                .stream()
                .filter(s -> s.kind() == StrokeKind.TREMOLO)
                .toList();
        assertEquals(2, tremolo.size());
        for (TruthSpan span : tremolo) {
            for (double timeS = span.startS() + 0.3; timeS < span.endS() - 0.3; timeS += 0.1) {
                assertEquals(StrokeKind.TREMOLO, reading.at(timeS).orElseThrow().kind(), "at " + timeS);
            }
        }
    }

    private static SectionReading undeclared(Take take) throws Exception {
        List<Player> players =
                take.players().stream().map(RenderedSetTest::undeclared).toList();
        return SectionReader.standard().read(take.video(), players, (t, l) -> {});
    }

    @Test
    void aMirroredPictureIsNoticedAndReadAllTheSame() throws Exception {
        PackedModel.orSkip();
        Listed scene = scene("mirrored-violin");
        SectionReading reading = undeclared(TakeFile.read(scene.render(folder)));
        assertEquals(1, reading.notes().size(), reading.notes().toString());
        assertTrue(
                reading.notes().get(0).startsWith("The picture seems to be mirrored"),
                reading.notes().get(0));
        Score score = mean(scene, reading.readings());
        assertTrue(score.agreement() >= PLAIN_AGREEMENT && score.coverage() >= COVERAGE, score.toString());
    }

    /** In "cut-back" the middle three tenths of the clip show another view. */
    @Test
    void whereAnotherViewIsShownNobodyIsReadAndThatIsSaid() throws Exception {
        AnalysedTake take = declared("cut-back");
        assertEquals(2, take.readings().size());
        double fromS = 0.35 * take.endS();
        double toS = 0.65 * take.endS();
        for (Reading reading : take.readings()) {
            List<Stroke> unseen = reading.strokes().stream()
                    .filter(s -> s.kind() == StrokeKind.UNSEEN)
                    .toList();
            assertEquals(1, unseen.size(), reading.toString());
            assertEquals(fromS, unseen.get(0).startS(), A_FRAME_S);
            assertEquals(toS, unseen.get(0).endS(), A_FRAME_S);
        }
        assertTrue(
                take.notes().stream()
                        .anyMatch(n -> n.startsWith("Nobody is read from 5.3 to 9.8 s, where the clip shows")),
                take.notes().toString());
    }

    private static Player undeclared(Player p) {
        return new Player(p.label(), p.desk(), p.place(), p.instrument(), p.seat(), Optional.empty(), p.leader());
    }

    /** In "section-turned" one player is turned in bars 3 and 4, another in bar 5. */
    @Test
    void plantedTurnsAreFoundInTheirBarsAndNoOthers() throws Exception {
        List<Divergence> found = against(declared("section-turned"), Against.MARKING);
        assertEquals(
                List.of("Desk 3 outside: bar 3 to 4", "Desk 5 inside: bar 5 to 5"),
                found.stream().map(RenderedSetTest::spoken).toList());
    }

    @Test
    void aCleanUnifiedTakeHasNoDivergence() throws Exception {
        AnalysedTake take = declared("section-unified");
        assertEquals(12, take.comparison().players().size());
        assertEquals(List.of(), take.comparison().divergences());
    }

    /** In "section-lags" each player is 15 ms later than the one before. */
    @Test
    void lagsComeBack() throws Exception {
        AnalysedTake take = declared("section-lags");
        assertEquals(11, take.comparison().lags().size());
        for (int i = 0; i < 11; i++) {
            double lagMs = take.comparison().lags().get(i).medianMs().orElseThrow();
            assertEquals(
                    15.0 * (i + 1), lagMs, 40, take.comparison().lags().get(i).toString());
        }
    }

    @Test
    @Tag("campaign")
    void sixtyPlayersAreReadAsTheyPlayed() throws Exception {
        Listed scene = scene(LARGEST);
        Score score = mean(scene, analyse(scene).readings());
        assertTrue(score.agreement() >= HARD_AGREEMENT && score.coverage() >= COVERAGE, score.toString());
    }

    /** Prints the figures of all scenes for the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() throws Exception {
        int counted = 0;
        for (Listed scene : bowed().toList()) {
            AnalysedTake take = READ.containsKey(scene.name()) ? declared(scene.name()) : analyse(scene);
            Score score = mean(scene, take.readings());
            System.out.println("| " + scene.name() + " | " + score.row() + " |");
            counted++;
        }
        assertTrue(counted >= 20, "scenes: " + counted);
    }

    private static Listed scene(String name) {
        return SceneCatalogue.all().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<Divergence> against(AnalysedTake take, Against against) {
        return take.comparison().divergences().stream()
                .filter(d -> d.against() == against)
                .toList();
    }

    private static String spoken(Divergence d) {
        return d.players().get(0).label() + ": bar " + d.first().bar() + " to "
                + d.last().bar();
    }
}
