package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

class CorrectedReadingsTest {
    private static final List<StrokeKind> SETTABLE =
            List.of(StrokeKind.DOWN, StrokeKind.UP, StrokeKind.TREMOLO, StrokeKind.STILL, StrokeKind.UNSEEN);
    private static final int QUARTERS_A_SECOND = 4;

    private static List<Stroke> corrected(String seconds, Correction... corrections) {
        CorrectedReadings all = CorrectedReadings.of(List.of(Logged.reading("Nora", seconds)), Logged.all(corrections));
        assertEquals(List.of(), all.notes());
        return all.readings().get(0).strokes();
    }

    private static Stroke read(double startS, double endS, StrokeKind kind) {
        return new Stroke(startS, endS, kind, 0.9);
    }

    /** Every quarter of a second is what was said of it last. */
    @Test
    void whatWasSaidLastHoldsAndTheClipStaysCovered() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            String seconds = "dusdu-?dtd";
            StrokeKind[] wanted = new StrokeKind[seconds.length() * QUARTERS_A_SECOND];
            boolean[] set = new boolean[wanted.length];
            for (int i = 0; i < wanted.length; i++) {
                wanted[i] = Logged.kind(seconds.charAt(i / QUARTERS_A_SECOND));
            }
            List<Correction> corrections = new ArrayList<>();
            for (int c = 0; c < 6; c++) {
                int from = random.nextInt(wanted.length + 8) - 4;
                int to = from + 5 + random.nextInt(12);
                double fromS = (double) from / QUARTERS_A_SECOND;
                double toS = (double) to / QUARTERS_A_SECOND;
                boolean absent = random.nextInt(4) == 0;
                StrokeKind kind = absent ? StrokeKind.ABSENT : SETTABLE.get(random.nextInt(SETTABLE.size()));
                corrections.add(
                        absent
                                ? new Correction.Absent("Nora", fromS, toS)
                                : new Correction.StrokeSet("Nora", fromS, toS, kind));
                if (Math.max(from, 0) < Math.min(to, wanted.length)) {
                    Arrays.fill(wanted, Math.max(from, 0), Math.min(to, wanted.length), kind);
                    Arrays.fill(set, Math.max(from, 0), Math.min(to, wanted.length), true);
                }
            }
            CorrectedReadings all = CorrectedReadings.of(
                    List.of(Logged.reading("Nora", seconds)), Logged.all(corrections.toArray(Correction[]::new)));
            Reading reading = all.readings().get(0);
            assertEquals(0, reading.strokes().get(0).startS());
            assertEquals(
                    seconds.length(),
                    reading.strokes().get(reading.strokes().size() - 1).endS());
            assertEquals(corrections.size(), all.applied().size() + all.notes().size());
            for (int i = 0; i < wanted.length; i++) {
                Stroke there = reading.at((i + 0.5) / QUARTERS_A_SECOND).orElseThrow();
                assertEquals(wanted[i], there.kind(), "seed " + seed + ", quarter " + i);
                if (set[i]) {
                    assertEquals(Stroke.Source.BY_HAND, there.source());
                    assertEquals(1, there.confidence());
                }
            }
        }
    }

    @Test
    void aStrokeSetAmongOthersKeepsWhatLiesOutside() {
        assertEquals(
                List.of(
                        read(0, 0.5, StrokeKind.DOWN),
                        Stroke.byHand(0.5, 1.25, StrokeKind.STILL),
                        read(1.25, 2, StrokeKind.UP)),
                corrected("du", new Correction.StrokeSet("Nora", 0.5, 1.25, StrokeKind.STILL)));
        assertEquals(
                List.of(
                        read(0, 1, StrokeKind.DOWN),
                        read(1, 1.25, StrokeKind.UP),
                        Stroke.byHand(1.25, 1.5, StrokeKind.DOWN),
                        read(1.5, 2, StrokeKind.UP)),
                corrected("du", new Correction.StrokeSet("Nora", 1.25, 1.5, StrokeKind.DOWN)));
    }

    /** A few hundredths of a second beside a change that was read are no stroke of their own. */
    @Test
    void whatIsLeftOfAStrokeIsLongEnoughForABow() {
        Stroke down = read(0, 1, StrokeKind.DOWN);
        Stroke set = Stroke.byHand(1, 2, StrokeKind.STILL);
        Stroke unseen = read(2, 3, StrokeKind.UNSEEN);
        assertEquals(
                List.of(down, set, unseen),
                corrected("du-", new Correction.StrokeSet("Nora", 1.03, 1.97, StrokeKind.STILL)));
        assertEquals(
                List.of(down.during(0, 0.94), Stroke.byHand(0.94, 2.06, StrokeKind.STILL), unseen.during(2.06, 3)),
                corrected("du-", new Correction.StrokeSet("Nora", 0.94, 2.06, StrokeKind.STILL)));
    }

    /** A change that was never there goes; one that the reader gives between two strokes of its own stays. */
    @Test
    void aStrokeSetIsOneBowWithNeighboursThatGoTheSameWay() {
        assertEquals(
                List.of(Stroke.byHand(0, 3, StrokeKind.DOWN), read(3, 4, StrokeKind.UP)),
                corrected("dudu", new Correction.StrokeSet("Nora", 1, 2, StrokeKind.DOWN)));
        assertEquals(
                List.of(
                        read(0, 1, StrokeKind.STILL),
                        Stroke.byHand(1, 2, StrokeKind.STILL),
                        read(2, 3, StrokeKind.STILL)),
                corrected("sus", new Correction.StrokeSet("Nora", 1, 2, StrokeKind.STILL)));
        assertEquals(
                List.of(read(0, 1, StrokeKind.DOWN), read(1, 2, StrokeKind.DOWN), Stroke.byHand(2, 3, StrokeKind.UP)),
                corrected("dd-", new Correction.StrokeSet("Nora", 2, 3, StrokeKind.UP)));
    }

    @Test
    void aMovedChangeLengthensOneStrokeAndShortensTheOther() {
        assertEquals(
                List.of(read(0, 1.75, StrokeKind.DOWN), read(1.75, 2, StrokeKind.UP), read(2, 3, StrokeKind.DOWN)),
                corrected("dud", new Correction.ChangeMoved("Nora", 1.05, 1.75)));
        assertEquals(
                List.of(read(0, 0.5, StrokeKind.DOWN), read(0.5, 2, StrokeKind.UP), read(2, 3, StrokeKind.DOWN)),
                corrected(
                        "dud",
                        new Correction.ChangeMoved("Nora", 1, 1.75),
                        new Correction.ChangeMoved("Nora", 1.75, 0.5)));
    }

    @Test
    void whatFindsNoPlaceIsLeftOutAndTold() {
        Reading nora = Logged.reading("Nora", "dud");
        for (Correction stray : List.of(
                new Correction.StrokeSet("Nora", 3, 4, StrokeKind.UP),
                new Correction.Absent("Nora", -2, 0),
                new Correction.ChangeMoved("Nora", 1.2, 1.5),
                new Correction.ChangeMoved("Nora", 1, 2),
                new Correction.ChangeMoved("Nora", 2, 1),
                new Correction.ChangeMoved("Nora", 1, 0),
                new Correction.ChangeMoved("Nora", 0, 0.5),
                new Correction.StrokeSet("Ida", 0, 1, StrokeKind.UP))) {
            CorrectedReadings all = CorrectedReadings.of(List.of(nora), Logged.all(stray));
            assertSame(nora, all.readings().get(0), stray.toString());
            assertEquals(List.of(), all.applied());
            assertEquals(1, all.notes().size());
        }
        assertEquals(
                List.of(
                        "A correction is left out, but not lost (Ida, 0.00 to 1.00 s: up): the take has no such player."),
                CorrectedReadings.of(List.of(nora), Logged.all(new Correction.StrokeSet("Ida", 0, 1, StrokeKind.UP)))
                        .notes());
        Reading nothing = new Reading(Logged.player("Nora", 1), List.of());
        assertEquals(
                1,
                CorrectedReadings.of(List.of(nothing), Logged.all(new Correction.Absent("Nora", 0, 1)))
                        .notes()
                        .size());
    }

    @Test
    void everybodyElseKeepsTheVerySameReading() {
        List<Reading> read =
                List.of(Logged.reading("Nora", "du"), Logged.reading("Ida", "ud"), Logged.reading("Jon", "dd"));
        CorrectedReadings all = CorrectedReadings.of(
                read,
                Logged.all(
                        new Correction.StrokeSet("Ida", 0, 1, StrokeKind.DOWN),
                        new Correction.BeatMoved("1", 1, 0, 0.5),
                        new Correction.StrokeSet("Gone", 0, 1, StrokeKind.DOWN)));
        assertSame(read.get(0), all.readings().get(0));
        assertSame(read.get(2), all.readings().get(2));
        assertEquals(
                Stroke.byHand(0, 2, StrokeKind.DOWN),
                all.readings().get(1).strokes().get(0));
        assertEquals(1, all.applied().size());
        assertEquals(1, all.notes().size(), "beats are not its business");
    }

    @Test
    void theOldValueIsHowLongWhatWasRead() {
        assertEquals(
                Map.of(StrokeKind.DOWN, 0.75, StrokeKind.UP, 1.0, StrokeKind.UNSURE, 0.5),
                CorrectedReadings.wasS(Logged.reading("Nora", "du?"), 0.25, 2.5));
    }

    @Test
    void nonsenseCantBeSaid() {
        assertThrows(IllegalArgumentException.class, () -> new Correction.Absent("Nora", 2, 2));
        assertThrows(IllegalArgumentException.class, () -> new Correction.Absent("Nora", Double.NaN, 2));
        assertThrows(IllegalArgumentException.class, () -> new Correction.ChangeMoved("Nora", 2, 2));
        assertThrows(IllegalArgumentException.class, () -> new Correction.BeatMoved("", 1, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> new Correction.StrokeSet("Nora", 1, 2, StrokeKind.UNSURE));
        assertTrue(new Correction.BeatMoved("1", 1, 1, 2).touches() instanceof Correction.Touched.Beats);
        assertEquals(new Correction.Touched.OnePlayer("Nora"), new Correction.Absent("Nora", 1, 2).touches());
    }
}
