package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import tuttarco.beats.BeatMap;
import tuttarco.compare.Divergence;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.tracks.ArmTrack;

/** One player's bow over time: how it travelled, the strokes read from it, and the beats. */
public final class BowMotion implements Chart {
    static final int WIDTH_PX = 1176;
    private static final int ROW_PX = 196;
    private static final int TITLE_PX = 44;

    /** Seconds in a row; a bar of slow four is about a finger wide. */
    static final double ROW_S = 20;

    /** How to read any player's chart. */
    public static final String HELP =
            "The curve rises while the bow hand moves towards the tip (down-bow) and falls towards the frog (up-bow); the "
                    + "band is two standard deviations of what the picture leaves open. Above it the strokes as read (three slanted bars are "
                    + "a tremolo), the beats as thin lines and the bar numbers; where no "
                    + "bars are known, the leader's strokes and their numbers. The curve breaks where the arm was not seen.";

    private static final String BY_HAND_HELP =
            " A pencilled corner, below right, marks a stroke that was set by hand, a dark line a change that was moved; where the "
                    + "player was not there a line goes across.";

    private final int number;
    private final ArmTrack track;
    private final Bows bows;
    private final BeatMap beats;
    private final List<Divergence> spots;

    /**
     * @param number the player's place in the section's order, from 1; part of the key
     * @param spots this player's divergences of the one reference the report shows, in the order played
     */
    public BowMotion(int number, ArmTrack track, Bows bows, BeatMap beats, List<Divergence> spots) {
        this.number = number;
        this.track = track;
        this.bows = bows;
        this.beats = beats;
        this.spots = List.copyOf(spots);
    }

    public Player player() {
        return bows.player();
    }

    @Override
    public String key() {
        return String.format(Locale.ROOT, "bow-%02d", number);
    }

    @Override
    public String title() {
        String name = Words.plain(player().label());
        if (spots.isEmpty()) {
            return name + ": the arm was read for " + Words.percent(readShare()) + " of the take";
        }
        String more = spots.size() == 1 ? "" : ", and " + Words.count(spots.size() - 1, "time") + " more";
        return name + " " + Words.turned(spots.get(0), beats) + more;
    }

    /** What somebody set is none of what was read. */
    private double readShare() {
        double readS = 0;
        double allS = 0;
        for (Bow bow : bows.bows()) {
            Stroke stroke = bow.stroke();
            boolean open = stroke.kind() == StrokeKind.UNSURE || stroke.kind() == StrokeKind.UNSEEN;
            readS += open || byHand(stroke) ? 0 : stroke.lengthS();
            allS += stroke.lengthS();
        }
        return allS == 0 ? 0 : readS / allS;
    }

    @Override
    public String help() {
        boolean byHand = bows.bows().stream().anyMatch(b -> byHand(b.stroke()) || b.end() instanceof Edge.ByHand);
        return byHand ? HELP + BY_HAND_HELP : HELP;
    }

    private static boolean byHand(Stroke stroke) {
        return stroke.source() == Stroke.Source.BY_HAND;
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return TITLE_PX + rowCount() * ROW_PX + 6 * Look.STEP_PX;
    }

    @Override
    public List<Integer> cutsPx() {
        double rowPx = (heightPx() - TITLE_PX - 6.0 * Look.STEP_PX) / rowCount();
        return IntStream.range(1, rowCount())
                .mapToObj(r -> (int) Math.round(heightPx() - 5.0 * Look.STEP_PX - (rowCount() - r) * rowPx))
                .toList();
    }

    private int rowCount() {
        return Math.max(1, (int) Math.ceil((track.endS() - track.startS()) / ROW_S - 1e-6));
    }

    @Override
    public JFreeChart draw() {
        BowRows rows = new BowRows(BowTravel.of(track), beats);
        StrokeLane lane = new StrokeLane(bows.bows(), againstS(), beats);
        double lengthS = Math.max(1, Math.min(ROW_S, track.endS() - track.startS()));
        List<XYPlot> plots = new ArrayList<>();
        for (int r = 0; r < rowCount(); r++) {
            double startS = track.startS() + r * ROW_S;
            plots.add(rows.row(startS, startS + lengthS, lane, ROW_PX, r == rowCount() - 1));
        }
        return Look.chart(Words.plain(title()), new StackedRows(plots));
    }

    private List<Interval> againstS() {
        return spots.stream()
                .map(d -> new Interval(d.first().timeS(), beats.endS(d.lastIndex())))
                .toList();
    }

    @Override
    public ChartTable table() {
        List<List<String>> rows = bows.bows().stream()
                .map(b -> List.of(
                        time(b.stroke().startS(), b.start()),
                        time(b.stroke().endS(), b.end()),
                        b.stroke().kind().word() + (byHand(b.stroke()) ? ", by hand" : ""),
                        Words.percent(b.stroke().confidence())))
                .toList();
        return new ChartTable(
                "Strokes of " + Words.plain(player().label()), List.of("From", "To", "Read as", "Confidence"), rows);
    }

    private static String time(double timeS, Edge edge) {
        return Words.clock(timeS) + (edge instanceof Edge.ByHand ? ", by hand" : "");
    }
}
