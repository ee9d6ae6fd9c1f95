package tuttarco.report;

import java.util.List;
import java.util.Optional;
import tuttarco.chart.ChartTable;

/**
 * The words and pictures of takes beside each other, section by section.
 *
 * @param changes from the first take to the last
 * @param figure bar by bar; empty where no bow could be compared
 * @param sound how evenly both sounded, a sentence each
 * @param stretches where the readings differ most, a sentence each
 * @param steps of more than two takes, what changed from each to the next
 * @param unsaid what can't be told from these takes, a sentence each
 * @param figures all that was asked
 */
public record TakesModel(
        ReportModel.Head head,
        List<String> notes,
        List<String> summary,
        Changes changes,
        Optional<ReportModel.Figure> figure,
        List<String> sound,
        List<String> stretches,
        List<Step> steps,
        List<String> unsaid,
        ChartTable figures,
        List<ReportModel.Fact> terms,
        ReportModel.Facts facts) {

    /** What changed, a sentence each. */
    public record Changes(List<String> better, List<String> worse, List<String> otherwise) {
        public boolean none() {
            return better.isEmpty() && worse.isEmpty() && otherwise.isEmpty();
        }
    }

    /**
     * From one take to the next.
     *
     * @param name of the step
     */
    public record Step(String name, Changes changes) {}
}
