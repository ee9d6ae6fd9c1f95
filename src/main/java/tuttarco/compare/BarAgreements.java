package tuttarco.compare;

import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.stats.Interval;
import tuttarco.stats.ProportionInterval;

/** Counts agreement with the marking bar by bar; beats that were not judged don't count. */
final class BarAgreements {
    private BarAgreements() {}

    static List<BarAgreement> of(BeatMap beats, List<List<BeatReading>> readings, double level) {
        return beats.bars().stream()
                .map(bar -> bar(bar.number(), bar.firstIndex(), bar.lastIndex(), readings, level))
                .toList();
    }

    private static BarAgreement bar(
            String number, int first, int last, List<List<BeatReading>> readings, double level) {
        int with = count(readings, first, last, Verdict.WITH);
        int judged = with + count(readings, first, last, Verdict.AGAINST);
        Optional<Interval> interval =
                judged == 0 ? Optional.empty() : Optional.of(ProportionInterval.wilson(with, judged, level));
        return new BarAgreement(number, first, last, with, judged, interval);
    }

    private static int count(List<List<BeatReading>> readings, int first, int last, Verdict verdict) {
        return (int) readings.stream()
                .flatMap(of -> of.subList(first, last + 1).stream())
                .filter(r -> r.verdict() == verdict)
                .count();
    }
}
