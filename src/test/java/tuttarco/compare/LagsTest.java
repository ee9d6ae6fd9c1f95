package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class LagsTest {
    private static Lag lag(List<Stroke> player, List<Stroke> leader) {
        return lag(player, leader, new BeatMap(List.of(new Beat("1", 1, 0), new Beat("1", 2, 1))));
    }

    private static Lag lag(List<Stroke> player, List<Stroke> leader, BeatMap beats) {
        return Lags.of(
                Bows.reading(Bows.player("a"), player),
                Bows.reading(Bows.leader(), leader),
                beats,
                CompareSettings.DEFAULT);
    }

    /** Changes at every half second from 2.5 to 21.5 s, 39 of them; those from 7 s up to 12 s lie in the stop. */
    @Test
    void changesInAStopDoNotCount() {
        List<Stroke> strokes = Passage.steady(0.5, 0.5, 40).asMarked();
        BeatMap stopped = BeatMap.ofStretches(List.of(
                List.of(new Beat("1", 1, 5), new Beat("1", 2, 6)),
                List.of(new Beat("1", 1, 12), new Beat("1", 2, 13))));
        assertEquals(39, lag(strokes, strokes).changes());
        Lag lag = lag(strokes, strokes, stopped);
        assertEquals(29, lag.changes());
        assertTrue(lag.pairs().stream().noneMatch(p -> p.leaderS() >= 7 && p.leaderS() < 12));
    }

    @Test
    void aConstantDelayComesBack() {
        Random random = new Random(11);
        int checked = 0;
        for (int delayMs = -390; delayMs <= 390; delayMs += 13) {
            List<Stroke> leader = Passage.random(random).asMarked();
            Lag lag = lag(Bows.late(leader, delayMs / 1000.0), leader);
            assertEquals(delayMs, lag.medianMs().orElseThrow(), 1e-6);
            assertEquals(Change.in(leader).size(), lag.changes());
            checked++;
        }
        assertEquals(61, checked);
    }

    /** The median of some 35 changes of SD 20 ms has itself an SD of about 4 ms. */
    @Test
    void aConstantDelayComesBackThroughUnsteadyChanges() {
        Random random = new Random(12);
        List<Double> errorsMs = IntStream.range(0, 100)
                .mapToObj(i -> {
                    double delayMs = -300 + 6.0 * i;
                    List<Stroke> leader = Passage.random(random).asMarked();
                    List<Stroke> player = Bows.late(Bows.jittered(leader, 0.02, random), delayMs / 1000);
                    return Math.abs(lag(player, leader).medianMs().orElseThrow() - delayMs);
                })
                .toList();
        assertEquals(100, errorsMs.size());
        assertTrue(errorsMs.stream().allMatch(e -> e < 12), errorsMs.toString());
    }

    @Test
    void aShortDoubtAtAChangeKeepsItAndALongOneDoesNot() {
        List<Stroke> leader = Passage.steady(1, 1, 10).asMarked();
        List<Stroke> brief = Bows.as(StrokeKind.UNSURE, leader, 3.95, 4.05);
        assertEquals(9, lag(brief, leader).changes());
        assertEquals(0, lag(brief, leader).medianMs().orElseThrow(), 1e-9);
        List<Stroke> lengthy = Bows.as(StrokeKind.UNSURE, leader, 3.9, 4.1);
        assertEquals(8, lag(lengthy, leader).changes());
    }

    @Test
    void nothingToPairIsNoLag() {
        List<Stroke> leader = Passage.steady(1, 1, 10).asMarked();
        Lag still = lag(List.of(new Stroke(0, 10, StrokeKind.STILL, 1)), leader);
        assertEquals(0, still.changes());
        assertEquals(Optional.empty(), still.medianMs());
        Lag turned = lag(Bows.turned(leader, 0, 20), leader);
        assertEquals(Optional.empty(), turned.medianMs());
    }
}
