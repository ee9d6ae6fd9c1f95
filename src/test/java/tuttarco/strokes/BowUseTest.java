package tuttarco.strokes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.signal.Curve;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

class BowUseTest {
    private static final double NOISE = 0.03;

    /** A bow that goes from place to place, each way in the same time, its speed a half sine. */
    private record Playing(double strokeS, double... places) {
        double endS() {
            return strokeS * (places.length - 1);
        }

        private int index(double timeS) {
            return Math.min((int) (timeS / strokeS), places.length - 2);
        }

        private double way(int i) {
            return places[i + 1] - places[i];
        }

        double velocity(double timeS) {
            int i = index(timeS);
            return way(i) * Math.PI / (2 * strokeS) * Math.sin(Math.PI * (timeS / strokeS - i));
        }

        double place(double timeS) {
            int i = index(timeS);
            return places[i] + way(i) * (1 - Math.cos(Math.PI * (timeS / strokeS - i))) / 2;
        }

        Reading reading() {
            return new Reading(
                    Tracks.PLAYER,
                    IntStream.range(0, places.length - 1)
                            .mapToObj(i -> new Stroke(
                                    i * strokeS, (i + 1) * strokeS, way(i) > 0 ? StrokeKind.DOWN : StrokeKind.UP, 0.95))
                            .toList());
        }

        ArmTrack track() {
            return Tracks.byBody(endS(), NOISE, this::velocity, this::place);
        }

        List<BowUse> uses() {
            return uses(track());
        }

        List<BowUse> uses(ArmTrack track) {
            return Bows.of(track, reading()).bows().stream().map(Bow::use).toList();
        }
    }

    /** The places of whole bows, then of short strokes near the frog, in the middle and near the tip. */
    private static final Playing EVERYWHERE =
            new Playing(1, 0.2, 1.4, 0.2, 1.4, 0.2, 0.5, 0.2, 0.5, 0.65, 0.95, 0.65, 0.95, 1.1, 1.4, 1.1, 1.4);

    private static List<BowUse> placed(List<BowUse> uses) {
        return uses.stream().filter(BowUse.Placed.class::isInstance).toList();
    }

    private static BowUse.Measured measured(BowUse use) {
        return (BowUse.Measured) use;
    }

    @Test
    void theLengthIsThatOfTheWay() {
        List<BowUse> uses = new Playing(0.8, 0.3, 0.9, 0.4, 1.2, 0.3).uses();
        double[] lengths = {0.6, 0.5, 0.8, 0.9};
        assertEquals(lengths.length, uses.size());
        for (int i = 0; i < lengths.length; i++) {
            assertEquals(lengths[i], measured(uses.get(i)).lengthShoulderWidths(), 0.01);
            assertEquals(lengths[i] / 0.9, measured(uses.get(i)).lengthShare(), 0.01);
        }
    }

    /** A bow that speeds up and slows down for 0.2 s each and goes at 0.7 between: 0.7 (1 - 0.2) long in a second. */
    @Test
    void aTrapezoidOfSpeedsHasItsArea() {
        ArmTrack track = Tracks.byBody(1, NOISE, t -> 0.7 * Math.min(1, Math.min(t, 1 - t) / 0.2), t -> 1);
        Reading reading = new Reading(Tracks.PLAYER, List.of(new Stroke(0, 1, StrokeKind.DOWN, 1)));
        BowUse use = Bows.of(track, reading).bows().get(0).use();
        assertEquals(0.56, measured(use).lengthShoulderWidths(), 0.01);
        assertEquals(1, measured(use).lengthShare(), 1e-12);
    }

    @Test
    void strokesArePlacedInThirdsOfTheBowThatIsUsed() {
        assertPlaced(EVERYWHERE.uses());
    }

    /** Poses come once a second and scatter by 0.13 shoulder widths, as measured on real ones; flow carries between. */
    @Test
    void placesSurviveTheScatterOfPoses() {
        Random random = new Random(5);
        double[] posesS = IntStream.rangeClosed(0, 16).mapToDouble(i -> i).toArray();
        Curve scatter = new Curve(
                posesS,
                IntStream.rangeClosed(0, 16)
                        .mapToDouble(i -> 0.13 * random.nextGaussian())
                        .toArray());
        assertPlaced(EVERYWHERE.uses(Tracks.byBody(
                EVERYWHERE.endS(), NOISE, EVERYWHERE::velocity, t -> EVERYWHERE.place(t) + scatter.at(t))));
    }

    private static void assertPlaced(List<BowUse> uses) {
        List<BowPart> claimed = new ArrayList<>();
        for (int i : new int[] {5, 6, 9, 10, 13, 14}) {
            BowUse.Placed placed = (BowUse.Placed) uses.get(i);
            assertTrue(placed.confidence() >= 0.8 && placed.confidence() <= 1, placed.toString());
            claimed.add(placed.part());
        }
        assertEquals(
                List.of(BowPart.FROG, BowPart.FROG, BowPart.MIDDLE, BowPart.MIDDLE, BowPart.TIP, BowPart.TIP), claimed);
    }

    @Test
    void whoUsesHalfTheBowOnlyIsPlacedNowhere() {
        for (Playing half : List.of(
                new Playing(1, 0.2, 0.8, 0.2, 0.8, 0.2, 0.6, 0.2), new Playing(1, 0.8, 1.8, 0.8, 1.8, 0.8, 1.2, 0.8))) {
            List<BowUse> uses = half.uses();
            assertEquals(
                    6, uses.stream().filter(BowUse.Measured.class::isInstance).count());
            assertEquals(List.of(), placed(uses));
        }
    }

    @Test
    void whatCannotBeMeasuredSaysWhy() {
        Playing shortOnes = new Playing(0.3, 0.2, 0.4, 0.2, 0.4, 0.2);
        assertEquals(all(4, BowUse.Reason.TOO_SHORT), shortOnes.uses());
        Playing slow = new Playing(1, 0.2, 0.4, 0.2, 0.4, 0.2);
        ArmTrack noisy = Tracks.byBody(slow.endS(), 0.1, slow::velocity, slow::place);
        assertEquals(all(4, BowUse.Reason.UNCLEAR), slow.uses(noisy));
        ArmTrack flow = Tracks.byFlow(slow.endS(), NOISE, slow::velocity);
        assertEquals(all(4, BowUse.Reason.NO_BODY), slow.uses(flow));
        ArmTrack empty = new ArmTrack(Tracks.PLAYER, 0, slow.endS(), List.<ArmSample>of());
        assertEquals(all(4, BowUse.Reason.NO_BODY), slow.uses(empty));
        Reading still = new Reading(Tracks.PLAYER, List.of(new Stroke(0, slow.endS(), StrokeKind.STILL, 1)));
        assertEquals(
                new BowUse.Unknown(BowUse.Reason.NO_STROKE),
                Bows.of(slow.track(), still).bows().get(0).use());
    }

    private static List<BowUse> all(int count, BowUse.Reason reason) {
        return Collections.nCopies(count, new BowUse.Unknown(reason));
    }

    /** Two of four strokes are hidden in noise: the other two are not believed either; of one in four the rest is. */
    @Test
    void whereMostIsUnclearNothingIsBelieved() {
        Playing playing = new Playing(1, 0.2, 1.0, 0.2, 1.0, 0.2);
        assertEquals(all(4, BowUse.Reason.UNCLEAR), playing.uses(noisyUntil(2, playing)));
        List<BowUse> uses = playing.uses(noisyUntil(1, playing));
        assertEquals(new BowUse.Unknown(BowUse.Reason.UNCLEAR), uses.get(0));
        assertEquals(3, uses.stream().filter(BowUse.Measured.class::isInstance).count());
    }

    private static ArmTrack noisyUntil(double timeS, Playing playing) {
        List<ArmSample> samples = new ArrayList<>();
        for (ArmSample sample : playing.track().samples()) {
            ArmSample.ByBody s = (ArmSample.ByBody) sample;
            samples.add(s.timeS() < timeS ? new ArmSample.ByBody(s.timeS(), s.velocity(), 1, s.sign(), s.reach()) : s);
        }
        return new ArmTrack(Tracks.PLAYER, 0, playing.endS(), samples);
    }
}
