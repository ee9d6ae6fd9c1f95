package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;
import tuttarco.stats.Agreement;
import tuttarco.stats.PhaseOrder;
import tuttarco.stats.ProportionInterval;
import tuttarco.stats.Quantiles;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;

/** Takes a section's measure: whole, bar by bar, by desk and by group. */
final class Measuring {
    /** Of fewer players there is no majority, and no order of phases. */
    private static final int LEAST_PLAYERS = 3;
    /** In shorter strokes the errors of change times are too large a part of the way (chosen). */
    private static final double LONG_STROKE_S = 0.5;

    private static final int LOOKS_A_BEAT = 4;
    private static final double MS_PER_S = 1000;

    private final Comparison comparison;
    private final List<Reading> readings;
    private final CompareSettings settings;
    private final Changes changes;
    private final boolean led;
    private final List<Optional<BowDirection>> majority;

    Measuring(Comparison comparison, List<Reading> readings, CompareSettings settings) {
        this.comparison = comparison;
        this.readings = readings;
        this.settings = settings;
        this.changes = Changes.of(comparison, readings, settings);
        this.led = comparison.players().stream().anyMatch(Player::leader);
        this.majority = IntStream.range(0, beats()).mapToObj(this::majority).toList();
    }

    private int beats() {
        return comparison.beats().beats().size();
    }

    List<Measure> ofSection() {
        List<Measure> measures = new ArrayList<>();
        List<List<BeatReading>> all = comparison.beatReadings();
        measures.addAll(directions(new Scope.Whole(), all, 0, beats() - 1));
        measures.add(kappa());
        measures.addAll(times(new Scope.Whole(), 0, beats() - 1));
        for (Scope.InBar bar : bars()) {
            measures.addAll(directions(bar, all, bar.firstIndex(), bar.lastIndex()));
            measures.addAll(times(bar, bar.firstIndex(), bar.lastIndex()));
        }
        for (Scope group : Scope.groups(comparison.players())) {
            measures.addAll(directions(group, readings(group), 0, beats() - 1));
        }
        return measures;
    }

    private List<Scope.InBar> bars() {
        BeatMap map = comparison.beats();
        return !map.inBars()
                ? List.of()
                : map.bars().stream()
                        .map(b -> new Scope.InBar(
                                b.number(),
                                b.firstIndex(),
                                b.lastIndex(),
                                map.beats().get(b.firstIndex()).timeS()))
                        .toList();
    }

    /** Which way the bows went between two beats, inclusive. */
    private List<Measure> directions(Scope scope, List<List<BeatReading>> players, int first, int last) {
        List<Measure> measures = new ArrayList<>();
        if (comparison.marked()) {
            measures.add(share(Metric.WITH_MARKING, scope, verdicts(players, first, last, BeatReading::verdict)));
        }
        if (led) {
            measures.add(share(Metric.WITH_LEADER, scope, verdicts(players, first, last, BeatReading::leaderVerdict)));
        }
        measures.add(share(Metric.WITH_MAJORITY, scope, verdicts(players, first, last, this::majorityVerdict)));
        List<List<BowDirection>> chosen = chosen(players, first, last);
        int count = (int) chosen.stream().filter(c -> c.size() > 1).count();
        measures.add(new Measure(Metric.ALPHA, scope, count, Agreement.alpha(chosen), Optional.empty()));
        return measures;
    }

    private Stream<Verdict> verdicts(
            List<List<BeatReading>> players, int first, int last, Function<BeatReading, Verdict> verdict) {
        return players.stream()
                .flatMap(p -> p.subList(first, last + 1).stream())
                .map(verdict);
    }

    private List<List<BeatReading>> readings(Scope group) {
        return IntStream.range(0, comparison.players().size())
                .filter(i -> group.holds(comparison.players().get(i)))
                .mapToObj(comparison.beatReadings()::get)
                .toList();
    }

    private Measure share(Metric metric, Scope scope, Stream<Verdict> verdicts) {
        List<Verdict> judged =
                verdicts.filter(v -> v == Verdict.WITH || v == Verdict.AGAINST).toList();
        int with = (int) judged.stream().filter(v -> v == Verdict.WITH).count();
        int count = judged.size();
        return count == 0
                ? new Measure(metric, scope, 0, Optional.empty(), Optional.empty())
                : new Measure(
                        metric,
                        scope,
                        count,
                        Optional.of((double) with / count),
                        Optional.of(ProportionInterval.wilson(with, count, settings.level())));
    }

    /** Down or up where that is what was read; nothing where the part rests. */
    private Optional<BowDirection> direction(BeatReading reading) {
        boolean rests = comparison.marked() && reading.verdict() == Verdict.REST;
        return rests ? Optional.empty() : reading.played().direction();
    }

    private List<List<BowDirection>> chosen(List<List<BeatReading>> players, int first, int last) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(b -> players.stream()
                        .flatMap(p -> direction(p.get(b)).stream())
                        .toList())
                .toList();
    }

    private Optional<BowDirection> majority(int beat) {
        List<BowDirection> chosen =
                chosen(comparison.beatReadings(), beat, beat).get(0);
        long down = chosen.stream().filter(d -> d == BowDirection.DOWN).count();
        long up = chosen.size() - down;
        return chosen.size() < LEAST_PLAYERS || down == up
                ? Optional.empty()
                : Optional.of(down > up ? BowDirection.DOWN : BowDirection.UP);
    }

    private Verdict majorityVerdict(BeatReading reading) {
        Optional<BowDirection> most = majority.get(reading.beatIndex());
        Optional<BowDirection> own = direction(reading);
        return most.isEmpty() || own.isEmpty() ? Verdict.REST : own.equals(most) ? Verdict.WITH : Verdict.AGAINST;
    }

    private Measure kappa() {
        int players = comparison.players().size();
        List<List<BowDirection>> chosen = chosen(comparison.beatReadings(), 0, beats() - 1);
        int whole = (int) chosen.stream().filter(c -> c.size() == players).count();
        return new Measure(
                Metric.KAPPA,
                new Scope.Whole(),
                whole,
                players < 2 ? Optional.empty() : Agreement.kappa(chosen, players),
                Optional.empty());
    }

    /** When the bows changed between the beginning of one beat and the end of another. */
    private List<Measure> times(Scope scope, int first, int last) {
        List<Double> spreadsMs = spreadable(first, last)
                .map(c -> Quantiles.middleHalf(List.copyOf(c.lagsMs().values())))
                .toList();
        List<Double> orders =
                IntStream.rangeClosed(first, last).boxed().flatMap(this::orders).toList();
        return List.of(
                summary(Metric.CHANGE_SPREAD, scope, spreadsMs, Quantiles::median),
                summary(Metric.PHASE_ORDER, scope, orders, Measuring::mean));
    }

    /** The changes between the beginning of one beat and the end of another of which enough players were seen. */
    private Stream<Changes.Together> spreadable(int first, int last) {
        double startS = comparison.beats().beats().get(first).timeS();
        double endS = comparison.beats().endS(last);
        return changes.changes().stream()
                .filter(c -> startS <= c.timeS() && c.timeS() < endS)
                .filter(c -> c.lagsMs().size() >= Quantiles.LEAST_MIDDLE_HALF);
    }

    /** The bars with the widest spread of changes, one by one; {@code measures} are the section's. */
    ChangeScatter widest(List<Measure> measures) {
        List<ChangeScatter.InBar> widest = measures.stream()
                .filter(m -> m.metric() == Metric.CHANGE_SPREAD)
                .flatMap(m -> m.value().flatMap(v -> scattered(m.scope(), v)).stream())
                .sorted(Comparator.comparingDouble(ChangeScatter.InBar::spreadMs)
                        .reversed())
                .limit(ChangeScatter.MOST_BARS)
                .sorted(Comparator.comparingInt(b -> b.bar().firstIndex()))
                .toList();
        return new ChangeScatter(led, MS_PER_S * settings.toleranceS(), comparison.players(), widest);
    }

    private Optional<ChangeScatter.InBar> scattered(Scope scope, double spreadMs) {
        return scope instanceof Scope.InBar bar
                ? Optional.of(new ChangeScatter.InBar(
                        bar,
                        spreadMs,
                        spreadable(bar.firstIndex(), bar.lastIndex())
                                .map(this::scattered)
                                .toList()))
                : Optional.empty();
    }

    /** A change with lags to the leader, or without one to the median. */
    private ChangeScatter.Change scattered(Changes.Together change) {
        double fromMs = led ? 0 : Quantiles.median(List.copyOf(change.lagsMs().values()));
        Map<Player, Double> lagsMs = new HashMap<>(change.lagsMs());
        lagsMs.replaceAll((player, lagMs) -> lagMs - fromMs);
        return new ChangeScatter.Change(change.to(), change.timeS() + fromMs / MS_PER_S, lagsMs);
    }

    private static Measure summary(
            Metric metric, Scope scope, List<Double> values, Function<List<Double>, Double> figure) {
        Optional<Double> value = values.isEmpty() ? Optional.empty() : Optional.of(figure.apply(values));
        return new Measure(metric, scope, values.size(), value, Optional.empty());
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private Stream<Double> orders(int beat) {
        double startS = comparison.beats().beats().get(beat).timeS();
        double lengthS = comparison.beats().endS(beat) - startS;
        return IntStream.range(0, LOOKS_A_BEAT)
                .mapToObj(i -> phases(startS + lengthS * (i + 0.5) / LOOKS_A_BEAT))
                .filter(phases -> phases.size() >= LEAST_PLAYERS)
                .map(PhaseOrder::of);
    }

    private List<Double> phases(double timeS) {
        return readings.stream()
                .flatMap(r -> phase(r.strokes(), timeS).stream())
                .toList();
    }

    /** Where in its way to and fro a bow is, radians: a down-bow goes from 0 to pi, an up-bow on to two pi. */
    private static Optional<Double> phase(List<Stroke> strokes, double timeS) {
        List<Stroke> around = Spans.between(strokes, timeS, Math.nextUp(timeS));
        if (around.isEmpty() || around.get(0).lengthS() < LONG_STROKE_S) {
            return Optional.empty();
        }
        Stroke stroke = around.get(0);
        return stroke.kind()
                .direction()
                .map(d -> Math.PI * ((timeS - stroke.startS()) / stroke.lengthS() + (d == BowDirection.DOWN ? 0 : 1)));
    }
}
