package tuttarco.review;

import java.util.List;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.report.AnalysedTake;
import tuttarco.report.ReportModel;
import tuttarco.report.SpotWords;

/** An analysed take as it is looked at. */
public record Judged(AnalysedTake take, SectionTable table, AtTime atTime, List<ToRehearse> spots) {
    /** A spot and the report's words for it. */
    public record ToRehearse(Spot spot, ReportModel.Spot told) {
        /** Who it is about, as the report says it. */
        public String who() {
            return String.join(", ", told.players());
        }

        @Override
        public String toString() {
            return told.where() + ", " + told.clock() + ": " + who() + " " + told.what() + " (" + told.sure() + ")";
        }
    }

    public static Judged of(AnalysedTake take) {
        SpotWords words = new SpotWords(take.comparison());
        return new Judged(
                take,
                new SectionTable(take),
                new AtTime(take),
                RehearsalList.of(take.comparison()).stream()
                        .map(s -> new ToRehearse(s, words.told(s)))
                        .toList());
    }
}
