package tuttarco.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tuttarco.chart.ChartTable;
import tuttarco.chart.Words;
import tuttarco.compare.Comparison;
import tuttarco.compare.Contrast;
import tuttarco.compare.Measure;
import tuttarco.compare.Metric;
import tuttarco.compare.Scope;
import tuttarco.compare.Togetherness;
import tuttarco.seats.Place;
import tuttarco.stats.Interval;

/** How together a section was, in sentences and tables; titles and meanings are the metrics' own. */
final class TogetherWords {
    private static final List<Metric> OF_SECTION = List.of(
            Metric.WITH_MARKING,
            Metric.WITH_LEADER,
            Metric.WITH_MAJORITY,
            Metric.ALPHA,
            Metric.KAPPA,
            Metric.CHANGE_SPREAD,
            Metric.PHASE_ORDER);

    private static final double ONE_IN_TWENTY = 0.05;

    private final Togetherness together;
    private final Comparison comparison;

    TogetherWords(Togetherness together, Comparison comparison) {
        this.together = together;
        this.comparison = comparison;
    }

    ReportModel.Together together() {
        return new ReportModel.Together(
                measured(),
                sentences(),
                Optional.of(table("Desks and groups, with 95 % intervals in brackets", "Who", TogetherWords::group))
                        .filter(t -> !t.rows().isEmpty()),
                Arrays.stream(Metric.values())
                        .map(m -> new ReportModel.Fact(m.title(), m.help() + " (" + m.reference() + ")"))
                        .toList());
    }

    /** What is measured bar by bar; nothing where nothing could be. */
    List<ChartTable> byBar() {
        return Stream.of(table(
                        "What is measured bar by bar, with 95 % intervals in brackets",
                        "Bar", Scope.InBar.class::isInstance))
                .filter(t -> !t.rows().isEmpty())
                .toList();
    }

    private List<ReportModel.Measured> measured() {
        return comparison.players().size() < 2
                ? List.of()
                : OF_SECTION.stream()
                        .flatMap(metric -> together.ofTake(metric).stream())
                        .filter(measure -> measure.metric() != Metric.KAPPA || !allReadOfAll(measure))
                        .map(TogetherWords::measured)
                        .toList();
    }

    private List<String> sentences() {
        if (comparison.players().size() < 2) {
            return List.of("One player alone is neither together nor apart.");
        }
        List<String> sentences = new ArrayList<>();
        if (measured().isEmpty()) {
            sentences.add("Nothing can be said: no two players could be read on the same beat.");
        } else if (together.ofTake(Metric.ALPHA).isEmpty()) {
            sentences.add("Agreement beyond chance can't be given: too few players were read on the same beats, or all "
                    + "of them went one way all the time.");
        }
        together.contrasts().stream().map(this::contrast).forEach(sentences::add);
        return sentences;
    }

    /** Whether the agreement on beats read of all is about the same beats as the agreement beyond chance. */
    private boolean allReadOfAll(Measure kappa) {
        return together.ofTake(Metric.ALPHA)
                .filter(alpha -> alpha.count() == kappa.count())
                .isPresent();
    }

    private static ReportModel.Measured measured(Measure measure) {
        Metric metric = measure.metric();
        return new ReportModel.Measured(
                metric.title(),
                value(measure) + ", of " + Words.count(measure.count(), metric.counted(), plural(metric.counted())),
                metric.help());
    }

    private static String value(Measure measure) {
        return measure.value()
                .map(v -> number(measure.metric().unit(), v)
                        + measure.interval()
                                .map(i -> " (95 % interval "
                                        + interval(measure.metric().unit(), i) + ")")
                                .orElse(""))
                .orElse("not enough seen to say");
    }

    /** {@code judged beats}, {@code beats read of all}: the word before a participle takes the ending. */
    private static String plural(String counted) {
        return counted.replaceFirst("(beat|change|look)", "$1s");
    }

    private static String figure(Measure measure) {
        return measure.value()
                .map(v -> number(measure.metric().unit(), v)
                        + measure.interval()
                                .map(i -> " (" + interval(measure.metric().unit(), i) + ")")
                                .orElse(""))
                .orElse("–");
    }

    private static String interval(Metric.Unit unit, Interval interval) {
        return number(unit, interval.low()) + " to " + number(unit, interval.high());
    }

    static String number(Metric.Unit unit, double value) {
        return switch (unit) {
            case SHARE -> Words.percent(value);
            case MILLISECONDS -> Words.milliseconds(value);
            case LOUDNESS -> EvennessWords.decibels(value);
            case NUMBER -> String.format(Locale.ROOT, "%.2f", value);
        };
    }

    private String contrast(Contrast contrast) {
        String said = contrast.p() <= ONE_IN_TWENTY
                ? "more apart than chance would put them"
                : "no more apart than chance would put them";
        return name(contrast.one()) + " went with " + (comparison.marked() ? "the marking" : "the leader") + " on "
                + Words.percent(contrast.oneShare()) + " of their beats, "
                + name(contrast.other()).toLowerCase(Locale.ROOT) + " on " + Words.percent(contrast.otherShare())
                + ": " + said + String.format(Locale.ROOT, " (p = %.2f).", contrast.p());
    }

    private static boolean group(Scope scope) {
        return scope instanceof Scope.OfDesk || scope instanceof Scope.OfPlace || scope instanceof Scope.OfHalf;
    }

    private static String name(Scope scope) {
        if (scope instanceof Scope.OfDesk of) {
            return "Desk " + of.desk();
        }
        if (scope instanceof Scope.OfPlace of) {
            return of.place() == Place.INSIDE ? "Inside players" : "Outside players";
        }
        if (scope instanceof Scope.OfHalf of) {
            return of.front() ? "Front desks" : "Back desks";
        }
        return scope.name();
    }

    /** One row a scope, one column a metric that has a value anywhere in them. */
    private ChartTable table(String caption, String first, Predicate<Scope> which) {
        List<Measure> measures =
                together.measures().stream().filter(m -> which.test(m.scope())).toList();
        List<Metric> metrics = OF_SECTION.stream()
                .filter(m -> measures.stream()
                        .anyMatch(x -> x.metric() == m && x.value().isPresent()))
                .toList();
        List<Scope> scopes = measures.stream().map(Measure::scope).distinct().toList();
        return new ChartTable(
                caption,
                Stream.concat(Stream.of(first), metrics.stream().map(Metric::title))
                        .toList(),
                metrics.isEmpty()
                        ? List.of()
                        : scopes.stream().map(s -> row(s, metrics, measures)).toList());
    }

    private static List<String> row(Scope scope, List<Metric> metrics, List<Measure> measures) {
        return Stream.concat(Stream.of(name(scope)), metrics.stream().map(m -> cell(scope, m, measures)))
                .toList();
    }

    private static String cell(Scope scope, Metric metric, List<Measure> measures) {
        return measures.stream()
                .filter(m -> m.metric() == metric && m.scope().equals(scope))
                .findFirst()
                .map(TogetherWords::figure)
                .orElse("–");
    }
}
