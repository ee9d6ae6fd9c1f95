package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import tuttarco.beats.BeatMap;
import tuttarco.compare.Divergence;
import tuttarco.seats.Player;
import tuttarco.stats.Interval;
import tuttarco.strokes.Reading;
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

    private final int number;
    private final ArmTrack track;
    private final Reading reading;
    private final BeatMap beats;
    private final List<Divergence> spots;

    /**
     * @param number the player's place in the section's order, from 1; part of the key
     * @param spots this player's divergences of the one reference the report shows, in the order played
     */
    public BowMotion(int number, ArmTrack track, Reading reading, BeatMap beats, List<Divergence> spots) {
        this.number = number;
        this.track = track;
        this.reading = reading;
        this.beats = beats;
        this.spots = List.copyOf(spots);
    }

    public Player player() {
        return reading.player();
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

    private double readShare() {
        double readS = 0;
        double openS = 0;
        for (Stroke stroke : reading.strokes()) {
            if (stroke.kind() == StrokeKind.UNSURE || stroke.kind() == StrokeKind.UNSEEN) {
                openS += stroke.lengthS();
            } else {
                readS += stroke.lengthS();
            }
        }
        return readS + openS == 0 ? 0 : readS / (readS + openS);
    }

    @Override
    public String help() {
        return HELP;
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return TITLE_PX + rowCount() * ROW_PX + 6 * Look.STEP_PX;
    }

    private int rowCount() {
        return Math.max(1, (int) Math.ceil((track.endS() - track.startS()) / ROW_S - 1e-6));
    }

    @Override
    public JFreeChart draw() {
        BowRows rows = new BowRows(BowTravel.of(track), beats);
        StrokeLane lane = new StrokeLane(reading.strokes(), againstS(), beats);
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
        List<List<String>> rows = reading.strokes().stream()
                .map(s -> List.of(
                        Words.clock(s.startS()), Words.clock(s.endS()), s.kind().word(), Words.percent(s.confidence())))
                .toList();
        return new ChartTable(
                "Strokes of " + Words.plain(player().label()), List.of("From", "To", "Read as", "Confidence"), rows);
    }
}
