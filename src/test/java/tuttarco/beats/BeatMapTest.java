package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.files.InputException;

class BeatMapTest {
    private static final List<Beat> FIVE =
            List.of(beat("1", 1, 0), beat("1", 2, 1), beat("1", 2, 10), beat("2", 1, 10.5), beat("2", 2, 11));

    private static Beat beat(String bar, int number, double timeS) {
        return new Beat(bar, number, timeS);
    }

    private static final BeatMap STOPPED = new BeatMap(FIVE, List.of(new Run(0, 1), new Run(2, 4)));

    @Test
    void theLastBeatOfARunLastsAsLongAsTheOneBefore() {
        assertEquals(
                List.of(1.0, 2.0, 10.5, 11.0, 11.5),
                IntStream.range(0, 5).mapToObj(STOPPED::endS).toList());
        assertTrue(STOPPED.stops());
        assertEquals(10, new BeatMap(FIVE).endS(1));
        assertFalse(new BeatMap(FIVE).stops());
    }

    @Test
    void aStopLastsFromTheEndOfARunToTheNext() {
        assertFalse(STOPPED.stopped(-1));
        assertFalse(STOPPED.stopped(1.9));
        assertTrue(STOPPED.stopped(2));
        assertTrue(STOPPED.stopped(9.9));
        assertFalse(STOPPED.stopped(10));
        assertFalse(STOPPED.stopped(99));
    }

    @Test
    void aBeatLastsUntilTheNextAndNoneWhileThePlayingStops() {
        assertEquals(Optional.empty(), STOPPED.indexAt(-0.001));
        assertEquals(Optional.of(0), STOPPED.indexAt(0));
        assertEquals(Optional.of(0), STOPPED.indexAt(0.999));
        assertEquals(Optional.of(1), STOPPED.indexAt(1.999));
        assertEquals(Optional.empty(), STOPPED.indexAt(2));
        assertEquals(Optional.of(1), STOPPED.lastBegun(2));
        assertEquals(Optional.of(4), STOPPED.indexAt(11.499));
        assertEquals(Optional.empty(), STOPPED.indexAt(11.5));
        assertEquals(Optional.of(4), STOPPED.lastBegun(99));
        assertEquals(Optional.empty(), STOPPED.lastBegun(-1));
    }

    @Test
    void aTimeMeansTheBeatThatLastsOrOneThatIsNear() {
        assertEquals(Optional.empty(), STOPPED.meantBy(-0.501));
        assertEquals(Optional.of(0), STOPPED.meantBy(-0.5));
        assertEquals(Optional.of(0), STOPPED.meantBy(0.499));
        assertEquals(Optional.of(1), STOPPED.meantBy(0.5));
        assertEquals(Optional.of(1), STOPPED.meantBy(1.999));
        assertEquals(Optional.empty(), STOPPED.meantBy(2));
        assertEquals(Optional.empty(), STOPPED.meantBy(11.5));
    }

    @Test
    void aBarGoesOnAfterAStopAsABarOfItsOwn() {
        assertEquals(
                List.of(true, false, true, true, false),
                IntStream.range(0, 5).mapToObj(STOPPED::beginsBar).toList());
        assertEquals(
                List.of(
                        new BeatMap.PlayedBar("1", 0, 1),
                        new BeatMap.PlayedBar("1", 2, 2),
                        new BeatMap.PlayedBar("2", 3, 4)),
                STOPPED.bars());
    }

    @Test
    void runsHoldEveryBeatOnce() {
        for (List<Run> bad : List.of(
                List.<Run>of(),
                List.of(new Run(0, 3)),
                List.of(new Run(1, 4)),
                List.of(new Run(0, 1), new Run(1, 4)),
                List.of(new Run(0, 1), new Run(2, 5)))) {
            assertThrows(IllegalArgumentException.class, () -> new BeatMap(FIVE, bad));
        }
        assertThrows(IllegalArgumentException.class, () -> new Run(3, 3));
        assertThrows(IllegalArgumentException.class, () -> new BeatMap(FIVE.subList(0, 1)));
        assertEquals(STOPPED, BeatMap.ofStretches(List.of(FIVE.subList(0, 2), FIVE.subList(2, 5))));
    }

    @Test
    void withoutAPartTheBarNumbersTellWhereTheListGoesBack() throws InputException {
        List<Beat> beats = List.of(
                beat("9", 1, 0),
                beat("9", 3, 1),
                beat("10", 1, 2),
                beat("10a", 1, 3),
                beat("11", 1, 4),
                beat("8", 1, 6),
                beat("9", 1, 7),
                beat("9", 2, 7.5),
                beat("9", 3, 8),
                beat("10", 1, 30),
                beat("10", 2, 31));
        assertEquals(
                List.of(new Run(0, 4), new Run(5, 8), new Run(9, 10)),
                ListedOrder.withRuns(new BeatMap(beats)).runs());
        BeatMap alone = new BeatMap(List.of(beat("2", 1, 0), beat("1", 1, 1), beat("1", 2, 2)));
        assertTrue(assertThrows(InputException.class, () -> ListedOrder.withRuns(alone))
                .getMessage()
                .contains("bar 2 beat 1 at 0.0 s alone"));
    }
}
