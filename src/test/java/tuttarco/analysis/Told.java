package tuttarco.analysis;

import java.util.List;
import java.util.stream.Collectors;
import tuttarco.beats.Beat;
import tuttarco.compare.BowingCandidate;
import tuttarco.compare.Comparison;
import tuttarco.compare.Departure;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.compare.Unity;
import tuttarco.report.AnalysedTake;
import tuttarco.seats.Player;

/**
 * What a section leader is told of a take, in short.
 *
 * @param spots the rehearsal list in its order: what, from what, who from where to where in bars and beats
 * @param timing who is called late or early
 * @param candidates bars whose marking may be the trouble, with who left it
 */
record Told(List<String> spots, List<String> timing, List<String> candidates, Unity.Kind unity, List<String> notes) {
    static Told of(AnalysedTake take) {
        Comparison comparison = take.comparison();
        return new Told(
                spots(comparison),
                take.together().timing().claimed().stream().map(Told::spoken).toList(),
                BowingCandidate.in(comparison).stream().map(Told::spoken).toList(),
                take.unity() instanceof Unity.Told told ? told.kind() : Unity.Kind.UNCERTAIN,
                take.notes());
    }

    static List<String> spots(Comparison comparison) {
        return RehearsalList.of(comparison).stream()
                .map(s -> spoken(s, comparison))
                .toList();
    }

    private static String spoken(Spot spot, Comparison comparison) {
        List<Beat> beats = comparison.beats().beats();
        return spot.standing().word() + " against the " + spot.against().word() + ": "
                + spot.departures().stream().map(d -> spoken(d, beats)).collect(Collectors.joining(", "));
    }

    private static String spoken(Departure d, List<Beat> beats) {
        return d.player().label() + " " + spoken(beats.get(d.firstIndex())) + " to " + spoken(beats.get(d.lastIndex()));
    }

    private static String spoken(Beat beat) {
        return beat.bar() + "/" + beat.beat();
    }

    private static String spoken(PlayerTiming timing) {
        return timing.player().label() + " " + timing.claim().word();
    }

    private static String spoken(BowingCandidate candidate) {
        return candidate.bar() + ": "
                + candidate.players().stream().map(Player::label).collect(Collectors.joining(", "));
    }
}
