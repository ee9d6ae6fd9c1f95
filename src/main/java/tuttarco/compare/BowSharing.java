package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import tuttarco.compare.SharedBow.Amount;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.Ends;
import tuttarco.compare.SharedBow.EndsKnown;
import tuttarco.compare.SharedBow.Opposite;
import tuttarco.compare.SharedBow.TooFewLengths;
import tuttarco.compare.SharedBow.TooFewPlaces;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;
import tuttarco.stats.MedianInterval;
import tuttarco.stats.ProportionInterval;
import tuttarco.stats.Quantiles;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowPart;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Stroke;

/**
 * Who takes how much bow beside the leader, and who is at the other end of it: in strokes both played at the same time in
 * the same direction.
 *
 * <p>Of two players who take the same bow one may show half as much of it in the picture, as the bow points. So a length
 * counts as a share of the longest of these strokes, the player's and the leader's each of its own. That takes the angle, the
 * size in the picture and the length of the bow out; whoever takes half as much in all strokes, the longest too, is not
 * found.
 *
 * @param players in section order, without the leader; empty where nobody leads
 */
public record BowSharing(List<SharedBow> players) {
    /** Of fewer strokes no median can be told from another with 95 %, and no share either. */
    public static final int LEAST_STROKES = 6;

    /** Strokes are played together if they share this much of the time from the first start to the last end (chosen). */
    private static final double TOGETHER = 0.5;

    /**
     * About half or less is what lies nearer to half than to as much, by ratio: the root of one half. On rendered scenes the
     * ratios of those who took as much lay above it.
     */
    private static final double NEARER_HALF = Math.sqrt(0.5);

    /** Not more than one region in ten is wrong, on the rendered scenes: so often somebody may seem to be elsewhere. */
    private static final double REGIONS_WRONG = 0.1;

    public BowSharing {
        players = List.copyOf(players);
    }

    /** Whether anybody's bow could be compared with the leader's. */
    public boolean measured() {
        return players.stream().anyMatch(p -> p.amount() instanceof Amounts);
    }

    static BowSharing of(List<Bows> section, CompareSettings settings) {
        return new BowSharing(section.stream()
                .filter(b -> b.player().leader())
                .findFirst()
                .map(leader -> beside(leader, section, settings))
                .orElse(List.of()));
    }

    private static List<SharedBow> beside(Bows leader, List<Bows> section, CompareSettings settings) {
        NavigableMap<Double, Bow> leading = new TreeMap<>();
        leader.bows().stream()
                .filter(b -> b.stroke().kind().direction().isPresent())
                .forEach(b -> leading.put(b.stroke().startS(), b));
        return section.stream()
                .filter(b -> b != leader)
                .sorted((a, b) -> SectionOrder.COMPARATOR.compare(a.player(), b.player()))
                .map(b -> of(b, leading, settings))
                .toList();
    }

    /** A stroke of the player's and the leader's. */
    private record Both(Bow player, Bow leader) {}

    /** The same with both lengths, shoulder widths in the picture. */
    private record Lengths(double player, double leader) {}

    private static SharedBow of(Bows player, NavigableMap<Double, Bow> leading, CompareSettings settings) {
        List<Both> both = player.bows().stream()
                .flatMap(b -> together(b.stroke(), leading).map(l -> new Both(b, l)).stream())
                .toList();
        return new SharedBow(player.player(), amount(both, settings.level()), ends(both, settings.level()));
    }

    /** The leader's stroke that was played together with another; there can only be one. */
    private static Optional<Bow> together(Stroke stroke, NavigableMap<Double, Bow> leading) {
        double firstS = Optional.ofNullable(leading.floorKey(stroke.startS())).orElse(stroke.startS());
        return leading.subMap(firstS, true, stroke.endS(), false).values().stream()
                .filter(l -> l.stroke().kind() == stroke.kind())
                .filter(l -> sharedS(l.stroke(), stroke) > TOGETHER * wholeS(l.stroke(), stroke))
                .findFirst();
    }

    private static double sharedS(Stroke a, Stroke b) {
        return Math.min(a.endS(), b.endS()) - Math.max(a.startS(), b.startS());
    }

    private static double wholeS(Stroke a, Stroke b) {
        return Math.max(a.endS(), b.endS()) - Math.min(a.startS(), b.startS());
    }

    private static Amount amount(List<Both> both, double level) {
        List<Lengths> lengths = both.stream().flatMap(b -> lengths(b).stream()).toList();
        if (lengths.size() < LEAST_STROKES) {
            return new TooFewLengths(lengths.size());
        }
        double longest = lengths.stream().mapToDouble(Lengths::player).max().orElseThrow();
        double leaders = lengths.stream().mapToDouble(Lengths::leader).max().orElseThrow();
        List<Double> ratios = lengths.stream()
                .map(l -> l.player() / longest / (l.leader() / leaders))
                .toList();
        Interval interval = MedianInterval.of(ratios, level);
        return new Amounts(ratios.size(), Quantiles.median(ratios), interval, interval.high() < NEARER_HALF);
    }

    private static Optional<Lengths> lengths(Both both) {
        return both.player().use() instanceof BowUse.Measured player
                        && both.leader().use() instanceof BowUse.Measured leader
                ? Optional.of(new Lengths(player.lengthShoulderWidths(), leader.lengthShoulderWidths()))
                : Optional.empty();
    }

    private static Ends ends(List<Both> both, double level) {
        List<Opposite> opposite = new ArrayList<>();
        int strokes = 0;
        for (Both b : both) {
            if (b.player().use() instanceof BowUse.Placed player
                    && b.leader().use() instanceof BowUse.Placed leader
                    && leader.part() != BowPart.MIDDLE) {
                strokes++;
                if (player.part() != BowPart.MIDDLE && player.part() != leader.part()) {
                    opposite.add(new Opposite(b.player().stroke().startS(), player.part()));
                }
            }
        }
        if (strokes < LEAST_STROKES) {
            return new TooFewPlaces(strokes);
        }
        Interval interval = ProportionInterval.wilson(opposite.size(), strokes, level);
        return new EndsKnown(strokes, opposite, interval, interval.low() > REGIONS_WRONG);
    }

    /** The players' figures as the files tell them. */
    List<Measure> measures() {
        return players.stream()
                .flatMap(p -> Stream.of(measure(p.player(), p.amount()), measure(p.player(), p.ends())))
                .toList();
    }

    private static Measure measure(Player player, Amount amount) {
        Optional<Amounts> known = amount instanceof Amounts a ? Optional.of(a) : Optional.empty();
        return new Measure(
                Metric.BOW_AMOUNT,
                new Scope.OfPlayer(player),
                amount.strokes(),
                known.map(Amounts::ratio),
                known.map(Amounts::interval));
    }

    private static Measure measure(Player player, Ends ends) {
        Optional<EndsKnown> known = ends instanceof EndsKnown e ? Optional.of(e) : Optional.empty();
        return new Measure(
                Metric.OTHER_END,
                new Scope.OfPlayer(player),
                ends.strokes(),
                known.map(EndsKnown::share),
                known.map(EndsKnown::interval));
    }
}
