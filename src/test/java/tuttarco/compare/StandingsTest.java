package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Run;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Beats written as letters: w with, a against, u unsure, x unseen, s holding still, r a rest of the part. */
class StandingsTest {
    /** How sure a random moment is of a beat that is read right in 97 of 100 cases: log odds 1.7 times smaller. */
    private static final double MOMENT = 1 / (1 + Math.pow(0.03 / 0.97, 1 / 1.7));

    private static Standings of(String beats) {
        return of(beats, new Run(0, beats.length() - 1));
    }

    private static Standings of(String beats, Run run) {
        List<Judgement> judgements =
                beats.chars().mapToObj(c -> judgement((char) c)).toList();
        List<Played> played = beats.chars()
                .mapToObj(c -> new Played(c == 's' ? StrokeKind.STILL : StrokeKind.DOWN, 0.97, Stroke.Source.READ))
                .toList();
        return Standings.of(judgements, played, run);
    }

    private static Judgement judgement(char letter) {
        return switch (letter) {
            case 'w' -> new Judgement(Verdict.WITH, OptionalDouble.of(MOMENT));
            case 'a' -> new Judgement(Verdict.AGAINST, OptionalDouble.of(MOMENT));
            case 'x' -> Judgement.of(Verdict.UNSEEN);
            case 'r' -> Judgement.of(Verdict.REST);
            default -> Judgement.of(Verdict.UNSURE);
        };
    }

    private static void assertMostly(Standing standing, Standings standings, int first, int last) {
        for (int i = first; i <= last; i++) {
            assertTrue(standings.chance(standing, i) > 0.5, standing + " on beat " + i);
        }
    }

    @Test
    void chancesOfABeatAddUpToOne() {
        String beats = "wwaaxuwsswrraw";
        Standings standings = of(beats);
        for (int i = 0; i < beats.length(); i++) {
            int beat = i;
            double sum = IntStream.range(0, 4)
                    .mapToDouble(s -> standings.chance(Standing.values()[s], beat))
                    .sum();
            assertEquals(1, sum, 1e-9, "beat " + i);
        }
    }

    @Test
    void aBeatUnsureUnseenOrMisreadIsBridged() {
        for (String between : List.of("u", "x", "w")) {
            assertMostly(Standing.TURNED, of("wwwwaaa" + between + "aaawwww"), 4, 10);
        }
        for (String between : List.of("u", "x", "a")) {
            assertMostly(Standing.WITH, of("wwwwwww" + between + "wwwwwww"), 0, 14);
        }
    }

    @Test
    void whoHoldsStillRests() {
        assertMostly(Standing.RESTING, of("wwwwssssssssswwww"), 4, 12);
        assertMostly(Standing.WITH, of("wwwwswwww"), 0, 8);
    }

    @Test
    void whoGoesNowWithAndNowAgainstIsFree() {
        assertMostly(Standing.FREE, of("wawaawwawaawaawwawawaawwawaawawwaawaw"), 5, 30);
    }

    /** Nothing to go by: what is left is what was thought before, mostly that people keep to what is written. */
    @Test
    void whatWasNotSeenIsNotTurned() {
        assertMostly(Standing.WITH, of("xxxxxxxx"), 0, 7);
        assertMostly(Standing.WITH, of("uuuuuuuu"), 0, 7);
    }

    /** Over a rest somebody turned may find back unseen: a beat unsure after it is less surely turned than one before. */
    @Test
    void overARestAStandingHoldsLess() {
        Standings standings = of("wwwwaaaaurru");
        assertTrue(standings.chance(Standing.TURNED, 8) > standings.chance(Standing.TURNED, 11) + 0.2);
    }

    /** A turn before a stop is the same whatever comes after it. */
    @Test
    void nothingIsCarriedOverAStop() {
        Run before = new Run(0, 5);
        for (String after : List.of("wwwwww", "aaaaaa")) {
            Standings standings = of("wwwwau" + after, before);
            assertEquals(of("wwwwau", before).chance(Standing.TURNED, 5), standings.chance(Standing.TURNED, 5));
        }
    }

    /** By listing all ways: 4 standings on 3 beats of which the middle one is unsure. */
    @Test
    void chancesAreThoseOfAllWaysListed() {
        double[] start = {0.9, 0.04, 0.05, 0.01};
        double[][] step = {
            {0.952, 0.04, 0.003, 0.005},
            {0.195, 0.79, 0.01, 0.005},
            {0.005, 0.005, 0.985, 0.005},
            {0.235, 0.01, 0.005, 0.75}
        };
        double[] against = {0.95 * 0.03, 0.95 * 0.97, 0.95 / 2, 0.05 / 2};
        double all = 0;
        double turned = 0;
        for (int way = 0; way < 64; way++) {
            int a = way / 16;
            int b = way / 4 % 4;
            int c = way % 4;
            double chance = start[a] * against[a] * step[a][b] * step[b][c] * against[c];
            all += chance;
            turned += b == Standing.TURNED.ordinal() ? chance : 0;
        }
        assertEquals(turned / all, of("aua").chance(Standing.TURNED, 1), 1e-12);
    }
}
