package tuttarco.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Unity.Agreement;
import tuttarco.compare.Unity.Desks;
import tuttarco.compare.Unity.Kind;
import tuttarco.compare.Unity.NotTold;
import tuttarco.compare.Unity.Reason;
import tuttarco.compare.Unity.Told;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;

/**
 * Tells unified bowing from free by a permutation test. How often two players go the same way is counted over all pairs and
 * beats. Were everybody bowing at will, it would be the same with each player's bows shifted in time, round the passage, by any
 * number of beats: such shifts keep how long each one's strokes are and undo only what they have in common. For the desks, partners
 * are shifted alone, and whole desks against each other.
 *
 * <p>A section is unified if chance would hardly agree as much and the agreement, chance taken off, is at least half of what it
 * could be. It is free if chance agrees as much and that half is out of reach.
 *
 * <p>Bows that repeat with every beat or bar also agree with themselves when shifted; then chance may agree as much as a
 * section that is unified, and nothing is claimed.
 */
public final class UnityByShifts {
    /** Agreement as by chance in fewer takes than this is no chance (the usual one in a hundred). */
    private static final double LEVEL = 0.01;

    /**
     * Index from which bowing is one (chosen: that of a section in which one bow in seven goes against the rest, readings
     * wrong included).
     */
    private static final double UNIFIED_INDEX = 0.5;

    private static final int LEAST_PLAYERS = 3;

    /** Fewer beats hold no more than a few strokes of anybody's (chosen: four bars of four). */
    private static final int LEAST_BEATS = 16;

    /** With this one that makes 1000, so that a share of one in a hundred is ten of them. */
    private static final int SHIFTS = 999;

    private static final long SEED = 1;

    /** Of the standard normal distribution, for 95 %. */
    private static final double Z = 1.96;

    /** A bow of a beat: so written that adding up players counts their downs and their ups at once. */
    private static final int DOWN = 1;

    private static final int UP = 1 << 16;

    private final int[][] bows;
    private final int beats;
    private final List<Player> players;
    private final List<int[]> partners;
    private final int[] deskOf;

    private UnityByShifts(List<Player> players, int[][] bows, int beats) {
        this.players = players;
        this.bows = bows;
        this.beats = beats;
        this.partners = new ArrayList<>();
        for (int i = 0; i < players.size(); i++) {
            for (int k = i + 1; k < players.size(); k++) {
                if (players.get(i).desk() == players.get(k).desk()) {
                    partners.add(new int[] {i, k});
                }
            }
        }
        List<Integer> desks = players.stream().map(Player::desk).distinct().toList();
        this.deskOf = players.stream().mapToInt(p -> desks.indexOf(p.desk())).toArray();
    }

    /** Tells how a section bowed. */
    public static Unity of(Comparison comparison) {
        List<List<Optional<BowDirection>>> played = comparison.beatReadings().stream()
                .map(of -> of.stream().map(r -> r.played().direction()).toList())
                .toList();
        return of(comparison.players(), played);
    }

    /** @param played a list a player, each with one entry a beat, empty where no direction is claimed */
    static Unity of(List<Player> players, List<List<Optional<BowDirection>>> played) {
        int[] read = IntStream.range(0, players.size())
                .filter(i -> played.get(i).stream().filter(Optional::isPresent).count() >= LEAST_BEATS)
                .toArray();
        if (read.length < LEAST_PLAYERS) {
            boolean enough = players.size() >= LEAST_PLAYERS && played.get(0).size() < LEAST_BEATS;
            return new NotTold(enough ? Reason.BEATS : Reason.PLAYERS);
        }
        int[] shared = IntStream.range(0, played.get(0).size())
                .filter(beat -> Arrays.stream(read)
                                .filter(i -> played.get(i).get(beat).isPresent())
                                .count()
                        >= 2)
                .toArray();
        if (shared.length < LEAST_BEATS) {
            return new NotTold(Reason.BEATS);
        }
        int[][] bows = new int[read.length][shared.length];
        for (int p = 0; p < read.length; p++) {
            for (int b = 0; b < shared.length; b++) {
                Optional<BowDirection> bow = played.get(read[p]).get(shared[b]);
                bows[p][b] = bow.isEmpty() ? 0 : bow.get() == BowDirection.DOWN ? DOWN : UP;
            }
        }
        return new UnityByShifts(Arrays.stream(read).mapToObj(players::get).toList(), bows, shared.length).told();
    }

    private Unity told() {
        Counts seen = counts(new int[players.size()]);
        Random random = new Random(SEED);
        double[] section = new double[SHIFTS];
        double[] partnersAlone = new double[SHIFTS];
        double[] desksApart = new double[SHIFTS];
        int deskCount = Arrays.stream(deskOf).max().orElseThrow() + 1;
        for (int i = 0; i < SHIFTS; i++) {
            Counts alone = counts(random.ints(players.size(), 0, beats).toArray());
            section[i] = alone.section();
            partnersAlone[i] = alone.partners();
            int[] byDesk = random.ints(deskCount, 0, beats).toArray();
            desksApart[i] =
                    counts(Arrays.stream(deskOf).map(d -> byDesk[d]).toArray()).apart();
        }
        Agreement all = agreement(seen.section(), section);
        boolean desks = !partners.isEmpty() && deskCount > 1;
        Optional<Desks> byDesk = desks
                ? Optional.of(new Desks(agreement(seen.partners(), partnersAlone), agreement(seen.apart(), desksApart)))
                : Optional.empty();
        return new Told(kind(all, byDesk), all, byDesk, players.size(), beats);
    }

    private static Kind kind(Agreement all, Optional<Desks> desks) {
        if (desks.isPresent()
                && unified(desks.get().partners())
                && free(desks.get().apart())) {
            return Kind.BY_DESK;
        }
        if (unified(all)) {
            return Kind.UNIFIED;
        }
        if (all.pValue() < LEVEL) {
            return Kind.BETWEEN;
        }
        return free(all) ? Kind.FREE : Kind.UNCERTAIN;
    }

    private static boolean unified(Agreement agreement) {
        return agreement.pValue() < LEVEL && agreement.index() >= UNIFIED_INDEX;
    }

    private static boolean free(Agreement agreement) {
        return agreement.pValue() >= LEVEL && agreement.interval().high() < UNIFIED_INDEX;
    }

    private static Agreement agreement(double seen, double[] shifted) {
        double byChance = Arrays.stream(shifted).average().orElseThrow();
        long asMuch = Arrays.stream(shifted).filter(s -> s >= seen).count();
        double room = Math.max(1 - byChance, Double.MIN_NORMAL);
        double index = (seen - byChance) / room;
        double aside = Z * new StandardDeviation().evaluate(shifted) / room;
        return new Agreement(
                seen,
                byChance,
                index,
                new Interval(index - aside, Math.min(1, index + aside)),
                (asMuch + 1.0) / (shifted.length + 1));
    }

    /** Pairs of players on a beat: how many there are, and how many went the same way. */
    private record Counts(long pairs, long same, long partnerPairs, long partnersSame) {
        double section() {
            return share(same, pairs);
        }

        double partners() {
            return share(partnersSame, partnerPairs);
        }

        double apart() {
            return share(same - partnersSame, pairs - partnerPairs);
        }

        private static double share(long same, long pairs) {
            return pairs == 0 ? 0 : (double) same / pairs;
        }
    }

    /** Counts with each player's bows begun a number of beats later in the passage, the last beat followed by the first. */
    private Counts counts(int[] shifts) {
        int[][] shifted = new int[bows.length][];
        int[] sums = new int[beats];
        for (int p = 0; p < bows.length; p++) {
            shifted[p] = shifted(bows[p], shifts[p]);
            for (int b = 0; b < beats; b++) {
                sums[b] += shifted[p][b];
            }
        }
        long pairs = 0;
        long same = 0;
        for (int sum : sums) {
            long down = sum % UP;
            long up = sum / UP;
            pairs += pairs(down + up);
            same += pairs(down) + pairs(up);
        }
        long partnerPairs = 0;
        long partnersSame = 0;
        for (int[] pair : partners) {
            int[] one = shifted[pair[0]];
            int[] other = shifted[pair[1]];
            for (int b = 0; b < beats; b++) {
                partnerPairs += one[b] != 0 && other[b] != 0 ? 1 : 0;
                partnersSame += one[b] != 0 && one[b] == other[b] ? 1 : 0;
            }
        }
        return new Counts(pairs, same, partnerPairs, partnersSame);
    }

    private static int[] shifted(int[] bows, int by) {
        int[] shifted = new int[bows.length];
        System.arraycopy(bows, by, shifted, 0, bows.length - by);
        System.arraycopy(bows, 0, shifted, bows.length - by, by);
        return shifted;
    }

    private static long pairs(long players) {
        return players * (players - 1) / 2;
    }
}
