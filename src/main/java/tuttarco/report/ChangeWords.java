package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.chart.Words;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Metric;
import tuttarco.season.Changed;
import tuttarco.season.Changed.Claim;
import tuttarco.season.Changed.Of;
import tuttarco.season.Stretch;
import tuttarco.season.TakeAgainstTake;
import tuttarco.season.Tally;

/** What changed between two takes, in sentences. */
final class ChangeWords {
    /** Stretches that are named, the greatest first. */
    private static final int MOST_STRETCHES = 6;

    private final TakeAgainstTake takes;

    ChangeWords(TakeAgainstTake takes) {
        this.takes = takes;
    }

    TakesModel.Changes changes() {
        return new TakesModel.Changes(said(Claim.BETTER), said(Claim.WORSE), said(Claim.OTHERWISE));
    }

    private List<String> said(Claim claim) {
        List<String> sentences = new ArrayList<>();
        for (Changed change : takes.shown()) {
            if (change.claim() == claim) {
                sentences.add(sentence(change) + (direction(change) && change.of() == Of.SECTION ? where(change) : ""));
            }
        }
        return sentences;
    }

    /** How evenly both takes sounded, whether that changed or not; none where it could not be compared. */
    List<String> sound() {
        return takes.changes().stream()
                .filter(c -> c.metric() == Metric.LOUDNESS_SPREAD || c.metric() == Metric.DIP)
                .map(c -> sentence(c) + (c.claim().shown() ? "" : " That shows no change beyond chance."))
                .toList();
    }

    private static boolean direction(Changed change) {
        return change.metric() == Metric.WITH_MARKING || change.metric() == Metric.WITH_LEADER;
    }

    /** The section's figure with what is compared with, whether it changed or not; empty where there is none. */
    Optional<String> ofSection() {
        return takes.changes().stream()
                .filter(c -> direction(c) && c.of() == Of.SECTION)
                .findFirst()
                .map(c -> sentence(c)
                        + (c.claim().shown() ? "" : " That shows no change beyond chance and errors of reading."));
    }

    private String sentence(Changed change) {
        String figures =
                Words.percent(change.second()) + " of the beats, before on " + Words.percent(change.first()) + ".";
        return switch (change.metric()) {
            case WITH_MARKING -> who(change) + " went with the marking on " + figures;
            case WITH_LEADER -> who(change) + " went with the leader on " + figures;
            case LAG ->
                Words.plain(change.name()) + " changes " + late(change.second()) + " (median); before "
                        + late(change.first()) + ".";
            case CHANGE_SPREAD ->
                "The section's bow changes lie " + (change.difference() < 0 ? "closer together" : "further apart")
                        + ": the middle half within " + Math.round(change.second()) + " ms; before within "
                        + Math.round(change.first()) + " ms.";
            case LOUDNESS_SPREAD -> "Within a bar the loudness spreads by " + sound(change);
            case DIP -> "At bow changes the sound dips by " + sound(change);
            default -> throw new IllegalStateException("nothing is said of " + change.metric());
        };
    }

    private static String who(Changed change) {
        return switch (change.of()) {
            case SECTION -> "The section";
            case PLAYER -> Words.plain(change.name());
            case BAR -> "In bar " + change.name() + " the section";
        };
    }

    private String late(double lagMs) {
        long ms = Math.round(lagMs);
        String whom = takes.first().players().stream().anyMatch(p -> p.leader()) ? "the leader" : "the others";
        return ms == 0 ? "with " + whom : Math.abs(ms) + " ms " + (ms > 0 ? "after " : "before ") + whom;
    }

    private static String sound(Changed change) {
        return EvennessWords.decibels(change.second()) + "; before by " + EvennessWords.decibels(change.first())
                + change.paired()
                        .map(p -> String.format(
                                Locale.ROOT,
                                " (difference %+.1f dB, 95 %% interval %+.1f to %+.1f, effect size %+.1f, of %s)",
                                p.mean(),
                                p.interval().low(),
                                p.interval().high(),
                                p.effectSize(),
                                Words.count(p.pairs(), "bar")))
                        .orElse("")
                + ".";
    }

    /** Where the readings show it most. */
    private String where(Changed change) {
        List<String> agreeing = takes.stretches().stream()
                .filter(s -> s.more() == change.difference() > 0)
                .limit(MOST_STRETCHES)
                .map(this::stretch)
                .toList();
        return agreeing.isEmpty() ? "" : " By the readings most of all " + String.join("; ", agreeing) + ".";
    }

    /** Those that are not named under a change already. */
    List<String> stretches() {
        Optional<Changed> section = takes.shown().stream()
                .filter(c -> direction(c) && c.of() == Of.SECTION)
                .findFirst();
        return takes.stretches().stream()
                .filter(s -> section.isEmpty() || s.more() != section.get().difference() > 0)
                .limit(MOST_STRETCHES)
                .map(s -> Words.capital(stretch(s)) + ".")
                .toList();
    }

    private String stretch(Stretch stretch) {
        List<String> bars = stretch.bars();
        return Words.labels(stretch.players()) + " in " + Words.bars(bars.get(0), bars.get(bars.size() - 1)) + ": with "
                + other() + " on " + of(stretch.second()) + ", before on " + of(stretch.first());
    }

    private String other() {
        return takes.reference().equals(Optional.of(Against.MARKING)) ? "the marking" : "the leader";
    }

    private static String of(Tally tally) {
        return tally.with() + " of " + Words.count(tally.judged(), "beat");
    }
}
