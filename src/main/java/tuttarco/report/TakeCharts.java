package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tuttarco.chart.AgreementByBar;
import tuttarco.chart.BowByPlayer;
import tuttarco.chart.BowMotion;
import tuttarco.chart.BowingStrip;
import tuttarco.chart.ChangesAround;
import tuttarco.chart.Chart;
import tuttarco.chart.LagByPlayer;
import tuttarco.chart.SectionByBeat;
import tuttarco.chart.Spots;
import tuttarco.chart.UnityDial;
import tuttarco.compare.BowSharing;
import tuttarco.compare.ChangeScatter;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Timing;
import tuttarco.compare.Unity;
import tuttarco.seats.Player;
import tuttarco.strokes.Bows;
import tuttarco.take.Bowing;
import tuttarco.tracks.ArmTrack;

/** Which charts a take has. */
final class TakeCharts {
    private TakeCharts() {}

    /** All but the players' own. */
    static List<Chart> all(AnalysedTake take) {
        return Stream.of(ofSection(take), ofTiming(take), ofSharing(take))
                .flatMap(List::stream)
                .toList();
    }

    static List<Chart> ofSection(AnalysedTake take) {
        return Stream.of(byBeat(take).stream(), bowing(take).stream(), byBar(take).stream(), asOne(take).stream())
                .<Chart>flatMap(charts -> charts)
                .toList();
    }

    /** Beside the marking, and beside the leader. */
    static List<SectionByBeat> byBeat(AnalysedTake take) {
        Comparison comparison = take.comparison();
        List<SectionByBeat> charts = new ArrayList<>();
        if (take.part().isPresent()) {
            charts.add(
                    new SectionByBeat(comparison, Against.MARKING, take.take().bowing()));
        }
        if (take.take().leader().isPresent() || take.part().isEmpty()) {
            charts.add(new SectionByBeat(comparison, Against.LEADER, take.take().bowing()));
        }
        return List.copyOf(charts);
    }

    /** What is marked, if a part was given. */
    static Optional<BowingStrip> bowing(AnalysedTake take) {
        return take.part().map(BowingStrip::new);
    }

    /** How much of each bar was bowed as marked; empty where nothing is marked. */
    static Optional<AgreementByBar> byBar(AnalysedTake take) {
        Comparison comparison = take.comparison();
        return comparison.marked()
                ? Optional.of(new AgreementByBar(comparison.bars(), comparison.beats()))
                : Optional.empty();
    }

    /** Whether the section bowed as one, where that can be told. */
    static Optional<UnityDial> asOne(AnalysedTake take) {
        return take.unity() instanceof Unity.Told told ? Optional.of(new UnityDial(told)) : Optional.empty();
    }

    /** None where there is nobody whose changes could be compared, or everybody may change at will. */
    static List<Chart> ofTiming(AnalysedTake take) {
        List<Chart> charts = new ArrayList<>();
        Timing timing = take.together().timing();
        if (!free(take) && !timing.players().isEmpty()) {
            charts.add(new LagByPlayer(timing));
        }
        ChangeScatter scatter = take.together().scatter();
        if (!free(take) && !scatter.bars().isEmpty()) {
            charts.add(new ChangesAround(scatter));
        }
        return List.copyOf(charts);
    }

    /** None where no player's bow could be compared with the leader's, or everybody may bow at will. */
    static List<Chart> ofSharing(AnalysedTake take) {
        BowSharing sharing = take.together().sharing();
        return !free(take) && sharing.measured() ? List.of(new BowByPlayer(sharing)) : List.of();
    }

    private static boolean free(AnalysedTake take) {
        return take.take().bowing() == Bowing.FREE;
    }

    /** A player's own chart, empty where the player has no track or no reading. */
    static Optional<BowMotion> ofPlayer(AnalysedTake take, Player player) {
        Comparison comparison = take.comparison();
        Optional<ArmTrack> track =
                take.tracks().stream().filter(t -> t.player().equals(player)).findFirst();
        Optional<Bows> bows =
                take.bows().stream().filter(b -> b.player().equals(player)).findFirst();
        int number = comparison.players().indexOf(player) + 1;
        return track.flatMap(t -> bows.map(b -> new BowMotion(
                number, t, b, comparison.beats(), Spots.of(player, comparison.divergences(), take.reference()))));
    }
}
