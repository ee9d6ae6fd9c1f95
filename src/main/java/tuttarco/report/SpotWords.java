package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.Beat;
import tuttarco.beats.Run;
import tuttarco.chart.Spots;
import tuttarco.chart.Words;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;
import tuttarco.seats.Player;

/** Divergences in the words of a rehearsal. */
final class SpotWords {
    private final Comparison comparison;

    SpotWords(Comparison comparison) {
        this.comparison = comparison;
    }

    /**
     * The spots in the order to rehearse them. A stretch apart from the leader that is already listed as apart from the
     * marking is not listed again.
     */
    List<ReportModel.Spot> inOrder() {
        List<Divergence> all = comparison.divergences();
        List<Divergence> kept = all.stream()
                .filter(d -> d.against() == Against.MARKING || all.stream().noneMatch(m -> covers(m, d)))
                .toList();
        return Spots.inOrder(kept).stream().map(this::spot).toList();
    }

    List<ReportModel.Spot> of(Player player, Against reference) {
        return Spots.of(player, comparison.divergences(), reference).stream()
                .map(d -> new Divergence(
                        d.firstIndex(),
                        d.lastIndex(),
                        d.first(),
                        d.last(),
                        d.departures().stream().filter(o -> o.player().equals(player)).toList(),
                        d.against(),
                        d.standing(),
                        d.confidence()))
                .map(this::spot)
                .toList();
    }

    private static boolean covers(Divergence marking, Divergence leader) {
        return marking.against() == Against.MARKING
                && marking.firstIndex() <= leader.firstIndex()
                && marking.lastIndex() >= leader.lastIndex()
                && marking.players().containsAll(leader.players());
    }

    private ReportModel.Spot spot(Divergence d) {
        String did = d.against() == Against.MARKING ? "turned" : "went against the leader";
        return new ReportModel.Spot(
                Words.stretch(d.first(), d.last()),
                Words.clock(d.first().timeS()),
                d.players().stream().map(Player::label).toList(),
                did + "; " + back(d),
                Words.percent(d.confidence()) + " sure");
    }

    private String back(Divergence d) {
        List<List<BeatReading>> readings = new ArrayList<>();
        for (Player player : d.players()) {
            readings.add(comparison.beatReadings().get(comparison.players().indexOf(player)));
        }
        Run run = comparison.beats().runOf(d.lastIndex());
        for (int b = d.lastIndex() + 1; b <= run.lastIndex(); b++) {
            int index = b;
            if (readings.stream().allMatch(r -> with(r.get(index), d.against()))) {
                return backAt(comparison.beats().beats().get(b), d.last());
            }
        }
        boolean atEnd = run.lastIndex() == comparison.beats().beats().size() - 1;
        return "not seen back before the " + (atEnd ? "end" : "stop");
    }

    private static boolean with(BeatReading reading, Against reference) {
        Verdict verdict = reference == Against.MARKING ? reading.verdict() : reading.leaderVerdict();
        return verdict == Verdict.WITH;
    }

    private static String backAt(Beat back, Beat last) {
        if (!back.inBar()) {
            return "back on stroke " + back.beat();
        }
        return back.bar().equals(last.bar()) ? "back on beat " + back.beat() : "back by bar " + back.bar();
    }

    /** The first spot's place, for the summary. */
    Optional<String> first() {
        return inOrder().stream().findFirst().map(s -> s.where() + " (" + s.clock() + ")");
    }
}
