package tuttarco.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tuttarco.strokes.Bows;

/**
 * How together a section is.
 *
 * @param timing who changes late or early
 * @param sharing who takes how much bow, and at which end of it
 * @param scatter the bars in which changes lie widest apart
 * @param measures every figure of {@link Metric}: of the whole take, bar by bar, of desks and groups, of each player
 * @param contrasts inside against outside and front against back, where there are two groups
 */
public record Togetherness(
        Timing timing, BowSharing sharing, ChangeScatter scatter, List<Measure> measures, List<Contrast> contrasts) {
    public Togetherness {
        measures = List.copyOf(measures);
        contrasts = List.copyOf(contrasts);
    }

    /** Finds all of it in a comparison; {@code bows} are the compared readings with what is known of their changes. */
    public static Togetherness of(Comparison comparison, List<Bows> bows, CompareSettings settings) {
        Timing timing = Timing.of(comparison, bows, settings);
        BowSharing sharing = BowSharing.of(bows, settings);
        Measuring measuring = new Measuring(comparison, Timing.readings(bows), settings);
        List<Measure> ofSection = measuring.ofSection();
        return new Togetherness(
                timing,
                sharing,
                measuring.widest(ofSection),
                Stream.of(ofSection, timing.measures(), sharing.measures())
                        .flatMap(List::stream)
                        .toList(),
                Contrast.in(comparison));
    }

    /** A figure of the whole take; empty where it was not to be had. */
    public Optional<Measure> ofTake(Metric metric) {
        return measures.stream()
                .filter(m -> m.metric() == metric && m.scope() instanceof Scope.Whole)
                .filter(m -> m.value().isPresent())
                .findFirst();
    }
}
