package tuttarco.report;

import java.util.List;
import tuttarco.chart.ChartTable;

/**
 * The words and pictures of a season's page.
 *
 * @param candidates bars in which the marking may be the trouble, a sentence or two each
 * @param trends what is claimed, and what can't be, a sentence each
 * @param takes the takes in order
 */
public record SeasonModel(
        PageStyle style,
        List<String> notes,
        List<String> summary,
        List<String> candidates,
        String candidatesUnsaid,
        List<String> trends,
        List<ReportModel.Figure> figures,
        ChartTable takes) {}
