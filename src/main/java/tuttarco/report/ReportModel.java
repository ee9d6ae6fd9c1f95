package tuttarco.report;

import java.util.List;
import java.util.Optional;
import tuttarco.chart.ChartTable;

/** The page's words and pictures, section by section. */
public record ReportModel(
        Head head,
        List<String> notes,
        List<String> summary,
        Rehearse rehearse,
        List<Figure> figures,
        List<String> sound,
        Together together,
        Findings late,
        Findings sharing,
        List<PlayerPart> players,
        Sureness sureness,
        Facts facts) {

    /**
     * What stands over the page.
     *
     * @param css the style sheet
     * @param policy what the page may load: nothing but this style sheet and its own fonts
     */
    public record Head(String title, String css, String policy, boolean free, String reference) {}

    /**
     * Where to work first.
     *
     * @param candidates bars in which the marking may be the trouble, a sentence each
     * @param unsaid what this take can't tell, a sentence each
     */
    public record Rehearse(
            boolean free, boolean judged, List<Spot> spots, List<String> candidates, List<String> unsaid) {}

    /**
     * A stretch in which players went apart.
     *
     * @param where bars and beats
     * @param what what the players did, and when they were back
     */
    public record Spot(String where, String clock, List<String> players, String what, String sure) {}

    /**
     * A chart with its words.
     *
     * @param svg an SVG element made by this program, safe to stand in the page
     */
    public record Figure(String key, String title, String help, String svg, ChartTable table) {}

    /**
     * How together the section was.
     *
     * @param terms what the figures mean
     */
    public record Together(List<String> sentences, List<ChartTable> tables, List<Fact> terms) {}

    /** What was found of one question, in sentences and pictures; no pictures where there is nothing to show. */
    public record Findings(List<String> sentences, List<Figure> figures) {}

    public record PlayerPart(
            String id, String label, String seat, List<String> sentences, List<Spot> spots, Optional<Figure> figure) {}

    /** Shares of all player-beats, already in words. */
    /**
     * How much was read.
     *
     * @param counted what the shares are of, in the plural
     */
    public record Sureness(String counted, String sure, String unsure, String unseen, Optional<String> byHand) {}

    /** What was analysed: names and values in the order shown. */
    public record Facts(String program, List<Fact> inputs, List<Fact> settings) {}

    public record Fact(String name, String value) {}
}
