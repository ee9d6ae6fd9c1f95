package tuttarco.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.chart.AtTime;
import tuttarco.compare.BowingCandidate;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.report.AnalysedTake;
import tuttarco.report.ReportModel;
import tuttarco.report.ReportWords;
import tuttarco.report.SpotWords;
import tuttarco.take.Bowing;

/**
 * An analysed take as it is looked at.
 *
 * @param spots what to rehearse first, and after that the bars in which the marking may be the trouble
 * @param noSpots what is told where there is nothing of that
 */
public record Judged(AnalysedTake take, SectionTable table, AtTime atTime, List<ToRehearse> spots, String noSpots) {
    /**
     * A place to go to, in the report's words.
     *
     * @param player whose row is gone to; empty where it is about no one player
     * @param firstIndex its first beat; {@code lastIndex} its last
     */
    public record ToRehearse(String heading, String words, Optional<String> player, int firstIndex, int lastIndex) {
        @Override
        public String toString() {
            return heading + ": " + words;
        }
    }

    public static Judged of(AnalysedTake take) {
        SpotWords words = new SpotWords(take.comparison());
        List<ToRehearse> spots = new ArrayList<>();
        RehearsalList.of(take.comparison()).forEach(spot -> spots.add(spot(spot, words.told(spot))));
        if (take.take().bowing() == Bowing.UNIFIED) {
            BowingCandidate.in(take.comparison()).forEach(bar -> spots.add(marking(bar, words.candidate(bar))));
        }
        return new Judged(take, new SectionTable(take), take.atTime(), List.copyOf(spots), ReportWords.noSpots(take));
    }

    private static ToRehearse spot(Spot spot, ReportModel.Spot told) {
        return new ToRehearse(
                told.where() + "  (" + told.clock() + ")",
                String.join(", ", told.players()) + " " + told.what() + " (" + told.sure() + ").",
                Optional.of(spot.players().get(0).label()),
                spot.firstIndex(),
                spot.lastIndex());
    }

    private static ToRehearse marking(BowingCandidate bar, String words) {
        return new ToRehearse(
                "Is the marking the trouble?", words, Optional.empty(), bar.firstIndex(), bar.lastIndex());
    }
}
