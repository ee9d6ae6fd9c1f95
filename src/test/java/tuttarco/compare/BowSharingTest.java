package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.EndsKnown;
import tuttarco.compare.SharedBow.Opposite;
import tuttarco.compare.SharedBow.TooFewLengths;
import tuttarco.compare.SharedBow.TooFewPlaces;
import tuttarco.seats.Player;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowPart;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Strokes of a second, down and up in turn, of which the first is a whole bow and the others are shorter. */
class BowSharingTest {
    private static final double LENGTH = 0.4;
    private static final double WHOLE = 1.2;

    private static final BowUse UNKNOWN = new BowUse.Unknown(BowUse.Reason.UNCLEAR);

    private static tuttarco.strokes.Bows bows(Player player, double lateS, int strokes, IntFunction<BowUse> use) {
        List<Bow> bows = new ArrayList<>();
        for (int i = 0; i < strokes; i++) {
            StrokeKind kind = i % 2 == 0 ? StrokeKind.DOWN : StrokeKind.UP;
            Edge edge = new Edge.Change(0.02);
            bows.add(new Bow(new Stroke(i + lateS, i + 1 + lateS, kind, 0.95), edge, edge, use.apply(i)));
        }
        return new tuttarco.strokes.Bows(player, bows);
    }

    private static double length(int stroke) {
        return stroke == 0 ? WHOLE : LENGTH;
    }

    /** Of a length, at half the size in the picture if {@code far}. */
    private static BowUse of(double length, boolean far) {
        return new BowUse.Length(far ? length / 2 : length, length / WHOLE);
    }

    private static BowUse at(BowPart part) {
        return new BowUse.Placed(LENGTH, LENGTH / WHOLE, part, 0.95);
    }

    private static tuttarco.strokes.Bows leader(int strokes) {
        return bows(Bows.leader(), 0, strokes, i -> of(length(i), false));
    }

    private static SharedBow beside(tuttarco.strokes.Bows leader, tuttarco.strokes.Bows player) {
        BowSharing sharing = BowSharing.of(List.of(player, leader), CompareSettings.DEFAULT);
        assertEquals(1, sharing.players().size());
        assertEquals(player.player(), sharing.players().get(0).player());
        return sharing.players().get(0);
    }

    private static SharedBow beside(int strokes, IntFunction<BowUse> use) {
        return beside(leader(strokes), bows(Bows.player("other"), 0.1, strokes, use));
    }

    private static SharedBow placed(List<BowPart> leaders, List<BowPart> players) {
        int strokes = leaders.size();
        return beside(
                bows(Bows.leader(), 0, strokes, i -> at(leaders.get(i))),
                bows(Bows.player("other"), 0.1, strokes, i -> at(players.get(i))));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void halfTheBowIsFoundHoweverSmallThePlayerIsInThePicture(boolean far) {
        SharedBow half = beside(9, i -> of(i == 0 ? WHOLE : LENGTH / 2, far));
        Amounts amounts = assertInstanceOf(Amounts.class, half.amount());
        assertEquals(9, amounts.strokes());
        assertEquals(0.5, amounts.ratio(), 1e-9);
        assertEquals(0.5, amounts.interval().low(), 1e-9);
        assertTrue(amounts.half());
        Amounts same = assertInstanceOf(
                Amounts.class, beside(9, i -> of(length(i), far)).amount());
        assertEquals(1, same.ratio(), 1e-9);
        assertFalse(same.half());
    }

    /** The middle between half and as much, by ratio, is 0.707. */
    @Test
    void whatLiesNearerToAsMuchIsNotCalledHalf() {
        assertTrue(half(beside(9, i -> of(i == 0 ? WHOLE : 0.70 * LENGTH, false))));
        assertFalse(half(beside(9, i -> of(i == 0 ? WHOLE : 0.72 * LENGTH, false))));
        assertFalse(half(beside(9, i -> of(i < 5 ? length(i) : LENGTH / 2, false))), "half in four strokes of nine");
    }

    private static boolean half(SharedBow player) {
        return player.amount() instanceof Amounts amounts && amounts.half();
    }

    /** Lengths as a player's are read: a share right to 0.15 in 84 of 100 strokes (method page), so about 0.1 off. */
    @Test
    void whoTakesAsMuchIsNotCalledHalfThoughLengthsAreReadWithErrors() {
        Random random = new Random(8);
        int wronged = 0;
        int found = 0;
        for (int run = 0; run < 500; run++) {
            IntFunction<BowUse> read = i -> of(Math.max(0.01, length(i) + 0.1 * WHOLE * random.nextGaussian()), false);
            IntFunction<BowUse> halved =
                    i -> of(Math.max(0.01, (i == 0 ? WHOLE : LENGTH / 2) + 0.05 * random.nextGaussian()), false);
            wronged += half(beside(30, read)) ? 1 : 0;
            found += half(beside(30, halved)) ? 1 : 0;
        }
        assertTrue(wronged <= 5, wronged + " of 500");
        assertTrue(found >= 490, found + " of 500");
    }

    @Test
    void theOtherEndOfTheBowIsFound() {
        List<BowPart> leaders = List.of(
                BowPart.FROG,
                BowPart.FROG,
                BowPart.TIP,
                BowPart.TIP,
                BowPart.FROG,
                BowPart.TIP,
                BowPart.MIDDLE,
                BowPart.FROG);
        List<BowPart> players = List.of(
                BowPart.TIP,
                BowPart.TIP,
                BowPart.TIP,
                BowPart.FROG,
                BowPart.MIDDLE,
                BowPart.TIP,
                BowPart.TIP,
                BowPart.FROG);
        EndsKnown ends =
                assertInstanceOf(EndsKnown.class, placed(leaders, players).ends());
        assertEquals(7, ends.strokes(), "the leader's in the middle does not count");
        assertEquals(
                List.of(
                        new Opposite(0.1, BowPart.TIP),
                        new Opposite(1.1, BowPart.TIP),
                        new Opposite(3.1, BowPart.FROG)),
                ends.opposite());
        assertEquals(3.0 / 7, ends.share(), 1e-9);
        // Wilson 1927 by hand for 3 of 7 at 95 %: (3 + 1.9207 -+ 1.96 sqrt(3 * 4 / 7 + 0.9604)) / (7 + 3.8415)
        assertEquals(0.158, ends.interval().low(), 5e-4);
        assertEquals(0.750, ends.interval().high(), 5e-4);
        assertTrue(ends.apart());
    }

    @Test
    void asOftenAsRegionsAreReadWrongNobodyIsCalledElsewhere() {
        List<BowPart> leaders =
                IntStream.range(0, 20).mapToObj(i -> BowPart.FROG).toList();
        List<BowPart> players = IntStream.range(0, 20)
                .mapToObj(i -> i < 2 ? BowPart.TIP : BowPart.FROG)
                .toList();
        EndsKnown ends =
                assertInstanceOf(EndsKnown.class, placed(leaders, players).ends());
        assertEquals(2, ends.opposite().size());
        assertFalse(ends.apart());
    }

    @Test
    void nothingIsClaimedFromTooLittle() {
        assertEquals(new TooFewLengths(5), beside(5, i -> of(LENGTH / 2, false)).amount());
        assertEquals(new TooFewLengths(0), beside(9, i -> UNKNOWN).amount());
        List<BowPart> frog = List.of(BowPart.FROG, BowPart.FROG, BowPart.FROG, BowPart.FROG, BowPart.FROG);
        List<BowPart> tip = List.of(BowPart.TIP, BowPart.TIP, BowPart.TIP, BowPart.TIP, BowPart.TIP);
        assertEquals(new TooFewPlaces(5), placed(frog, tip).ends());
        assertEquals(new TooFewPlaces(0), beside(9, i -> of(LENGTH, false)).ends());
        assertEquals(
                List.of(),
                BowSharing.of(List.of(bows(Bows.player("alone"), 0, 9, i -> UNKNOWN)), CompareSettings.DEFAULT)
                        .players(),
                "nobody leads");
    }

    /** A second stroke of half the time, or one the other way, is another thing to play. */
    @Test
    void onlyStrokesPlayedTogetherAreCompared() {
        tuttarco.strokes.Bows turned = bows(Bows.player("turned"), 1, 9, i -> of(LENGTH / 2, false));
        assertEquals(new TooFewLengths(0), beside(leader(9), turned).amount());
        tuttarco.strokes.Bows late = bows(Bows.player("late"), 0.4, 9, i -> of(LENGTH / 2, false));
        assertEquals(new TooFewLengths(0), beside(leader(9), late).amount(), "0.6 of 1.4 s is less than half");
        tuttarco.strokes.Bows less = bows(Bows.player("less late"), 0.3, 9, i -> of(LENGTH / 2, false));
        assertEquals(9, beside(leader(9), less).amount().strokes(), "0.7 of 1.3 s is more than half");
    }
}
