package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.files.InputException;

class AnchoredBeatsTest extends BeatSourceContract {
    private static final double EXACT_S = 1e-9;

    /** Bars of four beats, half a second each, from 0 s, each known to 20 ms. */
    private static List<Beat> bars(int bars) {
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < 4 * bars; i++) {
            beats.add(new Beat(Integer.toString(1 + i / 4), 1 + i % 4, i * 0.5, OptionalDouble.of(0.02), Beat.SOUND));
        }
        return beats;
    }

    private static List<Beat> anchored(List<Beat> given, Beat... anchors) throws InputException {
        return new AnchoredBeats(() -> new BeatMap(given), Arrays.asList(anchors))
                .beats()
                .beats();
    }

    /** Listed beats, shifted by an anchor on the third. */
    @Override
    BeatSource sixBeats() {
        List<Beat> early = List.of(
                new Beat("1", 1, 2),
                new Beat("1", 2, 2.5),
                new Beat("1", 3, 3),
                new Beat("1", 4, 3.5),
                new Beat("2", 1, 4),
                new Beat("2", 2, 4.5));
        return new AnchoredBeats(() -> new BeatMap(early), List.of(new Beat("1", 3, 4)));
    }

    @Test
    @Override
    void beatsHaveTheirBarsAndTimes() throws Exception {
        List<Beat> beats = sixBeats().beats().beats();
        assertEquals(6, beats.size());
        OptionalDouble shifted = OptionalDouble.of(Math.sqrt(
                2 * Beat.TAPPED_S * Beat.TAPPED_S + AnchoredBeats.ANCHOR_STDERR_S * AnchoredBeats.ANCHOR_STDERR_S));
        assertEquals(new Beat("1", 1, 3, shifted, Beat.LIST), beats.get(0));
        assertEquals(new Beat("1", 3, 4, OptionalDouble.of(AnchoredBeats.ANCHOR_STDERR_S), Beat.ANCHOR), beats.get(2));
        assertEquals(new Beat("2", 2, 5.5, shifted, Beat.LIST), beats.get(5));
    }

    @Test
    void betweenAnchorsTimesAreStretchedEvenlyAndOutsideShifted() throws InputException {
        // from 2 to 6 s come to lie from 3 to 8 s
        List<Beat> beats = anchored(bars(4), new Beat("4", 1, 8), new Beat("2", 1, 3));
        assertEquals(16, beats.size());
        assertEquals(1, beats.get(0).timeS(), EXACT_S);
        assertEquals(2.5, beats.get(3).timeS(), EXACT_S);
        assertEquals(3, beats.get(4).timeS(), EXACT_S);
        assertEquals(3 + 5 * 0.25, beats.get(6).timeS(), EXACT_S);
        assertEquals(8, beats.get(12).timeS(), EXACT_S);
        assertEquals(9.5, beats.get(15).timeS(), EXACT_S);
    }

    @Test
    void unevenBeatsKeepTheirUnevenness() throws InputException {
        List<Beat> given =
                List.of(new Beat("1", 1, 0), new Beat("1", 2, 0.8), new Beat("1", 3, 1), new Beat("1", 4, 2));
        List<Beat> beats = anchored(given, new Beat("1", 1, 0), new Beat("1", 4, 3));
        assertEquals(1.2, beats.get(1).timeS(), EXACT_S);
        assertEquals(1.5, beats.get(2).timeS(), EXACT_S);
    }

    @Test
    void errorsAreTheAnchorsAtAnchorsAndAddUpElsewhere() throws InputException {
        List<Beat> beats = anchored(bars(4), new Beat("2", 1, 2), new Beat("4", 1, 6));
        double anchor = 0.1 / Math.sqrt(12);
        assertEquals(anchor, beats.get(4).stderrS().orElseThrow(), EXACT_S);
        assertEquals(anchor, beats.get(12).stderrS().orElseThrow(), EXACT_S);
        double both = 0.02 * 0.02 + anchor * anchor;
        assertEquals(Math.sqrt(0.02 * 0.02 + both / 2), beats.get(8).stderrS().orElseThrow(), EXACT_S);
        assertEquals(Math.sqrt(0.02 * 0.02 + both), beats.get(0).stderrS().orElseThrow(), EXACT_S);
        assertEquals(Math.sqrt(0.02 * 0.02 + both), beats.get(15).stderrS().orElseThrow(), EXACT_S);
    }

    /** Of errors as normal as stated, 68 and 95 % lie within one and two standard errors. */
    @Test
    void statedErrorsAreThoseThatOccur() throws InputException {
        Random random = new Random(3);
        int[] within = new int[3];
        int count = 0;
        for (int trial = 0; trial < 300; trial++) {
            List<Beat> given = new ArrayList<>();
            for (Beat truth : bars(8)) {
                given.add(new Beat(
                        truth.bar(),
                        truth.beat(),
                        truth.timeS() + 0.02 * random.nextGaussian(),
                        truth.stderrS(),
                        Beat.SOUND));
            }
            Beat[] anchors = new Beat[2];
            for (int k = 0; k < 2; k++) {
                double timeS = 2 + 8 * k + AnchoredBeats.ANCHOR_STDERR_S * random.nextGaussian();
                anchors[k] = new Beat(Integer.toString(2 + 4 * k), 1, timeS);
            }
            List<Beat> beats = anchored(given, anchors);
            for (int i = 0; i < beats.size(); i++) {
                double errors = Math.abs(beats.get(i).timeS() - 0.5 * i)
                        / beats.get(i).stderrS().orElseThrow();
                within[1] += errors <= 1 ? 1 : 0;
                within[2] += errors <= 2 ? 1 : 0;
                count++;
            }
        }
        assertEquals(0.683, (double) within[1] / count, 0.03);
        assertEquals(0.954, (double) within[2] / count, 0.02);
    }

    @Test
    void stopsStayStops() throws InputException {
        List<Beat> again = bars(1).stream()
                .map(b -> new Beat(b.bar(), b.beat(), b.timeS() + 20, b.stderrS(), b.source()))
                .toList();
        BeatMap twice = BeatMap.ofStretches(List.of(bars(1), again));
        BeatMap corrected = new AnchoredBeats(() -> twice, List.of(new Beat("1", 1, 0.5))).beats();
        assertEquals(twice.runs(), corrected.runs());
    }

    private static BeatMap againAfter(double s) {
        List<Beat> again = bars(1).stream()
                .map(b -> new Beat(b.bar(), b.beat(), b.timeS() + s, b.stderrS(), b.source()))
                .toList();
        return BeatMap.ofStretches(List.of(bars(1), again));
    }

    @Test
    void anAnchorMovesTheRunItLiesInAndNoOther() throws InputException {
        BeatMap twice = againAfter(20);
        List<Beat> later = new AnchoredBeats(() -> twice, List.of(new Beat("1", 2, 20.75)))
                .beats()
                .beats();
        for (int i = 0; i < 4; i++) {
            assertEquals(twice.beats().get(i), later.get(i));
            double shiftS = later.get(4 + i).timeS() - twice.beats().get(4 + i).timeS();
            assertEquals(20.75 - twice.beats().get(5).timeS(), shiftS, EXACT_S);
        }
    }

    /** Between two anchors in two runs nothing is stretched, however far the runs are apart. */
    @Test
    void eachRunIsShiftedByItsOwnAnchor() throws InputException {
        BeatMap twice = againAfter(20);
        double firstS = twice.beats().get(0).timeS();
        List<Beat> beats = new AnchoredBeats(
                        () -> twice, List.of(new Beat("1", 1, firstS + 0.25), new Beat("1", 1, firstS + 25)))
                .beats()
                .beats();
        for (int i = 0; i < 4; i++) {
            assertEquals(twice.beats().get(i).timeS() + 0.25, beats.get(i).timeS(), EXACT_S);
            assertEquals(twice.beats().get(4 + i).timeS() + 5, beats.get(4 + i).timeS(), EXACT_S);
        }
    }

    @Test
    void aRunMovedOverTheNextIsRefusedInOneSentence() {
        List<Beat> two = bars(2);
        List<Beat> second = two.subList(4, 8).stream()
                .map(b -> new Beat(b.bar(), b.beat(), b.timeS() + 2, b.stderrS(), b.source()))
                .toList();
        BeatMap map = BeatMap.ofStretches(List.of(two.subList(0, 4), second));
        AnchoredBeats late = new AnchoredBeats(() -> map, List.of(new Beat("1", 4, 4.2)));
        String message = assertThrows(InputException.class, late::beats).getMessage();
        assertTrue(message.startsWith("the anchors move "), message);
        assertTrue(message.endsWith("; give an anchor on either side of the stop"), message);
    }

    @Test
    void ofTwoPlayingsTheNearerIsMeant() throws InputException {
        List<Beat> twice = new ArrayList<>(bars(2));
        bars(2).forEach(b -> twice.add(new Beat(b.bar(), b.beat(), b.timeS() + 20, b.stderrS(), b.source())));
        List<Beat> beats = anchored(twice, new Beat("2", 1, 22.5));
        assertEquals(22.5, beats.get(12).timeS(), EXACT_S);
        assertEquals(2.5, beats.get(4).timeS(), EXACT_S);
        beats = anchored(twice, new Beat("2", 1, 2.5), new Beat("2", 1, 22));
        assertEquals(2.5, beats.get(4).timeS(), EXACT_S);
        assertEquals(22, beats.get(12).timeS(), EXACT_S);
    }

    @Test
    void aBeatWithoutKnownErrorGetsNone() throws InputException {
        List<Beat> given = IntStream.range(0, 3)
                .mapToObj(i -> new Beat("1", 1 + i, i, OptionalDouble.empty(), Beat.SOUND))
                .toList();
        assertFalse(anchored(given, new Beat("1", 1, 0.5)).get(1).stderrS().isPresent());
    }

    private static void assertRefused(String expected, Beat... anchors) {
        InputException e = assertThrows(InputException.class, () -> anchored(bars(8), anchors));
        assertTrue(e.getMessage().startsWith(expected), e.getMessage());
    }

    @Test
    void anchorsThatCannotBeAreRefusedInOneSentence() {
        assertRefused(
                "the anchor names bar 17 beat 1, which is not among the beats it should correct, from bar 1 beat 1 to"
                        + " bar 8 beat 4;",
                new Beat("17", 1, 3));
        assertRefused("the anchor names bar 2 beat 5, which is not among", new Beat("2", 5, 3));
        assertRefused(
                "the anchor bar 2 beat 1 at 42.3 s lies far from that beat, which is at 2.0 s", new Beat("2", 1, 42.3));
        assertRefused(
                "the anchors bar 3 beat 1 at 3.5 s and bar 2 beat 1 at 4.0 s contradict each other",
                new Beat("2", 1, 4),
                new Beat("3", 1, 3.5));
        assertRefused(
                "the anchors bar 2 beat 1 at 2.0 s and bar 2 beat 1 at 2.1 s contradict each other",
                new Beat("2", 1, 2),
                new Beat("2", 1, 2.1));
        assertRefused(
                "the anchors bar 2 beat 1 at 2.0 s and bar 3 beat 1 at 2.0 s contradict each other",
                new Beat("2", 1, 2),
                new Beat("3", 1, 2));
        assertRefused(
                "the anchors bar 2 beat 1 at 2.0 s and bar 4 beat 1 at 60.0 s are 58.0 s apart, which is far from the"
                        + " 4.0 s without them",
                new Beat("2", 1, 2),
                new Beat("4", 1, 60));
    }
}
