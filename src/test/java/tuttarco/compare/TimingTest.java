package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.compare.PlayerTiming.Claim;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;

/** Sections that change bow with planted lags, and are read with the errors that reading has. */
class TimingTest {
    /**
     * Errors of change times at 30 frames a second, seconds: standard deviation on the rendered scene section-unified (21
     * ms, median standard error 17 ms; 168 changes).
     */
    private static final double ERROR_S = 0.021;

    private static final double STATED_S = 0.017;

    private static final double STROKE_S = 1;
    private static final int PLAYERS = 12;

    private static Player player(int i, boolean led) {
        return tuttarco.compare.Bows.player(
                "p" + i, i / 2 + 1, i % 2 == 0 ? Place.OUTSIDE : Place.INSIDE, led && i == 0);
    }

    /** What all changes of a player may be off by alike where shoulders are 40 pixels wide, a figure about 190 tall. */
    private static final double SHARED_S = 0.003;

    private static tuttarco.strokes.Bows read(Player player, List<Stroke> strokes) {
        return read(player, strokes, SHARED_S);
    }

    private static tuttarco.strokes.Bows read(Player player, List<Stroke> strokes, double sharedErrorS) {
        List<Bow> bows = new ArrayList<>();
        Edge start = new Edge.ClipEnd();
        for (Stroke stroke : strokes) {
            Edge end = new Edge.Change(STATED_S);
            bows.add(new Bow(stroke, start, end, new BowUse.Unknown(BowUse.Reason.UNCLEAR)));
            start = end;
        }
        return new tuttarco.strokes.Bows(player, bows, sharedErrorS);
    }

    /** A section with so many changes, each player late by so much, seconds, the leader first. */
    private static Timing timing(boolean led, int players, int changes, IntToDoubleFunction lagS, Random random) {
        return timing(led, players, changes, lagS, SHARED_S, random);
    }

    private static Timing timing(
            boolean led, int players, int changes, IntToDoubleFunction lagS, double sharedErrorS, Random random) {
        Passage passage = Passage.steady(STROKE_S, STROKE_S, changes + 1);
        List<tuttarco.strokes.Bows> bows = IntStream.range(0, players)
                .mapToObj(i -> read(
                        player(i, led),
                        Bows.jittered(Bows.late(passage.asMarked(), lagS.applyAsDouble(i)), ERROR_S, random),
                        sharedErrorS))
                .toList();
        Comparison comparison =
                Comparing.compare(Timing.readings(bows), passage.beats(), passage.marking(), CompareSettings.DEFAULT);
        return Timing.of(comparison, bows, CompareSettings.DEFAULT);
    }

    @Test
    void fortyMillisecondsAreFoundInThirtyChanges() {
        Random random = new Random(40);
        int found = 0;
        for (int run = 0; run < 200; run++) {
            Timing timing = timing(true, PLAYERS, 30, i -> i == 5 ? 0.04 : 0, random);
            found += timing.players().get(4).claim() == Claim.LATE ? 1 : 0;
        }
        assertTrue(found >= 190, found + " of 200");
    }

    @Test
    void nobodyIsCalledLateInMoreThanOneSectionOfTwenty() {
        Random random = new Random(41);
        int wronged = 0;
        for (int changes : List.of(6, 10, 30)) {
            for (int run = 0; run < 70; run++) {
                wronged +=
                        timing(true, PLAYERS, changes, i -> 0, random).claimed().isEmpty() ? 0 : 1;
            }
        }
        assertTrue(wronged <= 10, wronged + " of 210 sections");
    }

    /** Each player of whom all changes are read late or early alike, as small figures are; everybody plays at once. */
    @Test
    void nobodyIsCalledLateForWhatAllChangesShare() {
        Random random = new Random(45);
        double sharedS = 0.024;
        int wronged = 0;
        int sections = 100;
        for (int run = 0; run < sections; run++) {
            double[] sharedErrorS = random.doubles(PLAYERS)
                    .map(unused -> sharedS * random.nextGaussian())
                    .toArray();
            wronged += timing(true, PLAYERS, 100, i -> sharedErrorS[i], sharedS, random)
                            .claimed()
                            .isEmpty()
                    ? 0
                    : 1;
        }
        assertTrue(wronged <= 5, wronged + " of " + sections + " sections");
    }

    @Test
    void aLagThatSmallFiguresMayExplainIsNotClaimed() {
        assertEquals(
                Claim.NONE,
                timing(true, 2, 100, i -> 0.058 * i, 0.02, new Random(46))
                        .players()
                        .get(0)
                        .claim());
        PlayerTiming large = timing(true, 2, 100, i -> 0.058 * i, SHARED_S, new Random(46))
                .players()
                .get(0);
        assertEquals(Claim.LATE, large.claim());
        PlayerTiming small = timing(true, 2, 100, i -> 0.15 * i, 0.02, new Random(46))
                .players()
                .get(0);
        assertEquals(Claim.LATE, small.claim());
        assertEquals(
                3 * 1000 * Math.hypot(0.02, 0.02), small.lag().orElseThrow().smallestMs(), 1e-9);
    }

    @Test
    void withoutALeaderTheOthersAreTheMeasure() {
        Random random = new Random(42);
        int found = 0;
        int wronged = 0;
        for (int run = 0; run < 60; run++) {
            Timing timing = timing(false, 6, 30, i -> i == 2 ? -0.06 : 0, random);
            assertEquals(6, timing.players().size());
            found += timing.players().get(2).claim() == Claim.EARLY ? 1 : 0;
            wronged += timing.claimed().size() > 1 ? 1 : 0;
        }
        assertTrue(found >= 57, found + " of 60");
        assertTrue(wronged <= 3, wronged + " of 60");
    }

    @Test
    void aLagBelowTheErrorOfReadingIsNotClaimedHoweverOftenSeen() {
        Timing timing = timing(true, 2, 400, i -> 0.018 * i, 0, new Random(43));
        PlayerTiming player = timing.players().get(0);
        assertTrue(player.lag().orElseThrow().p() < 1e-6, "the test alone would claim it");
        assertEquals(
                1000 * Math.hypot(STATED_S, STATED_S),
                player.lag().orElseThrow().smallestMs(),
                1e-9);
        assertEquals(Claim.NONE, player.claim());
    }

    @Test
    void nothingIsClaimedFromTooLittle() {
        Random random = new Random(44);
        assertEquals(
                List.of(Claim.TOO_FEW, Claim.TOO_FEW),
                timing(true, 3, 5, i -> 0.15 * i, random).players().stream()
                        .map(PlayerTiming::claim)
                        .toList());
        assertEquals(List.of(), timing(true, 1, 30, i -> 0, random).players());
        assertEquals(
                List.of(Claim.TOO_FEW, Claim.TOO_FEW, Claim.TOO_FEW),
                timing(false, 3, 30, i -> 0.1 * i, random).players().stream()
                        .map(PlayerTiming::claim)
                        .toList(),
                "of two others there is no median");
        BeatMap beats = new BeatMap(List.of(new Beat("1", 1, 0), new Beat("1", 2, 1), new Beat("1", 3, 2)));
        List<tuttarco.strokes.Bows> unseen = List.of(
                read(player(0, true), List.of(new Stroke(0, 3, tuttarco.strokes.StrokeKind.UNSEEN, 1))),
                read(player(1, true), List.of(new Stroke(0, 3, tuttarco.strokes.StrokeKind.UNSEEN, 1))));
        Comparison comparison = Comparing.compare(Timing.readings(unseen), beats, List.of(), CompareSettings.DEFAULT);
        assertEquals(
                Claim.TOO_FEW,
                Timing.of(comparison, unseen, CompareSettings.DEFAULT)
                        .players()
                        .get(0)
                        .claim());
    }
}
