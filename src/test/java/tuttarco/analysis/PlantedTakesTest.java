package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BowingCandidate;
import tuttarco.compare.Metric;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.Unity;
import tuttarco.compare.Verdict;
import tuttarco.demo.SceneCatalogue.Listed;
import tuttarco.demo.TakesCatalogue;
import tuttarco.pose.PackedModel;
import tuttarco.report.AnalysedTake;
import tuttarco.season.Changed;
import tuttarco.season.Changed.Of;
import tuttarco.season.Season;
import tuttarco.season.SeasonCandidate;
import tuttarco.season.TakeAgainstTake;
import tuttarco.season.TakeOnRecord;
import tuttarco.season.Trend;

/** Several takes of a passage from pixels to what is told of them: what was planted in each, and nothing else. */
class PlantedTakesTest {
    private static final String LESS_LATE = "lag player Desk 2 outside better";

    private static List<AnalysedTake> tripping;
    private static List<AnalysedTake> season;

    @BeforeAll
    static void readAll(@TempDir Path folder) throws Exception {
        PackedModel.orSkip();
        tripping = read(TakesCatalogue.trippingMarking(), folder);
        season = read(TakesCatalogue.season(), folder);
        assertEquals(3, tripping.size());
        assertEquals(6, season.size());
    }

    private static List<AnalysedTake> read(List<Listed> scenes, Path folder) throws Exception {
        List<AnalysedTake> takes = new ArrayList<>();
        for (Listed scene : scenes) {
            takes.add(Analysis.standard("test").of(scene.render(folder), (t, l) -> {}));
        }
        return takes;
    }

    private static List<Told> told(List<AnalysedTake> takes) {
        return takes.stream().map(Told::of).toList();
    }

    @Test
    void aMarkingThatTripsFourOfSixIsTheOneSpotAndTheOneCandidateOfEachTake() {
        Told planted = new Told(
                List.of("turned against the marking: Desk 1 inside 4/1 to 4/4, Desk 2 outside 4/1 to 4/4,"
                        + " Desk 2 inside 4/1 to 4/4, Desk 3 outside 4/1 to 4/4"),
                List.of(),
                List.of("4: Desk 1 inside, Desk 2 outside, Desk 2 inside, Desk 3 outside"),
                Unity.Kind.UNIFIED,
                List.of());
        assertEquals(List.of(planted, planted, planted), told(tripping));
    }

    @Test
    void whatTheFourDidInsteadIsTold() {
        for (AnalysedTake take : tripping) {
            BowingCandidate candidate = BowingCandidate.in(take.comparison()).get(0);
            assertEquals(6, candidate.judged());
            assertEquals(strokes("udud"), candidate.marked());
            assertEquals(strokes("dudu"), candidate.instead());
        }
    }

    private static List<Optional<BowDirection>> strokes(String letters) {
        return letters.chars()
                .mapToObj(c -> Optional.of(c == 'd' ? BowDirection.DOWN : BowDirection.UP))
                .toList();
    }

    /** The larger spot comes first. */
    @Test
    void eachTakeOfTheSeasonSaysWhoWasTurnedAndWhoWasLateAndNothingElse() {
        String desk2 = "turned against the marking: Desk 2 inside 2/1 to 3/4";
        String desk3 = "turned against the marking: Desk 3 outside ";
        List<String> late = List.of("Desk 2 outside late");
        assertEquals(
                List.of(
                        season(List.of(desk3 + "6/1 to 10/4", desk2), late),
                        season(List.of(desk3 + "6/1 to 9/4"), late),
                        season(List.of(desk3 + "6/1 to 8/4"), late),
                        season(List.of(desk3 + "7/1 to 8/4"), late),
                        season(List.of(desk3 + "8/1 to 8/4"), late),
                        season(List.of(), List.of())),
                told(season));
    }

    private static Told season(List<String> spots, List<String> timing) {
        return new Told(spots, timing, List.of(), Unity.Kind.UNIFIED, List.of());
    }

    @Test
    void theLateOneIsAsLateAsPlanted() {
        List<Double> planted = List.of(150.0, 125.0, 100.0, 75.0, 50.0, 0.0);
        for (int i = 0; i < planted.size(); i++) {
            PlayerTiming late = season.get(i).together().timing().players().stream()
                    .filter(p -> p.player().label().equals("Desk 2 outside"))
                    .findFirst()
                    .orElseThrow();
            assertEquals(planted.get(i), late.lag().orElseThrow().medianMs(), 20, "take " + (i + 1));
        }
    }

    /** Of each player's 48 beats those in the bars that were turned: desk 3 and desk 2. */
    @Test
    void asManyBeatsAreAgainstTheMarkingAsPlanted() {
        List<Integer> planted = List.of(20 + 8, 16, 12, 8, 4, 0);
        List<Integer> players = List.of(6, 6, 6, 5, 6, 6);
        assertEquals(
                players,
                season.stream().map(t -> t.comparison().players().size()).toList());
        for (int i = 0; i < planted.size(); i++) {
            long with = beats(season.get(i), Verdict.WITH);
            long against = beats(season.get(i), Verdict.AGAINST);
            assertTrue(with + against >= 0.97 * 48 * players.get(i), "take " + (i + 1) + ": " + (with + against));
            assertEquals(planted.get(i), against, 1, "take " + (i + 1));
        }
    }

    private static long beats(AnalysedTake take, Verdict verdict) {
        return take.comparison().beatReadings().stream()
                .flatMap(List::stream)
                .filter(r -> r.verdict() == verdict)
                .count();
    }

    private static List<TakeOnRecord> onRecord(List<AnalysedTake> takes) {
        return takes.stream().map(t -> t.onRecord(Optional.empty())).toList();
    }

    /** Planted between the first take and the last: seven bars of two players, and 150 ms of a third. */
    @Test
    void theLastTakeBesideTheFirstShowsWhatBecameBetterAndNothingElse() {
        TakeAgainstTake takes = TakeAgainstTake.among(onRecord(season)).get(0);
        assertEquals(
                List.of("with-marking section  better", LESS_LATE),
                takes.shown().stream().map(PlantedTakesTest::spoken).toList());
        Changed section = takes.of(Metric.WITH_MARKING, Of.SECTION, "").orElseThrow();
        assertEquals(28 / (6 * 48.0), section.difference(), 0.01);
        Changed lag = takes.of(Metric.LAG, Of.PLAYER, "Desk 2 outside").orElseThrow();
        assertEquals(-150, lag.difference(), 25);
        assertEquals(
                List.of("[Desk 3 outside] [6, 7, 8, 9, 10] more", "[Desk 2 inside] [2, 3] more"),
                takes.stretches().stream()
                        .map(s -> s.players() + " " + s.bars() + (s.more() ? " more" : " less"))
                        .toList());
    }

    private static String spoken(Changed changed) {
        return changed.metric().key() + " " + changed.of().word() + " " + changed.name() + " "
                + changed.claim().word();
    }

    /** What changes from one take to the next is little, a lag by 25 to 50 ms; whoever is missing is said and left out. */
    @Test
    void aTakeBesideTheOneBeforeShowsNoOtherChange() {
        List<TakeAgainstTake> pairs = TakeAgainstTake.among(onRecord(season));
        assertEquals(6, pairs.size());
        for (TakeAgainstTake pair : pairs.subList(1, 6)) {
            assertTrue(
                    pair.shown().stream().map(PlantedTakesTest::spoken).allMatch(LESS_LATE::equals),
                    pair.shown().toString());
            assertEquals(12, pair.common().bars().size());
            assertEquals(List.of(), pair.common().remarkedBars());
        }
        assertEquals(List.of("Desk 3 inside"), pairs.get(3).common().firstOnlyPlayers());
        assertEquals(List.of("Desk 3 inside"), pairs.get(4).common().secondOnlyPlayers());
    }

    @Test
    void takesWithTheSameTroubleHaveNotChanged() {
        for (TakeAgainstTake pair : TakeAgainstTake.among(onRecord(tripping))) {
            assertEquals(List.of(), pair.shown());
            assertEquals(List.of(), pair.stretches());
        }
    }

    /** Planted: one player is turned in fewer bars from take to take, another is late by less and less. */
    @Test
    void theSeasonRisesByThoseWhoBecameBetterAndByNobodyElse() {
        Season told = Season.of(onRecord(season));
        assertEquals(Trend.Claim.RISING, told.section().claim());
        assertEquals(List.of("Desk 3 outside rising"), claimed(told.players()));
        assertEquals(List.of("Desk 2 outside falling"), claimed(told.lags()));
        assertEquals(List.of(), told.byPassage(), "all takes hold one passage, the whole");
        assertEquals(List.of(), told.candidates());
        assertEquals(
                List.of(true, true, true, false, true, true),
                told.players().stream()
                        .filter(t -> t.subject().equals(new Trend.OfPlayer("Desk 3 inside")))
                        .flatMap(t -> t.points().stream())
                        .map(Optional::isPresent)
                        .toList());
    }

    private static List<String> claimed(List<Trend> trends) {
        return trends.stream()
                .filter(Trend::claimed)
                .map(t ->
                        ((Trend.OfPlayer) t.subject()).label() + " " + t.claim().word())
                .toList();
    }

    @Test
    void theBarThatTripsThemInEachTakeIsTheOneCandidateOfTheSeason() {
        Season told = Season.of(onRecord(tripping));
        assertEquals(1, told.candidates().size());
        SeasonCandidate bar = told.candidates().get(0);
        assertEquals("4", bar.bar());
        assertEquals(
                strokes("udud"),
                bar.beats().stream().map(b -> Optional.of(b.marked())).toList());
        assertEquals(
                strokes("dudu"),
                bar.beats().stream().map(SeasonCandidate.Beat::instead).toList());
        List<String> four = List.of("Desk 1 inside", "Desk 2 outside", "Desk 2 inside", "Desk 3 outside");
        assertEquals(
                List.of(
                        new SeasonCandidate.InTake(0, four, 6),
                        new SeasonCandidate.InTake(1, four, 6),
                        new SeasonCandidate.InTake(2, four, 6)),
                bar.takes());
    }
}
