package tuttarco.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import tuttarco.compare.Comparison;
import tuttarco.compare.Metric;
import tuttarco.compare.Timing;
import tuttarco.compare.Verdict;
import tuttarco.season.Trend.Point;
import tuttarco.season.Trend.Subject;
import tuttarco.stats.MedianInterval;
import tuttarco.stats.ProportionInterval;
import tuttarco.stats.Quantiles;
import tuttarco.take.Bowing;

/**
 * How a season went. Takes stand in the order of their days, those of one day in that of the log; one of unknown day comes
 * after the take that was logged before it. Takes meant to be bowed freely, and takes without bars, are listed, but nothing is
 * told from them.
 *
 * <p>Music differs, so that only what was played of the same bars is set against each other: the section and its players on
 * the {@linkplain #ground() ground}, the passages each in its own takes.
 *
 * @param marked whether shares are with the marking; with the leader where no take is marked
 * @param ground bars and takes that can best be set against each other
 * @param passages stretches of bars played in the same takes
 * @param section its share; {@code players} theirs, by desk; {@code byPassage} the section's in each passage, where
 *     there is another one than the ground
 * @param lags of the players' changes
 * @param candidates bars in which the marking may be the trouble
 */
public record Season(
        List<TakeOnRecord> takes,
        boolean marked,
        Passage ground,
        List<Passage> passages,
        Trend section,
        List<Trend> players,
        List<Trend> byPassage,
        List<Trend> lags,
        List<SeasonCandidate> candidates) {
    private static final double LEVEL = 0.95;

    public Season {
        takes = List.copyOf(takes);
        passages = List.copyOf(passages);
        players = List.copyOf(players);
        byPassage = List.copyOf(byPassage);
        lags = List.copyOf(lags);
        candidates = List.copyOf(candidates);
    }

    /** The season of takes in the order of the log. */
    public static Season of(List<TakeOnRecord> logged) {
        List<TakeOnRecord> takes = inOrder(logged);
        boolean marked = takes.stream().anyMatch(TakeOnRecord::marked);
        return new Told(takes, marked).season();
    }

    /** Whether something can be told from a take: it has bars, and was not meant to be free. */
    public static boolean counts(TakeOnRecord take) {
        return take.bowing() == Bowing.UNIFIED
                && take.beats().stream().anyMatch(b -> !b.bar().isEmpty());
    }

    /** How many takes at least are needed to tell a trend of so many players, or of so many passages. */
    public static int leastTakes(int rows) {
        return Trends.leastTakes(Math.max(1, rows));
    }

    /** By their days. */
    static List<TakeOnRecord> inOrder(List<TakeOnRecord> logged) {
        record Dated(TakeOnRecord take, LocalDate day) {}
        List<Dated> dated = new ArrayList<>();
        LocalDate day = LocalDate.MIN;
        for (TakeOnRecord take : logged) {
            day = take.day().orElse(day);
            dated.add(new Dated(take, day));
        }
        return dated.stream()
                .sorted(Comparator.comparing(Dated::day))
                .map(Dated::take)
                .toList();
    }

    /** Tells what takes in their order say. */
    private static final class Told {
        private final List<TakeOnRecord> takes;
        private final boolean marked;
        private final List<TakeByBar> byBar;
        private final List<Set<String>> bars;
        private final boolean led;

        Told(List<TakeOnRecord> takes, boolean marked) {
            this.takes = takes;
            this.marked = marked;
            this.byBar = takes.stream().map(TakeByBar::new).toList();
            this.bars = takes.stream()
                    .map(t -> counts(t) ? TakeByBar.bars(t) : Set.<String>of())
                    .toList();
            this.led = takes.stream().anyMatch(Told::led);
        }

        private static boolean led(TakeOnRecord take) {
            return take.players().stream().anyMatch(PlayerOnRecord::leader);
        }

        Season season() {
            Passage ground = CommonBars.ground(bars);
            List<Passage> passages = CommonBars.passages(bars);
            List<Passage> apart = passages.equals(List.of(ground)) ? List.of() : passages;
            List<String> labels = labels();
            return new Season(
                    takes,
                    marked,
                    ground,
                    passages,
                    Trends.of(List.of(share(new Trend.Section(), ground, labels)))
                            .get(0),
                    Trends.of(labels.stream()
                            .map(l -> share(new Trend.OfPlayer(l), ground, List.of(l)))
                            .filter(Told::anything)
                            .toList()),
                    Trends.of(apart.stream()
                            .map(p -> share(new Trend.OfPassage(p.firstBar(), p.lastBar()), p, labels))
                            .filter(Told::anything)
                            .toList()),
                    Trends.of(labels.stream()
                            .map(l -> lag(l, ground))
                            .filter(Told::anything)
                            .toList()),
                    SeasonCandidates.in(takes));
        }

        /** By desk, where each sat when last seen. */
        private List<String> labels() {
            Map<String, PlayerOnRecord> last = new LinkedHashMap<>();
            takes.forEach(t -> t.players().forEach(p -> last.put(p.label(), p)));
            return last.values().stream()
                    .sorted(Comparator.comparingInt(PlayerOnRecord::desk).thenComparing(PlayerOnRecord::place))
                    .map(PlayerOnRecord::label)
                    .toList();
        }

        private static boolean anything(Trends.Row row) {
            return row.points().stream().anyMatch(Optional::isPresent);
        }

        private Trends.Row share(Subject subject, Passage of, Collection<String> labels) {
            return new Trends.Row(
                    subject,
                    marked ? Metric.WITH_MARKING : Metric.WITH_LEADER,
                    points(of, take -> share(take, of.bars(), labels)),
                    0);
        }

        private List<Optional<Point>> points(Passage of, Function<Integer, Optional<Point>> point) {
            return IntStream.range(0, takes.size())
                    .mapToObj(take -> of.takes().contains(take) ? point.apply(take) : Optional.<Point>empty())
                    .toList();
        }

        private Optional<Point> share(int take, List<String> bars, Collection<String> labels) {
            if (marked && !takes.get(take).marked()) {
                return Optional.empty();
            }
            Function<PlayerOnRecord, List<Verdict>> verdicts =
                    marked ? PlayerOnRecord::verdicts : PlayerOnRecord::leaderVerdicts;
            Tally tally = Tally.NONE;
            for (String label : labels) {
                if (byBar.get(take).player(label).isPresent()) {
                    for (String bar : bars) {
                        tally = tally.plus(byBar.get(take).tally(verdicts, label, bar));
                    }
                }
            }
            return tally.judged() < Comparison.LEAST_JUDGED_BEATS
                    ? Optional.empty()
                    : Optional.of(new Point(
                            tally.share(),
                            ProportionInterval.wilson(tally.with(), tally.judged(), LEVEL),
                            tally.judged()));
        }

        /** Lags to a leader are not set against lags to the others. */
        private Trends.Row lag(String label, Passage of) {
            Set<String> in = new HashSet<>(of.bars());
            List<Optional<Point>> points =
                    points(of, take -> led(takes.get(take)) == led ? lag(take, label, in) : Optional.empty());
            List<Double> smallestMs = takes.stream()
                    .flatMap(t -> t.players().stream())
                    .filter(p -> p.label().equals(label))
                    .map(PlayerOnRecord::smallestMs)
                    .filter(OptionalDouble::isPresent)
                    .map(OptionalDouble::getAsDouble)
                    .toList();
            return new Trends.Row(
                    new Trend.OfPlayer(label),
                    Metric.LAG,
                    points,
                    smallestMs.isEmpty() ? Double.POSITIVE_INFINITY : Quantiles.median(smallestMs));
        }

        private Optional<Point> lag(int take, String label, Set<String> bars) {
            List<BeatOnRecord> beats = takes.get(take).beats();
            List<Double> lagsMs = byBar.get(take).player(label).stream()
                    .flatMap(p -> p.lags().stream())
                    .filter(l -> bars.contains(beats.get(l.beat()).bar()))
                    .map(PlayerOnRecord.LagOnRecord::lagMs)
                    .toList();
            return lagsMs.size() < Timing.LEAST_CHANGES
                    ? Optional.empty()
                    : Optional.of(new Point(Quantiles.median(lagsMs), MedianInterval.of(lagsMs, LEVEL), lagsMs.size()));
        }
    }
}
