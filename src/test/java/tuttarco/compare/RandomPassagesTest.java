package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tuttarco.compare.Divergence.Against;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Planted turns in random passages: found with their beats, none invented. */
class RandomPassagesTest {
    private static final int PASSAGES = 500;

    /** What came out of many passages with one turn planted in each. */
    private static final class Count {
        int exact;
        int nearly;
        int missed;
        int invented;

        void add(List<Divergence> found, int first, int last) {
            List<Divergence> there = found.stream()
                    .filter(d -> d.firstIndex() <= last && d.lastIndex() >= first)
                    .toList();
            invented += found.size() - there.size();
            if (there.size() == 1
                    && there.get(0).firstIndex() == first
                    && there.get(0).lastIndex() == last) {
                exact++;
            } else if (there.isEmpty()) {
                missed++;
            } else {
                nearly++;
            }
        }

        @Override
        public String toString() {
            return exact + " exact, " + nearly + " nearly, " + missed + " missed, " + invented + " invented";
        }
    }

    private static List<Divergence> fromMarking(Passage passage, List<Stroke> strokes) {
        List<Reading> readings = List.of(Bows.reading(Bows.player("a"), strokes));
        Comparison comparison =
                Comparing.compare(readings, passage.beats(), passage.marking(), CompareSettings.DEFAULT);
        assertTrue(comparison.divergences().stream().allMatch(d -> d.against() == Against.MARKING));
        return comparison.divergences();
    }

    private static Count plant(int seed, boolean noisy) {
        Random random = new Random(seed);
        Count count = new Count();
        for (int i = 0; i < PASSAGES; i++) {
            Passage passage = Passage.random(random);
            int beats = 2 + i % 5;
            int first = bowedBeats(passage, beats, random);
            List<Stroke> played =
                    Bows.turned(passage.asMarked(), passage.beatStartS(first), passage.beatStartS(first + beats));
            double lagS = 0.2 * random.nextDouble();
            played = Bows.late(noisy ? noisy(played, passage, random) : played, lagS);
            count.add(fromMarking(passage, played), first, first + beats - 1);
        }
        return count;
    }

    /** The first of so many beats without a rest. */
    private static int bowedBeats(Passage passage, int beats, Random random) {
        int first;
        do {
            first = random.nextInt(passage.beats().beats().size() - beats);
        } while (!passage.bowed(first, first + beats - 1));
        return first;
    }

    /** Changes 20 ms to and fro, one doubt of 0.15 s in each 3 s, and 3 % of the time misread for 80 ms at once. */
    private static List<Stroke> noisy(List<Stroke> strokes, Passage passage, Random random) {
        List<Stroke> noisy = Bows.jittered(strokes, 0.02, random);
        double lengthS = passage.endS() - Passage.START_S;
        for (int i = 0; i < lengthS / 3; i++) {
            double startS = Passage.START_S + random.nextDouble() * lengthS;
            noisy = Bows.as(StrokeKind.UNSURE, noisy, startS, startS + 0.15);
        }
        for (int i = 0; i < 0.03 * lengthS / 0.08; i++) {
            double startS = Passage.START_S + random.nextDouble() * lengthS;
            noisy = Bows.turned(noisy, startS, startS + 0.08);
        }
        return noisy;
    }

    @Test
    void everyTurnInAPerfectReadingIsFoundToTheBeat() {
        assertEquals(
                PASSAGES + " exact, 0 nearly, 0 missed, 0 invented",
                plant(1, false).toString());
    }

    /** Not all: doubt and misreading can fall on the same beat. */
    @Test
    void turnsAreFoundInNoisyReadings() {
        Count count = plant(2, true);
        assertEquals(PASSAGES, count.exact + count.nearly + count.missed);
        assertTrue(count.exact >= 0.98 * PASSAGES, count.toString());
        assertTrue(count.missed <= 0.005 * PASSAGES, count.toString());
        assertEquals(0, count.invented, count.toString());
    }

    @Test
    void noisyReadingsInventNothing() {
        Random random = new Random(3);
        int invented = 0;
        for (int i = 0; i < PASSAGES; i++) {
            Passage passage = Passage.random(random);
            List<Stroke> played = Bows.late(noisy(passage.asMarked(), passage, random), 0.2 * random.nextDouble());
            invented += fromMarking(passage, played).size();
        }
        assertEquals(0, invented);
    }

    @Test
    void latenessIsNotTurnedBowing() {
        int judged = 0;
        for (double strokeS : List.of(0.25, 0.3, 0.4, 0.5, 0.75, 1.0, 1.5, 2.0)) {
            for (int lagMs = 0; lagMs <= 200; lagMs += 10) {
                Passage passage = Passage.steady(strokeS, 0.5, (int) Math.ceil(32 / strokeS));
                List<Stroke> played = Bows.late(passage.asMarked(), lagMs / 1000.0);
                assertEquals(List.of(), fromMarking(passage, played), strokeS + " s, " + lagMs + " ms");
                judged++;
            }
        }
        assertEquals(8 * 21, judged);
    }

    @Test
    void latenessIsNotTurnedBowingInNoisyReadingsEither() {
        Random random = new Random(4);
        int judged = 0;
        int invented = 0;
        for (double strokeS : List.of(0.25, 0.3, 0.4, 0.5, 0.75, 1.0, 1.5, 2.0)) {
            for (int lagMs = 0; lagMs <= 200; lagMs += 10) {
                Passage passage = Passage.steady(strokeS, 0.5, (int) Math.ceil(32 / strokeS));
                List<Stroke> played = noisy(passage.asMarked(), passage, random);
                invented +=
                        fromMarking(passage, Bows.late(played, lagMs / 1000.0)).size();
                judged++;
            }
        }
        assertEquals(8 * 21, judged);
        assertEquals(0, invented);
    }

    @Test
    void turnsInSteadyStrokesAreFoundThroughLateness() {
        Count count = new Count();
        int planted = 0;
        for (double strokeS : List.of(0.25, 0.5, 1.0, 2.0)) {
            for (int lagMs = 0; lagMs <= 200; lagMs += 40) {
                for (int beats = 2; beats <= 20; beats += 3) {
                    Passage passage = Passage.steady(strokeS, 0.5, (int) (32 / strokeS));
                    List<Stroke> played =
                            Bows.turned(passage.asMarked(), passage.beatStartS(10), passage.beatStartS(10 + beats));
                    count.add(fromMarking(passage, Bows.late(played, lagMs / 1000.0)), 10, 9 + beats);
                    planted++;
                }
            }
        }
        assertEquals(4 * 6 * 7, planted);
        assertEquals(planted + " exact, 0 nearly, 0 missed, 0 invented", count.toString());
    }

    /** In nothing but the shortest strokes a late turned player could as well be early; there only a small delay. */
    @Test
    void aPlayerTurnedFromBeginningToEndIsFound() {
        int found = 0;
        for (double strokeS : List.of(0.25, 0.5, 1.0, 2.0)) {
            for (int lagMs : strokeS < 0.5 ? List.of(0, 10, 20) : List.of(0, 50, 100, 150, 200)) {
                Passage passage = Passage.steady(strokeS, 0.5, (int) (32 / strokeS));
                List<Stroke> played = Bows.turned(passage.asMarked(), 0, passage.endS());
                List<Divergence> divergences = fromMarking(passage, Bows.late(played, lagMs / 1000.0));
                assertEquals(1, divergences.size(), strokeS + " s, " + lagMs + " ms");
                assertEquals(0, divergences.get(0).firstIndex());
                assertEquals(63, divergences.get(0).lastIndex());
                found++;
            }
        }
        assertEquals(18, found);
    }

    /** A leader and seven players, each late by a time of his or her own; three leave together for four beats. */
    @Test
    void playersWhoLeaveTogetherAreFoundTogetherInNoisyReadings() {
        Random random = new Random(5);
        int sections = 100;
        List<Against> exact = new ArrayList<>();
        List<Against> others = new ArrayList<>();
        for (int i = 0; i < sections; i++) {
            Passage passage = Passage.random(random);
            int first = bowedBeats(passage, 4, random);
            List<Reading> readings = new ArrayList<>();
            for (int p = 0; p < 8; p++) {
                List<Stroke> played = p < 5
                        ? passage.asMarked()
                        : Bows.turned(passage.asMarked(), passage.beatStartS(first), passage.beatStartS(first + 4));
                List<Stroke> late = Bows.late(noisy(played, passage, random), 0.15 * random.nextDouble());
                readings.add(Bows.reading(p == 0 ? Bows.leader() : Bows.player("p" + p), late));
            }
            Comparison comparison =
                    Comparing.compare(readings, passage.beats(), passage.marking(), CompareSettings.DEFAULT);
            for (Divergence d : comparison.divergences()) {
                boolean together = d.firstIndex() == first
                        && d.lastIndex() == first + 3
                        && d.players().equals(comparison.players().subList(5, 8));
                (together ? exact : others).add(d.against());
            }
        }
        assertEquals(sections, Collections.frequency(exact, Against.MARKING));
        assertEquals(0, Collections.frequency(others, Against.MARKING));
        // the leader's own reading is as noisy as the players'
        assertTrue(Collections.frequency(exact, Against.LEADER) >= 90, exact.size() + " exact");
        assertTrue(Collections.frequency(others, Against.LEADER) <= 10, others.size() + " others");
    }
}
