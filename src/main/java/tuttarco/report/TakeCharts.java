package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.chart.AgreementByBar;
import tuttarco.chart.BowMotion;
import tuttarco.chart.BowingStrip;
import tuttarco.chart.Chart;
import tuttarco.chart.LagByPlayer;
import tuttarco.chart.SectionByBeat;
import tuttarco.chart.Spots;
import tuttarco.chart.UnityDial;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Timing;
import tuttarco.compare.Unity;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.tracks.ArmTrack;

/** Which charts a take has. */
final class TakeCharts {
    private TakeCharts() {}

    /** What the section is first compared with: the marking, or the leader where nothing is marked. */
    static Against reference(AnalysedTake take) {
        return take.part().isPresent() ? Against.MARKING : Against.LEADER;
    }

    static List<Chart> ofSection(AnalysedTake take) {
        Comparison comparison = take.comparison();
        List<Chart> charts = new ArrayList<>();
        if (take.part().isPresent()) {
            charts.add(
                    new SectionByBeat(comparison, Against.MARKING, take.take().bowing()));
        }
        if (take.take().leader().isPresent() || take.part().isEmpty()) {
            charts.add(new SectionByBeat(comparison, Against.LEADER, take.take().bowing()));
        }
        take.part().map(BowingStrip::new).ifPresent(charts::add);
        if (comparison.marked()) {
            charts.add(new AgreementByBar(comparison.bars(), comparison.beats()));
        }
        if (take.unity() instanceof Unity.Told told) {
            charts.add(new UnityDial(told));
        }
        return List.copyOf(charts);
    }

    /** Empty where there is nobody whose changes could be compared. */
    static Optional<Chart> lagByPlayer(AnalysedTake take) {
        Timing timing = take.together().timing();
        return timing.players().isEmpty() ? Optional.empty() : Optional.of(new LagByPlayer(timing));
    }

    /** A player's own chart, empty where the player has no track or no reading. */
    static Optional<BowMotion> ofPlayer(AnalysedTake take, Player player) {
        Comparison comparison = take.comparison();
        Optional<ArmTrack> track =
                take.tracks().stream().filter(t -> t.player().equals(player)).findFirst();
        Optional<Reading> reading =
                take.readings().stream().filter(r -> r.player().equals(player)).findFirst();
        int number = comparison.players().indexOf(player) + 1;
        return track.flatMap(t -> reading.map(r -> new BowMotion(
                number, t, r, comparison.beats(), Spots.of(player, comparison.divergences(), reference(take)))));
    }
}
