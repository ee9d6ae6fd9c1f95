package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.stats.Interval;
import tuttarco.stats.ProportionInterval;

/** Counts agreement with the marking bar by bar; beats that were not judged don't count. */
final class BarAgreements {
    private BarAgreements() {}

    static List<BarAgreement> of(BeatMap beats, List<List<BeatReading>> readings, double level) {
        List<BarAgreement> bars = new ArrayList<>();
        int first = 0;
        for (int next = 1; next <= beats.beats().size(); next++) {
            if (next == beats.beats().size() || beats.beginsBar(next)) {
                bars.add(bar(beats.beats().get(first).bar(), first, next - 1, readings, level));
                first = next;
            }
        }
        return bars;
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
