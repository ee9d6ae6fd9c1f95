package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.beats.BeatMap;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparing;
import tuttarco.compare.Comparison;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.compare.Standing;
import tuttarco.compare.Verdict;
import tuttarco.pose.PackedModel;
import tuttarco.report.AnalysedTake;
import tuttarco.seats.Player;
import tuttarco.stats.Quantiles;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/**
 * A section on real pixels, the whole way: one violinist twelve times over, each with a delay that is known, two of them
 * late by a whole stroke, so that they are turned. What a reader without fault would tell, by the clip's truth, is told.
 */
class RealSectionTest {
    /** To its end and back, twice. */
    private static final int TIMES = 4;

    private static TiledSection section;
    private static AnalysedTake take;
    private static Comparison truth;

    @BeforeAll
    static void readAll(@TempDir Path folder) throws Exception {
        Path clips = RealClips.orSkip();
        PackedModel.orSkip();
        Path video = folder.resolve("tiled.mp4");
        Path file = folder.resolve("tiled.take.json");
        section = TiledSection.even(clips.resolve("violin-room.mp4"), video, TIMES);
        TakeFile.write(
                new Take(
                        file,
                        "tiled",
                        video,
                        section.players(),
                        Optional.empty(),
                        new BeatsGiven.Missing(),
                        Bowing.UNIFIED),
                file);
        take = Analysis.standard("test").of(file, (t, l) -> {});
        truth = Comparing.withLeader(section.truth(clips.resolve("violin-room.truth.csv")), CompareSettings.DEFAULT)
                .orElseThrow();
    }

    @Test
    void theTwoWhoAreTurnedAreOnTheListAndNobodyElse() {
        assertEquals(2, section.turned().size());
        assertListed(truth);
        assertListed(take.comparison());
    }

    private static void assertListed(Comparison comparison) {
        List<Spot> spots = RehearsalList.of(comparison);
        assertEquals(
                section.turned(),
                spots.stream()
                        .flatMap(s -> s.players().stream())
                        .distinct()
                        .sorted(Comparator.comparing(section.players()::indexOf))
                        .toList());
        assertEquals(Set.of(Standing.TURNED), spots.stream().map(Spot::standing).collect(Collectors.toSet()));
    }

    /**
     * A fifth may be missing at either end: while a table hides the leader's bow hand, nobody can be compared with the leader.
     */
    @Test
    void theyAreToldOnTheStrokesOnWhichAReaderWithoutFaultTellsThem() {
        for (Player player : section.turned()) {
            assertTrue(awayS(player, truth) > 0.9 * take.endS(), player.label());
            assertTrue(awayS(player, take.comparison()) > 0.8 * awayS(player, truth), player.label());
            assertEquals(1, count(player, truth, Verdict.WITH));
            assertTrue(count(player, take.comparison(), Verdict.WITH) <= 1, player.label());
        }
    }

    private static double awayS(Player player, Comparison comparison) {
        BeatMap beats = comparison.beats();
        return RehearsalList.of(comparison).stream()
                .flatMap(s -> s.departures().stream())
                .filter(d -> d.player().equals(player))
                .mapToDouble(d -> beats.endS(d.lastIndex())
                        - beats.beats().get(d.firstIndex()).timeS())
                .sum();
    }

    private static long count(Player player, Comparison comparison, Verdict verdict) {
        return comparison.beatReadings().stream()
                .flatMap(List::stream)
                .filter(r -> r.player().equals(player) && r.leaderVerdict() == verdict)
                .count();
    }

    /**
     * Whoever is late by a frame more than may be claimed at all is called late, six of nine at least. Whoever is turned has no
     * lag to tell: such changes go the other way than the leader's.
     */
    @Test
    void everyLagToTheLeaderComesBackAndTheLateOnesAreCalledLate() {
        List<Double> errorsMs = new ArrayList<>();
        int late = 0;
        for (PlayerTiming timing : take.together().timing().players()) {
            double delayMs = section.delayMs(timing.player());
            System.out.printf(
                    Locale.ROOT,
                    "%s: delay %.0f ms, read %.0f ms of %d changes, %s%n",
                    timing.player().label(),
                    delayMs,
                    timing.lag().map(PlayerTiming.Measured::medianMs).orElse(Double.NaN),
                    timing.changes(),
                    timing.claim().word());
            if (section.turned().contains(timing.player())) {
                assertTrue(Set.of(Claim.NONE, Claim.TOO_FEW).contains(timing.claim()), timing.toString());
                continue;
            }
            errorsMs.add(Math.abs(timing.lag().orElseThrow().medianMs() - delayMs));
            late += timing.claim() == Claim.LATE ? 1 : 0;
            if (delayMs > timing.lag().orElseThrow().smallestMs() + 1000 / section.framesPerS()) {
                assertEquals(Claim.LATE, timing.claim(), timing.toString());
            }
            if (delayMs == 0) {
                assertEquals(Claim.NONE, timing.claim(), timing.toString());
            }
        }
        assertTrue(late >= 6, "called late: " + late);
        assertEquals(9, errorsMs.size());
        double medianMs = Quantiles.median(errorsMs);
        System.out.printf(Locale.ROOT, "lags of nine tiles: median error %.1f ms%n", medianMs);
        assertTrue(medianMs <= 10, "median error " + medianMs + " ms");
    }
}
