package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Unity.Kind;
import tuttarco.compare.Unity.NotTold;
import tuttarco.compare.Unity.Reason;
import tuttarco.compare.Unity.Told;
import tuttarco.seats.Place;
import tuttarco.seats.Player;

class UnityTest {
    private static final int BARS_32 = 128;

    private static List<Player> section(int players) {
        return IntStream.range(0, players)
                .mapToObj(i -> Bows.player("p" + i, 1 + i / 2, i % 2 == 0 ? Place.OUTSIDE : Place.INSIDE, i == 0))
                .toList();
    }

    /** Strokes of one to four beats, alternating, from either direction. */
    private static List<BowDirection> atWill(int beats, Random random) {
        List<BowDirection> bows = new ArrayList<>();
        BowDirection direction = random.nextBoolean() ? BowDirection.DOWN : BowDirection.UP;
        while (bows.size() < beats) {
            bows.addAll(Collections.nCopies(1 + random.nextInt(4), direction));
            direction = direction.opposite();
        }
        return bows.subList(0, beats);
    }

    /**
     * Bows as they are read: three in four players with 2 % of their beats wrong and a tenth unclaimed, the others with 15 % wrong
     * and three tenths unclaimed, in stretches of one to four beats. The table of the rendered scenes in the method page is
     * better than that but for a few scenes.
     */
    private static List<Optional<BowDirection>> read(List<BowDirection> bows, int player, Random random) {
        boolean badly = player % 4 == 3;
        List<Optional<BowDirection>> read =
                new ArrayList<>(bows.stream().map(Optional::of).toList());
        spoil(badly ? 0.15 : 0.02, read, random, Optional::of);
        spoil(badly ? 0.3 : 0.1, read, random, d -> Optional.empty());
        return read;
    }

    private interface Spoiling {
        Optional<BowDirection> of(BowDirection direction);
    }

    private static void spoil(double share, List<Optional<BowDirection>> read, Random random, Spoiling spoiling) {
        double meanLength = 2.5;
        for (int i = 0; i < read.size(); i++) {
            if (random.nextDouble() < share / meanLength) {
                int end = Math.min(read.size(), i + 1 + random.nextInt(4));
                for (; i < end; i++) {
                    read.set(i, read.get(i).map(BowDirection::opposite).flatMap(spoiling::of));
                }
            }
        }
    }

    private static List<List<Optional<BowDirection>>> free(int players, int beats, Random random) {
        return IntStream.range(0, players)
                .mapToObj(p -> read(atWill(beats, random), p, random))
                .toList();
    }

    private static List<List<Optional<BowDirection>>> unified(int players, int beats, Random random) {
        List<BowDirection> bowing = atWill(beats, random);
        return IntStream.range(0, players)
                .mapToObj(p -> read(bowing, p, random))
                .toList();
    }

    private static List<List<Optional<BowDirection>>> byDesk(int players, int beats, Random random) {
        List<List<BowDirection>> desks = IntStream.range(0, (players + 1) / 2)
                .mapToObj(d -> atWill(beats, random))
                .toList();
        return IntStream.range(0, players)
                .mapToObj(p -> read(desks.get(p / 2), p, random))
                .toList();
    }

    private interface Section {
        List<List<Optional<BowDirection>>> play(int players, int beats, Random random);
    }

    private static Map<Kind, Integer> told(Section section, int players, int passages, long seed) {
        Random random = new Random(seed);
        Map<Kind, Integer> told = new EnumMap<>(Kind.class);
        for (int i = 0; i < passages; i++) {
            if (UnityByShifts.of(section(players), section.play(players, BARS_32, random)) instanceof Told t) {
                told.merge(t.kind(), 1, Integer::sum);
            }
        }
        return told;
    }

    /** Free called unified, or unified free, in at most one of a hundred passages; and it is not silence that keeps it so. */
    @ParameterizedTest
    @ValueSource(ints = {4, 8, 12})
    void tellsFreeFromUnified(int players) {
        int passages = 100;
        Map<Kind, Integer> free = told(UnityTest::free, players, passages, 11);
        Map<Kind, Integer> unified = told(UnityTest::unified, players, passages, 12);
        assertTrue(free.getOrDefault(Kind.UNIFIED, 0) <= 1, () -> "free passages were called " + free);
        assertTrue(unified.getOrDefault(Kind.FREE, 0) <= 1, () -> "unified passages were called " + unified);
        assertTrue(free.getOrDefault(Kind.FREE, 0) >= 90, () -> "free passages were called " + free);
        assertTrue(unified.getOrDefault(Kind.UNIFIED, 0) >= 90, () -> "unified passages were called " + unified);
    }

    @Test
    void tellsDesksThatGoTheirOwnWays() {
        Map<Kind, Integer> told = told(UnityTest::byDesk, 8, 100, 13);
        assertTrue(told.getOrDefault(Kind.BY_DESK, 0) >= 90, () -> "passages by desk were called " + told);
    }

    @Test
    void isInBetweenWhereHalfTheSectionBowsAtWill() {
        Random random = new Random(14);
        List<List<Optional<BowDirection>>> half = new ArrayList<>(unified(4, BARS_32, random));
        half.addAll(free(4, BARS_32, random));
        assertEquals(Kind.BETWEEN, ((Told) UnityByShifts.of(section(8), half)).kind());
    }

    /** Agreement counted by hand: of three pairs on each beat one agrees, but for the beats on which all do. */
    @Test
    void countsPairs() {
        BowDirection down = BowDirection.DOWN;
        List<Optional<BowDirection>> one = Collections.nCopies(16, Optional.of(down));
        List<Optional<BowDirection>> other = new ArrayList<>(Collections.nCopies(12, Optional.of(down.opposite())));
        other.addAll(Collections.nCopies(4, Optional.of(down)));
        Unity unity = UnityByShifts.of(section(6), List.of(one, one, other, other, one, other));
        // three against three: 6 of 15 pairs on 12 beats, 15 of 15 on 4
        assertEquals((12 * 6 + 4 * 15) / (16.0 * 15), ((Told) unity).section().agreement(), 1e-12);
    }

    /** Two who alternate with each beat agree with themselves at every second shift. */
    @Test
    void claimsNothingWhereShiftsCantTell() {
        List<Optional<BowDirection>> alternating = IntStream.range(0, 64)
                .mapToObj(i -> Optional.of(i % 2 == 0 ? BowDirection.DOWN : BowDirection.UP))
                .toList();
        Unity unity = UnityByShifts.of(section(3), Collections.nCopies(3, alternating));
        assertEquals(Kind.UNCERTAIN, ((Told) unity).kind());
    }

    @Test
    void saysWhatIsTooLittle() {
        Random random = new Random(15);
        assertEquals(new NotTold(Reason.PLAYERS), UnityByShifts.of(section(2), unified(2, BARS_32, random)));
        assertEquals(new NotTold(Reason.BEATS), UnityByShifts.of(section(8), unified(8, 15, random)));
        assertEquals(
                new NotTold(Reason.PLAYERS),
                UnityByShifts.of(section(3), Collections.nCopies(3, Collections.nCopies(64, Optional.empty()))));
    }

    @Test
    void isTheSameEveryTime() {
        List<List<Optional<BowDirection>>> played = free(6, BARS_32, new Random(16));
        assertEquals(UnityByShifts.of(section(6), played), UnityByShifts.of(section(6), played));
    }
}
