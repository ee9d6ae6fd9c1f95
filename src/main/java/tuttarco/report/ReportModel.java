package tuttarco.report;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import tuttarco.chart.ChartTable;
import tuttarco.chart.SectionStrip;

/**
 * The page's words and pictures, section by section.
 *
 * @param curves how to read the players' charts, or why there are none
 * @param video name of the take's video beside the page
 */
public record ReportModel(
        Head head,
        List<String> notes,
        String analysed,
        List<String> summary,
        Rehearse rehearse,
        List<Strip> strips,
        Optional<Figure> bowing,
        Bars bars,
        Findings late,
        Findings sharing,
        Findings asOne,
        Together together,
        List<String> sound,
        String curves,
        List<PlayerPart> players,
        List<Moment> moments,
        Optional<String> video,
        Sureness sureness,
        Facts facts) {

    /**
     * What stands over the page.
     *
     * @param reference what the section is first compared with, in words
     */
    public record Head(String title, PageStyle style, boolean free, String reference) {}

    /**
     * Where to work first.
     *
     * @param candidates bars in which the marking may be the trouble, a sentence each
     * @param unsaid what this take can't tell, a sentence each
     */
    public record Rehearse(
            boolean free, boolean judged, List<SeenSpot> spots, List<String> candidates, List<String> unsaid) {}

    /**
     * A stretch in which players went apart.
     *
     * @param where bars and beats
     * @param what what the players did, and when they were back
     * @param moment where the page shows it
     */
    public record Spot(String where, String clock, List<String> players, String what, String sure, Span moment) {}

    /**
     * Beats, in the order played.
     *
     * @param bar the bar that the first lies in, counted from 0 in the order played
     * @param firstBeat counted from 0
     * @param lastBeat inclusive
     */
    public record Span(int bar, int firstBeat, int lastBeat) {}

    /** A spot and how the section looked when it began, if that was filmed. */
    public record SeenSpot(Spot spot, Optional<Picture> picture) {}

    /**
     * A bar as it was played once.
     *
     * @param index counted from 0 in the order played
     * @param where the bar in words
     * @param picture when it begins
     */
    public record Moment(int index, String where, String clock, Optional<Picture> picture) {}

    /** A still of the take. */
    public static final class Picture {
        private final byte[] jpeg;

        Picture(byte[] jpeg) {
            this.jpeg = jpeg;
        }

        /** The picture itself as an address. */
        public String address() {
            return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
        }
    }

    /** The section by beat, to scroll in. */
    public record Strip(String key, String title, String help, SectionStrip strip, ChartTable table) {}

    /** How much of each bar was bowed as marked, and what else is measured bar by bar. */
    public record Bars(List<Figure> figures, List<ChartTable> tables) {}

    /**
     * A chart with its words.
     *
     * @param svgs SVG elements made by this program, safe to stand in the page one below the other
     */
    public record Figure(String key, String title, String help, List<String> svgs, ChartTable table) {}

    /**
     * How together the section was.
     *
     * @param desks desks and groups beside each other
     * @param terms what the figures mean, and where they come from
     */
    public record Together(
            List<Measured> measured, List<String> sentences, Optional<ChartTable> desks, List<Fact> terms) {}

    /**
     * A figure.
     *
     * @param value with its unit, its uncertainty and of how many it is
     * @param help what it means
     */
    public record Measured(String name, String value, String help) {}

    /** What was found of one question, in sentences and pictures; no pictures where there is nothing to show. */
    public record Findings(List<String> sentences, List<Figure> figures) {}

    public record PlayerPart(
            String id, String label, String seat, List<String> sentences, List<Spot> spots, Optional<Figure> figure) {}

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
